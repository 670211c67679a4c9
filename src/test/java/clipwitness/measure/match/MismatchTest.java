package clipwitness.measure.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Spread;
import clipwitness.fixture.SyntheticTrace;
import clipwitness.measure.Measured;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The uncertainty of a pair's mismatch. */
class MismatchTest {
    private static final int STEPS =
            81; // twenty to the decade over four decades, the currents at which curves are compared

    /** Scatter of 120 values is known to 6.5 %, one standard deviation: the bounds are three of them. */
    @Test
    void theMismatchOf120PairsOfNoisyTracesScattersAsStated() {
        Spread spread = new Spread();
        for (int pair = 0; pair < 120; pair++) {
            spread.add(pair(noisy(2L * pair, 0), noisy(2L * pair + 1, 0.01)).mismatch());
        }
        assertThat(spread.mean()).isCloseTo(0.01, within(5e-5));
        assertThat(spread.overStated()).isBetween(0.8, 1.2);
    }

    private static SyntheticTrace noisy(long seed, double above) {
        return new SyntheticTrace(seed).sweep(i -> SyntheticTrace.silicon(i) + above, 1e-6, 1e-2, STEPS, 1e-3);
    }

    /** Sweeps up and down that lie 3 mV and 4 mV apart make the voltages of both uncertain, each by itself (JCGM 100, 5.1.2). */
    @Test
    void bothDevicesCountInTheUncertaintyOfTheMismatchAtOneMilliampere() {
        DoubleUnaryOperator other = i -> SyntheticTrace.silicon(i) + 0.02;
        SyntheticTrace a = new SyntheticTrace(1)
                .sweep(SyntheticTrace::silicon, 1e-6, 1e-2, STEPS, 0)
                .back(0.003);
        SyntheticTrace b =
                new SyntheticTrace(1).sweep(other, 1e-6, 1e-2, STEPS, 0).back(0.004);
        Measured.Value mismatch = pair(a, b).mismatchAt1mA().asValue().orElseThrow();
        assertThat(mismatch.number()).isCloseTo(0.0205, within(1e-5));
        assertThat(Math.pow(mismatch.standardUncertainty(), 2)).isCloseTo(variance(a) + variance(b), within(1e-15));
        assertThat(variance(a)).isGreaterThan(0.003 * 0.003 / 12);
        assertThat(variance(b)).isGreaterThan(0.004 * 0.004 / 12);
        assertThat(mismatch.isUpperBound()).isFalse();
    }

    private static double variance(SyntheticTrace trace) {
        Measured voltage = trace.measured().atOneMilliampere();
        return Math.pow(voltage.asValue().orElseThrow().standardUncertainty(), 2);
    }

    private static MatchedPair pair(SyntheticTrace a, SyntheticTrace b) {
        return Mismatch.of(new NamedDevice("a", a.measured()), new NamedDevice("b", b.measured()))
                .orElseThrow();
    }
}
