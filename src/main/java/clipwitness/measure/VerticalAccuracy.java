package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;

/**
 * The instrument's vertical accuracy as a part of the uncertainty: a bound a, so u = a / sqrt 3 of the value (JCGM 100, 4.3.7). It
 * belongs to absolute volts and amperes and, twice, to gains, which are of two channels; ratios of one channel are free of it, and so is
 * a change between captures at one scale.
 */
public final class VerticalAccuracy {
    private VerticalAccuracy() {}

    /**
     * The same result with the contribution on every absolute value.
     *
     * @param bound accuracy as a ratio, 0 or more
     */
    public static WaveformResult applied(WaveformResult result, double bound) {
        return result.withValues((quantity, value) -> applied(quantity, value, bound));
    }

    private static Measured applied(WaveformQuantity quantity, Measured measured, double bound) {
        boolean isGain = quantity == WaveformQuantity.GAIN || quantity == WaveformQuantity.SMALL_SIGNAL_GAIN;
        boolean absolute = measured.unit() == Unit.VOLT || measured.unit() == Unit.AMPERE;
        if (measured instanceof Measured.Value v && isGain) {
            return v.plus(Source.VERTICAL_ACCURACY, Decibels.PER_RELATIVE_AMPLITUDE * bound * Math.sqrt(2.0 / 3));
        }
        return measured instanceof Measured.Value v && absolute && v.number() != 0
                ? v.plus(Source.VERTICAL_ACCURACY, Math.abs(v.number()) * bound / Math.sqrt(3))
                : measured;
    }
}
