package clipwitness.measure;

import clipwitness.quantity.Unit;

/**
 * The instrument's vertical accuracy as a part of the uncertainty: a bound a, so u = a / sqrt 3 of the value (JCGM 100, 4.3.7). It
 * belongs to absolute volts and amperes; ratios of one channel are free of it, and so is a change between captures at one scale.
 */
public final class VerticalAccuracy {
    private VerticalAccuracy() {}

    /**
     * The same result with the contribution on every absolute value.
     *
     * @param bound accuracy as a ratio, 0 or more
     */
    public static WaveformResult applied(WaveformResult result, double bound) {
        return result.withValues((quantity, value) -> applied(value, bound));
    }

    private static Measured applied(Measured measured, double bound) {
        boolean absolute = measured.unit() == Unit.VOLT || measured.unit() == Unit.AMPERE;
        return measured instanceof Measured.Value v && absolute && v.number() != 0
                ? v.plus(Source.VERTICAL_ACCURACY, Math.abs(v.number()) * bound / Math.sqrt(3))
                : measured;
    }
}
