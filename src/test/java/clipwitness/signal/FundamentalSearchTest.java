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
