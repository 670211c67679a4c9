package clipwitness.measure.noise;

import clipwitness.capture.Samples;

/** Fills the gaps of a record with the straight line between their neighbours. */
final class Gaps {
    private Gaps() {}

    /** The record without gaps; one sample at least must have a value. */
    static Samples filled(Samples samples) {
        if (samples.gaps() == 0) {
            return samples;
        }
        double[] values = samples.toArray();
        int last = -1; // place of the last value
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                fill(values, last, i);
                last = i;
            }
        }
        fill(values, last, values.length);
        return Samples.adopted(values);
    }

    /** Fills what lies between two values; before the first and behind the last one the nearest value goes on. */
    private static void fill(double[] values, int from, int to) {
        double left = from >= 0 ? values[from] : values[to];
        double right = to < values.length ? values[to] : left;
        for (int i = from + 1; i < to; i++) {
            values[i] = left + (right - left) * (i - from) / (to - from);
        }
    }
}
