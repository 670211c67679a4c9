package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Step of the converter that made a record: the smallest common difference of its distinct values. Values may have been rounded when
 * they were written, so differences need only be whole multiples to a tenth.
 */
public final class CodeStep {
    private static final int MOST_SAMPLES = 16_384;
    private static final double ROUNDING = 0.12;
    private static final double SHARE_THAT_FITS = 0.98;
    private static final int MOST_PARTS = 4;

    private CodeStep() {}

    /** The step, or nothing where the values share none. */
    public static OptionalDouble of(Samples samples) {
        double[] distinct = distinct(samples);
        if (distinct.length < 2) {
            return OptionalDouble.empty();
        }
        double[] gaps = new double[distinct.length - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = distinct[i + 1] - distinct[i];
        }
        double smallest = Arrays.stream(gaps).min().orElseThrow();
        for (int parts = 1; parts <= MOST_PARTS; parts++) {
            double step = refined(distinct, gaps, smallest / parts);
            if (fits(gaps, step)) {
                return OptionalDouble.of(step);
            }
        }
        return OptionalDouble.empty();
    }

    private static double[] distinct(Samples samples) {
        int n = samples.size();
        int stride = Math.max(1, n / MOST_SAMPLES);
        double[] some = new double[(n + stride - 1) / stride];
        int count = 0;
        for (int i = 0; i < n; i += stride) {
            double value = samples.at(i);
            boolean again = count > 0 && value == some[count - 1];
            if (!again && !Double.isNaN(value)) {
                some[count++] = value;
            }
        }
        Arrays.sort(some, 0, count);
        int distinct = 0;
        for (int i = 0; i < count; i++) {
            if (distinct == 0 || some[i] > some[distinct - 1]) { // 0 and -0 are one value
                some[distinct++] = some[i];
            }
        }
        return Arrays.copyOf(some, distinct);
    }

    private static boolean fits(double[] gaps, double step) {
        int fitting = 0;
        for (double gap : gaps) {
            double steps = gap / step;
            fitting += Math.abs(steps - Math.rint(steps)) <= ROUNDING ? 1 : 0;
        }
        return fitting >= SHARE_THAT_FITS * gaps.length;
    }

    /** Slope of the values over their code numbers. */
    private static double refined(double[] values, double[] gaps, double step) {
        double code = 0;
        for (double gap : gaps) {
            code += Math.max(1, Math.rint(gap / step));
        }
        return (values[values.length - 1] - values[0]) / code;
    }
}
