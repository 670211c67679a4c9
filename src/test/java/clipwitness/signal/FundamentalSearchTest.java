package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The waves are sums of written-down lines, so their fundamental is known. */
class FundamentalSearchTest {
    private static final double PER_SAMPLE = 1 / 660.0;

    @Test
    void aDoublerWhoseInputStandsThreeDecibelsBelowItsSecondHarmonicHasTheInputsPeriod() {
        assertThat(strongest(0.7, 1, 0.13)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    @Test
    void whatADoublerLeavesOfItsInputEighteenDecibelsBelowIsNoFundamental() {
        assertThat(strongest(0.12, 1, 0.03)).isCloseTo(2 * PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    @Test
    void aSineIsItsOwnFundamental() {
        assertThat(strongest(1, 0, 0)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    @Test
    void aTriplerWhoseInputStandsThreeDecibelsBelowItsThirdHarmonicHasTheInputsPeriod() {
        assertThat(strongest(0.7, 0, 1)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
        assertThat(strongest(0, 0, 1)).isCloseTo(3 * PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    /** The border lies at a quarter of the harmonic, -12 dB, whether it is the second or the third. */
    @Test
    void aQuarterOfItsHarmonicIsTheLeastThatAFundamentalHas() {
        assertThat(strongest(0.27, 1, 0)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
        assertThat(strongest(0.23, 1, 0)).isCloseTo(2 * PER_SAMPLE, within(1e-3 * PER_SAMPLE));
        assertThat(strongest(0.27, 0, 1)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
        assertThat(strongest(0.23, 0, 1)).isCloseTo(3 * PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    /** The lines of the fundamental that are no multiples of the strongest count together: 0.2² + 0.2² is more than 0.25². */
    @Test
    void allLinesBesideTheStrongestCount() {
        assertThat(strongest(0.2, 1, 0.2)).isCloseTo(PER_SAMPLE, within(1e-3 * PER_SAMPLE));
        assertThat(strongest(0.17, 1, 0.17)).isCloseTo(2 * PER_SAMPLE, within(1e-3 * PER_SAMPLE));
    }

    private static Samples sine(int size, double perSample) {
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            values[i] = 3 + Math.sin(2 * Math.PI * perSample * i + 0.4);
        }
        return Samples.of(values);
    }

    /** A period of twice the record cannot be found, nor a frequency above 0.45 of the sample rate. */
    @Test
    void whatTheRecordCannotHoldIsNotLookedFor() {
        assertThat(FundamentalSearch.near(sine(1000, 0.01), 0.00049)).isEmpty();
        assertThat(FundamentalSearch.near(sine(1000, 0.01), 0.0006)).isPresent();
        assertThat(FundamentalSearch.near(sine(1000, 0.3), 0.451)).isEmpty();
        assertThat(FundamentalSearch.near(sine(1000, 0.44), 0.449).orElseThrow())
                .isCloseTo(0.44, within(1e-6));
    }

    /** Half an octave about what is expected is searched: a factor of 1.4 either way. */
    @Test
    void theLineNearTheExpectedFrequencyIsFound() {
        assertThat(FundamentalSearch.near(sine(4000, 0.01), 0.0137).orElseThrow())
                .isCloseTo(0.01, within(1e-8));
        assertThat(FundamentalSearch.near(sine(4000, 0.01), 0.0073).orElseThrow())
                .isCloseTo(0.01, within(1e-8));
        assertThat(FundamentalSearch.near(sine(40, 0.1), 0.11).orElseThrow()).isCloseTo(0.1, within(1e-6));
        assertThat(FundamentalSearch.near(sine(200_000, 0.0001), 0.00011).orElseThrow())
                .isCloseTo(0.0001, within(1e-9));
    }

    @Test
    void aConstantHasNoFundamental() {
        assertThat(FundamentalSearch.strongest(Samples.of(new double[1000]))).isEmpty();
    }

    private static double strongest(double first, double second, double third) {
        Random random = new Random(5);
        double[] values = new double[8_192];
        for (int i = 0; i < values.length; i++) {
            double turn = 2 * Math.PI * PER_SAMPLE * i;
            values[i] = first * Math.sin(turn)
                    + second * Math.sin(2 * turn + 1)
                    + third * Math.sin(3 * turn + 2)
                    + 0.002 * random.nextGaussian();
        }
        return FundamentalSearch.strongest(Samples.of(values)).orElseThrow();
    }
}
