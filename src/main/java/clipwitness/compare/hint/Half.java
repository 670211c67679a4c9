package clipwitness.compare.hint;

import clipwitness.measure.WaveformQuantity;

/** One half of the wave of the output. */
enum Half {
    /** Above the mean. */
    UPPER(WaveformQuantity.DWELL_UP),
    /** Below it. */
    LOWER(WaveformQuantity.DWELL_DOWN);

    private final WaveformQuantity dwell;

    Half(WaveformQuantity dwell) {
        this.dwell = dwell;
    }

    /** Share of the period that it stays near its peak. */
    WaveformQuantity dwell() {
        return dwell;
    }

    /** The other one. */
    Half other() {
        return this == UPPER ? LOWER : UPPER;
    }

    /** The larger one, from the logarithm of upper over lower. */
    static Half larger(double logarithm) {
        return logarithm > 0 ? UPPER : LOWER;
    }
}
