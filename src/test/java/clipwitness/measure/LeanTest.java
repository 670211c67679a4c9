package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Spread;
import clipwitness.fixture.TestRecord;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Where the area of the positive half-wave lies, on waves whose centroids are integrals done by hand. */
class LeanTest {
    private static final double EDGE = 0.1;

    /** From -1 to 1 within a tenth of the period, then straight down to -1; phase 0 is the upward zero crossing. */
    private static double sag(double p) {
        return p < EDGE / 2 ? 2 * p / EDGE : p > 1 - EDGE / 2 ? 2 * (p - 1) / EDGE : (1 - 2 * p) / (1 - EDGE);
    }

    private static double rise(double p) {
        return sag(p <= 0.5 ? 0.5 - p : 1.5 - p);
    }

    /** A triangle over a base of 1 with its top at t has its centroid at (1 + t) / 3; here t = 0.1. */
    @Test
    void aFastEdgeThenASagLeansToTheFrontBy13Point33PercentAndItsMirrorImageToTheBack() {
        assertThat(lean(LeanTest::sag)).isCloseTo(-13.333, within(0.05));
        assertThat(lean(LeanTest::rise)).isCloseTo(13.333, within(0.05));
    }

    private static double lean(DoubleUnaryOperator shape) {
        return Values.value(TestRecord.of(shape).sampled(2000, 8.3, 0.1).measured(), WaveformQuantity.LEAN);
    }

    /** Scatter of 200 values is known to 5 %, one standard deviation: the bounds are three of them. */
    @Test
    void theLeanOf200NoisyRecordsScattersAsStated() {
        for (DoubleUnaryOperator shape : List.<DoubleUnaryOperator>of(LeanTest::sag, LeanTest::rise)) {
            Spread spread = new Spread();
            for (int record = 0; record < 200; record++) {
                spread.add(TestRecord.of(shape)
                        .sampled(300, 6.37, record * 0.61803)
                        .noisy(0.02, 0, record)
                        .measured()
                        .get(WaveformQuantity.LEAN));
            }
            assertThat(spread.overStated()).isBetween(0.85, 1.15);
        }
    }
}
