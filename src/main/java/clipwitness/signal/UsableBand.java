package clipwitness.signal;

/** Up to which frequency a sampled record is used. */
public final class UsableBand {
    /** Highest frequency over the sample rate: a tenth below half of it, so that a line is still distinguished from its alias (measurement book, section 2). */
    public static final double HIGHEST_OVER_SAMPLE_RATE = 0.45;

    private UsableBand() {}
}
