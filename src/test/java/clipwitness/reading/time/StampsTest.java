package clipwitness.reading.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The line through time stamps that a known grid was rounded to. */
class StampsTest {
    /** A slope from n stamps, each off by up to q/2, errs by less than 3 q / (2 n): Σ|k| q/2 over Σk², k from the middle. */
    @Test
    void stampsRoundedToTwoIntervalsStillGiveTheInterval() {
        for (int n : new int[] {50, 599, 2500}) {
            double[] stamps = grid(n, 4.0e-5, 0.05622, 3);
            Stamps line = Stamps.of(stamps, 3);
            assertThat(line.interval()).isCloseTo(4.0e-5, within(1.5e-4 / n));
            assertThat(line.even()).isTrue();
            assertThat(line.envelope()).isFalse();
            assertThat(line.repeats()).isPositive();
        }
    }

    @Test
    void theQuantumIsTheLastDigitOfTheLargestStamp() {
        assertThat(Stamps.of(new double[] {0, 0.0001, 0.0802}, 3).quantum()).isCloseTo(1e-4, within(1e-15));
        assertThat(Stamps.of(new double[] {-261.9, 0, 261.97999338}, 11).quantum())
                .isCloseTo(1e-8, within(1e-15));
    }

    @Test
    void pairsOfStampsFurtherApartThanTheirLastDigitAreAnEnvelope() {
        assertThat(Stamps.of(new double[] {0, 0, 1.2e-4, 1.2e-4, 2.4e-4, 2.4e-4}, 6)
                        .envelope())
                .isTrue();
        assertThat(Stamps.of(new double[] {1e-4, 1e-4, 2e-4, 2e-4, 3e-4, 3e-4}, 1)
                        .envelope())
                .isFalse();
    }

    /** Found by fuzzing: a pair and one stamp more were taken for an envelope of a single row. */
    @Test
    void onePairIsNoEnvelope() {
        assertThat(Stamps.of(new double[] {0, 0, 4}, 3).envelope()).isFalse();
        assertThat(Stamps.of(new double[] {0, 0, 4, 4}, 3).envelope()).isTrue();
    }

    @Test
    void aStampOffTheGridByAThirdOfAnIntervalIsUneven() {
        assertThat(Stamps.of(new double[] {0, 1, 2.33, 3, 4}, 3).even()).isFalse();
        assertThat(Stamps.of(new double[] {0, 1, 2.05, 3, 4}, 3).even()).isTrue();
    }

    @Test
    void aMillionStampsKeepTheInterval() {
        double[] stamps =
                IntStream.range(0, 1_000_000).mapToDouble(k -> 100 + k * 1e-6).toArray();
        assertThat(Stamps.of(stamps, 16).interval()).isCloseTo(1e-6, within(1e-17));
    }

    private static double[] grid(int n, double interval, double start, int digits) {
        return IntStream.range(0, n)
                .mapToDouble(k -> new BigDecimal(start + k * interval)
                        .round(new MathContext(digits))
                        .doubleValue())
                .toArray();
    }
}
