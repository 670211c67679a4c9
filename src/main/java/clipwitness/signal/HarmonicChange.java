package clipwitness.signal;

/** What becomes of each harmonic of a wave. */
@FunctionalInterface
public interface HarmonicChange {
    /**
     * New cosine and sine coefficient of a harmonic.
     *
     * @param order  1 for the fundamental
     * @param cosine coefficient before
     * @param sine   coefficient before
     */
    double[] of(int order, double cosine, double sine);
}
