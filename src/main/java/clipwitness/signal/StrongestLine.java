package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Frequency of the strongest line of a record over its sample rate, from a Hann-windowed Fourier transform of its beginning. Where that
 * beginning holds only a few periods of the line and the record goes on, it is thinned by averaging and looked at again.
 */
final class StrongestLine {
    private static final int LONGEST = 8192;
    private static final int ENOUGH_PERIODS = 8;
    private static final int THINNING = 4;
    /** Half the width of a line under the window, in lines of the section. */
    private static final int LOBE = 2;

    private StrongestLine() {}

    /** The line; empty where there is none with at least a period and a half in the record. */
    static OptionalDouble of(Samples samples) {
        int factor = 1;
        while (true) {
            int length = Math.min(LONGEST, samples.size() / factor);
            double periods = periods(samples, length, factor);
            boolean more = (long) length * factor * 2 <= samples.size();
            if (periods >= ENOUGH_PERIODS || !more) {
                return periods >= 1.5
                        ? OptionalDouble.of(periods / ((double) length * factor))
                        : OptionalDouble.empty();
            }
            factor *= THINNING;
        }
    }

    /** Number of periods of the strongest line in the section, 0 where none stands out of noise and where the section is constant. */
    private static double periods(Samples samples, int length, int factor) {
        int size = 4 * Math.max(16, Integer.highestOneBit(length));
        double[] windowed = new double[size];
        double mean = 0;
        for (int i = 0; i < length; i++) {
            windowed[i] = average(samples, i * factor, factor);
            mean += windowed[i] / length;
        }
        for (int i = 0; i < length; i++) {
            windowed[i] = (windowed[i] - mean) * (1 - Math.cos(2 * Math.PI * (i + 0.5) / length));
        }
        Complex[] spectrum =
                new FastFourierTransformer(DftNormalization.STANDARD).transform(windowed, TransformType.FORWARD);
        double[] lines = new double[size / 2];
        int best = 0;
        for (int i = size / length; i < lines.length; i++) {
            lines[i] = spectrum[i].abs();
            best = lines[i] > lines[best] ? i : best;
        }
        return isLine(lines, best, size / length) ? (double) best * length / size : 0;
    }

    /** Whether the strongest line stands out of the rest as the largest of as many lines of noise would once in a million records. */
    private static boolean isLine(double[] lines, int best, int spacing) {
        double[] rest = IntStream.range(spacing, lines.length)
                .filter(i -> Math.abs(i - best) > LOBE * spacing)
                .mapToDouble(i -> lines[i])
                .sorted()
                .toArray();
        double median = rest.length == 0 ? 0 : rest[rest.length / 2];
        double noisePower =
                median * median / Math.log(2); // the median of an exponential distribution is ln 2 of its mean
        return lines[best] * lines[best] > noisePower * Math.log(1e6 * lines.length / spacing);
    }

    /** Mean of the samples that have a value, 0 where none has. */
    private static double average(Samples samples, int from, int count) {
        double sum = 0;
        int valid = 0;
        for (int i = from; i < from + count; i++) {
            if (!Double.isNaN(samples.at(i))) {
                sum += samples.at(i);
                valid++;
            }
        }
        return valid == 0 ? 0 : sum / valid;
    }
}
