package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What the mean cycle leaves of a record, as half-period cosines over the record, cos(pi j t) for t from 0 to 1, up to the fifth harmonic; and
 * the density of its noise, from the cosines between the harmonics.
 */
public final class CosineSeries {
    private static final int SAMPLES_PER_PERIOD = 32;
    private static final double FIRST_OF_NOISE = 2.4;
    private static final double LAST_OF_NOISE = 9.6;

    /** Half periods over the record within which a harmonic reaches: the mean cycle has emptied its lobe. */
    private static final double NOTCH = 2.4;

    /** In a shorter record a slow wave and the harmonics share too much to be told apart. */
    private static final double FEWEST_PERIODS = 3;

    private static final int FEWEST_FOR_NOISE = 6;

    /** Median of a squared standard normal variable. */
    private static final double MEDIAN = 0.4549;

    private final double periods;
    private final double[] left;
    private final double[] terms;
    private final double[] between;

    /**
     * The series of a record.
     *
     * @param samples the record
     * @param cycle   its mean cycle
     */
    public CosineSeries(Samples samples, MeanCycle cycle) {
        periods = samples.size() * cycle.cyclesPerSample();
        int factor = (int) Math.max(1, 1 / (cycle.cyclesPerSample() * SAMPLES_PER_PERIOD));
        left = new double[samples.size() / factor];
        cycle.residuals(samples, factor, left.length, left);
        terms = new double[(int) Math.max(1, Math.min(left.length / 2.0, LAST_OF_NOISE * periods) + 1)];
        double[] mirrored = Arrays.copyOf(left, 2 * left.length);
        for (int i = 0; i < left.length; i++) {
            mirrored[mirrored.length - 1 - i] = left[i];
        }
        DiscreteSpectrum spectrum = DiscreteSpectrum.of(Samples.of(mirrored));
        for (int j = 1; j < terms.length; j++) {
            double angle = Math.PI * j / mirrored.length; // half a sample: the mirror stands between two samples
            terms[j] = (spectrum.real(j) * Math.cos(angle) + spectrum.imaginary(j) * Math.sin(angle)) / left.length;
        }
        between = IntStream.range(0, terms.length)
                .filter(j -> j > FIRST_OF_NOISE * periods && isBetween(j))
                .mapToDouble(this::energy)
                .sorted()
                .toArray();
    }

    /**
     * Whether a frequency lies between two harmonics, clear of both.
     *
     * @param halfPeriods of the frequency over the record
     */
    boolean isBetween(double halfPeriods) {
        double nearest = Math.rint(halfPeriods / (2 * periods)) * 2 * periods;
        return Math.abs(halfPeriods - nearest) > Math.min(NOTCH, periods / 2);
    }

    /** Periods of the tone over the record. */
    double periods() {
        return periods;
    }

    /** Number of averaged samples that the series is made of. */
    int length() {
        return left.length;
    }

    /** Order of the last cosine. */
    int last() {
        return terms.length - 1;
    }

    /** Energy of cosine j, from 1 up to the last, V² times samples. */
    double energy(int j) {
        return terms[j] * terms[j] * left.length / 2;
    }

    /** Coefficients of the cosines from the first up to an order. */
    Samples terms(int last) {
        return Samples.of(Arrays.copyOfRange(terms, 1, last + 1));
    }

    /** Number of cosines that show the noise; 0 where they are too few, or the record is too short. */
    int noiseTerms() {
        return periods < FEWEST_PERIODS || between.length < FEWEST_FOR_NOISE ? 0 : between.length;
    }

    /** Mean energy of a cosine of noise; there must be terms that show it. */
    double density() {
        return between[between.length / 2] / MEDIAN;
    }

    /** Amplitudes of the lines within a reach of one of so many periods over the record. */
    LineZoom zoom(double cycles, double reach) {
        return new LineZoom(left, cycles, reach);
    }

    /** Cosine and sine coefficient, about the middle of the record, of a line of so many periods over it. */
    double[] line(double cycles) {
        double step = 2 * Math.PI * cycles / left.length;
        double turnCosine = Math.cos(step);
        double turnSine = Math.sin(step);
        double x = Math.cos(step / 2 - Math.PI * cycles);
        double y = Math.sin(step / 2 - Math.PI * cycles);
        double cosine = 0;
        double sine = 0;
        for (double sample : left) {
            cosine += sample * x;
            sine += sample * y;
            double next = x * turnCosine - y * turnSine;
            y = x * turnSine + y * turnCosine;
            x = next;
        }
        return new double[] {2 * cosine / left.length, 2 * sine / left.length};
    }
}
