package clipwitness.signal;

import clipwitness.capture.Samples;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Power density of what the mean cycle leaves of a record. The transform takes the record as it is, without window, because the fit is
 * exposed to the rest in the same way: hum and drift reach a harmonic through the same side lobes. Densities are given as the variance
 * that white noise of that density would have.
 *
 * <p>Long records are thinned by averaging, to 64 samples a period at least, and cut to 16,384 samples.
 */
public final class ResidualSpectrum {
    private static final int LONGEST = 16_384;
    private static final double FEWEST_SAMPLES_PER_PERIOD = 64;
    private static final double NOTCH = 1.2;
    private static final double REACH = 5;
    private static final double STRONG = 4.5;

    private final double[] power;
    private final double periods;
    private final double perLine;
    private final int factor;

    /**
     * Transforms the residuals of a record.
     *
     * @param samples the record
     * @param cycle   its mean cycle
     */
    public ResidualSpectrum(Samples samples, MeanCycle cycle) {
        double perPeriod = 1 / cycle.cyclesPerSample();
        factor = (int) Math.max(1, Math.min(samples.size() / (double) LONGEST, perPeriod / FEWEST_SAMPLES_PER_PERIOD));
        int length = Math.min(LONGEST, samples.size() / factor);
        double[] left = new double[2 * Integer.highestOneBit(2 * length - 1)];
        cycle.residuals(samples, factor, length, left);
        power = power(left);
        for (int i = 0; i < power.length; i++) {
            power[i] *= (double) factor / length;
        }
        periods = length * factor / perPeriod;
        perLine = (double) length / left.length;
    }

    /**
     * Squared magnitudes of the transform of real numbers, from one transform of half the length that holds those at even places as real parts and those at
     * odd ones as imaginary parts.
     */
    private static double[] power(double[] values) {
        int half = values.length / 2;
        double[][] data = {new double[half], new double[half]};
        for (int i = 0; i < half; i++) {
            data[0][i] = values[2 * i];
            data[1][i] = values[2 * i + 1];
        }
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] power = new double[half];
        double turnCos = Math.cos(Math.PI / half);
        double turnSin = Math.sin(Math.PI / half);
        double cos = 1;
        double sin = 0;
        for (int i = 0; i < half; i++) {
            int mirrored = (half - i) & (half - 1);
            double evenReal = (data[0][i] + data[0][mirrored]) / 2;
            double evenImaginary = (data[1][i] - data[1][mirrored]) / 2;
            double oddReal = (data[1][i] + data[1][mirrored]) / 2;
            double oddImaginary = (data[0][mirrored] - data[0][i]) / 2;
            double real = evenReal + cos * oddReal + sin * oddImaginary;
            double imaginary = evenImaginary + cos * oddImaginary - sin * oddReal;
            power[i] = real * real + imaginary * imaginary;
            double next = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = next;
        }
        return power;
    }

    /**
     * Standard deviation that takes the place of the scatter at each harmonic, 0 for the mean. Where the density agrees with the scatter
     * everywhere, or the record is too short to tell, that is the scatter itself.
     *
     * @param scatter scatter of single samples about the mean cycle
     * @param orders  number of harmonics
     */
    public double[] atHarmonics(double scatter, int orders) {
        double[] density = new double[orders + 1];
        double most = 0;
        double mean = 0;
        double freedom = 4 * (reach() - NOTCH);
        for (int k = 0; k <= orders; k++) {
            density[k] = density(k);
            double distance = (density[k] / (scatter * scatter) - 1) * Math.sqrt(freedom / 2);
            most = Math.max(most, Math.abs(distance));
            mean += distance / Math.sqrt(orders + 1.0);
        }
        boolean flat = freedom < 2 || !(scatter > 0) || (most < STRONG && Math.abs(mean) < STRONG);
        double[] noise = new double[orders + 1];
        for (int k = 0; k <= orders; k++) {
            double neighbours = (density[Math.max(0, k - 1)] + 2 * density[k] + density[Math.min(orders, k + 1)]) / 4;
            noise[k] = flat ? scatter : Math.sqrt(neighbours);
        }
        return noise;
    }

    /** How far around a harmonic the density is taken, in lines of the record. */
    private double reach() {
        return Math.max(NOTCH, Math.min(REACH, periods / 2 - 0.3));
    }

    /** Mean density around a harmonic, the notch that the mean cycle leaves there left out. */
    private double density(int order) {
        double centre = order * periods;
        double reach = reach();
        double sum = 0;
        int count = 0;
        int last = Math.min(power.length - 1, (int) ((centre + reach) / perLine));
        for (int i = (int) Math.ceil(Math.max(0, centre - reach) / perLine); i <= last; i++) {
            if (Math.abs(i * perLine - centre) >= NOTCH) {
                sum += power[i];
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    /**
     * Power of the residuals up to a frequency; what lies above the thinned record's band counts as white.
     *
     * @param cyclesPerSample frequency over the sample rate, up to 0.5
     * @param scatter         scatter of single samples
     */
    public double powerUpTo(double cyclesPerSample, double scatter) {
        double perLineOfHalfRate = 1.0 / (power.length * factor);
        double edge = Math.min(power.length, cyclesPerSample * 2 * power.length * factor);
        double sum = 0;
        for (int i = 1; i < edge; i++) {
            sum += power[i] * perLineOfHalfRate;
        }
        return sum + scatter * scatter * Math.max(0, 2 * cyclesPerSample - edge * perLineOfHalfRate);
    }
}
