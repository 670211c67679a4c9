package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;

/** One channel as the fits take it: a copy of the samples with gaps set to 0, and the places of the gaps. */
final class FitSamples {
    private final double[] values;
    private final int[] gaps;

    private FitSamples(double[] values, int[] gaps) {
        this.values = values;
        this.gaps = gaps;
    }

    static FitSamples of(Samples samples) {
        double[] values = samples.toArray();
        int[] gaps = new int[samples.gaps()];
        int found = 0;
        for (int i = 0; i < values.length && found < gaps.length; i++) {
            if (Double.isNaN(values[i])) {
                values[i] = 0;
                gaps[found++] = i;
            }
        }
        return new FitSamples(values, gaps);
    }

    /** Number of samples, gaps included. */
    int size() {
        return values.length;
    }

    /** Number of samples that have a value. */
    int count() {
        return values.length - gaps.length;
    }

    double at(int index) {
        return values[index];
    }

    /** Indices of the gaps, ascending. */
    int[] gaps() {
        return gaps.clone();
    }

    /** Whether two records of one length have their gaps in the same places. */
    boolean hasGapsOf(FitSamples other) {
        return Arrays.equals(gaps, other.gaps);
    }

    /** Whether a sample is missing. */
    boolean isGap(int index) {
        return gaps.length > 0 && Arrays.binarySearch(gaps, index) >= 0;
    }

    /** Sum of the squared distances from a level, gaps left out. */
    double energyAbout(double level) {
        double sum = 0;
        for (double v : values) {
            sum += (v - level) * (v - level);
        }
        return sum - gaps.length * level * level;
    }
}
