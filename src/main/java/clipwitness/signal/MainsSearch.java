package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Where within 1 % of a nominal frequency the multiples of one frequency carry the most power over the noise beside them. The record is thinned by averaging,
 * windowed (Hann) and transformed with zeros behind it.
 */
public final class MainsSearch {
    private static final double WITHIN = 0.01;
    private static final int SAMPLES_PER_PERIOD = 64;
    private static final int FINER = 4; // bins a line of the record
    private static final double LOBE = 2.2; // lines of the record; half the main lobe of a Hann window
    private static final double REACH = 2.5; // multiples
    /** Noise alone makes one record in so many show a line. */
    private static final double ONE_IN = 1000;

    private final double[] power;
    private final double line; // bins
    private final double perPeriod; // bins
    private final int orders;

    private MainsSearch(Samples samples, double cyclesPerSample, int orders) {
        this.orders = orders;
        int factor = (int) Math.max(1, 1 / cyclesPerSample / SAMPLES_PER_PERIOD);
        double[] thinned = thinned(samples, factor);
        power = spectrum(thinned);
        line = 2.0 * power.length / thinned.length;
        perPeriod = cyclesPerSample * factor * 2 * power.length;
    }

    /**
     * The frequency over the sample rate; empty where no multiple stands out of the noise.
     *
     * @param samples         three periods or more, without gaps
     * @param cyclesPerSample nominal frequency over the sample rate
     * @param orders          multiples that are looked at, below half the sample rate
     */
    public static OptionalDouble of(Samples samples, double cyclesPerSample, int orders) {
        return new MainsSearch(samples, cyclesPerSample, orders).strongest(cyclesPerSample);
    }

    private static double[] thinned(Samples samples, int factor) {
        double[] thinned = new double[samples.size() / factor];
        for (int i = 0; i < thinned.length * factor; i++) {
            thinned[i / factor] += samples.at(i) / factor;
        }
        return thinned;
    }

    private static double[] spectrum(double[] record) {
        int size = Integer.highestOneBit(2 * record.length - 1) * FINER;
        double mean = Arrays.stream(record).average().orElse(0);
        double[][] data = new double[2][size];
        for (int i = 0; i < record.length; i++) {
            data[0][i] = (record[i] - mean) * (0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / record.length));
        }
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] bins = new double[data[0].length / 2];
        for (int k = 0; k < bins.length; k++) {
            bins[k] = data[0][k] * data[0][k] + data[1][k] * data[1][k];
        }
        return bins;
    }

    private OptionalDouble strongest(double nominal) {
        double[] noise = new double[orders + 1];
        for (int k = 1; k <= orders; k++) {
            noise[k] = noise(k);
        }
        double best = best(noise);
        double independent = orders * Math.max(1, 2 * WITHIN * orders * perPeriod / line);
        double threshold = Math.log(ONE_IN * independent);
        for (int k = 1; k <= orders; k++) {
            if (power(k * best) > threshold * noise[k]) {
                return OptionalDouble.of(best * nominal);
            }
        }
        return OptionalDouble.empty();
    }

    /** The multiple of the nominal frequency with the most power over noise in all its lines. */
    private double best(double[] noise) {
        double step = 0.5 / (orders * perPeriod);
        double best = 1;
        double most = 0;
        for (double ratio = 1 - WITHIN; ratio <= 1 + WITHIN; ratio += step) {
            double sum = 0;
            for (int k = 1; k <= orders; k++) {
                sum += power(k * ratio) / noise[k];
            }
            if (sum > most) {
                most = sum;
                best = ratio;
            }
        }
        return best;
    }

    private double power(double multiple) {
        int bin = (int) Math.rint(multiple * perPeriod);
        return bin < power.length ? power[bin] : 0;
    }

    /** Mean power of noise near a multiple, from the median of the bins between multiples: that of an exponential distribution is ln 2 of its mean. */
    private double noise(int order) {
        int from = (int) Math.max(perPeriod / 2, (order - REACH) * perPeriod);
        int to = (int) Math.min(power.length - 1, (order + REACH) * perPeriod);
        double[] between = new double[Math.max(0, to - from + 1)];
        int count = 0;
        for (int i = from; i <= to; i++) {
            double multiple = i / perPeriod;
            if (Math.abs(multiple - Math.rint(multiple)) * perPeriod > LOBE * line) {
                between[count++] = power[i];
            }
        }
        double[] sorted = Arrays.stream(between, 0, count).sorted().toArray();
        double median = count == 0 ? 0 : sorted[count / 2];
        return Math.max(Double.MIN_NORMAL, median / Math.log(2));
    }
}
