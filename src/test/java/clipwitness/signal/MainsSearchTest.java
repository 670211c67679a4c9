package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines of the mains in white noise, 8,000 samples a second over two seconds, near a nominal 50 Hz. */
class MainsSearchTest {
    private static final double RATE = 8000;

    /** Amplitudes of the multiples of a frequency, first to last, in noise of one unit. */
    private static Samples record(double hertz, int seconds, double... amplitudes) {
        Random random = new Random(3);
        double[] values = new double[((int) RATE) * seconds];
        for (int i = 0; i < values.length; i++) {
            values[i] = 7 + random.nextGaussian();
            for (int k = 1; k <= amplitudes.length; k++) {
                values[i] += amplitudes[k - 1] * Math.sin(2 * Math.PI * k * hertz * i / RATE + k);
            }
        }
        return Samples.of(values);
    }

    private static double found(Samples record) {
        return RATE * MainsSearch.of(record, 50 / RATE, 10).orElseThrow();
    }

    @Test
    void theFundamentalIsFoundWithinOnePercent() {
        assertThat(found(record(50.2, 2, 0.5))).isCloseTo(50.2, within(0.04));
        assertThat(found(record(49.6, 2, 0.5))).isCloseTo(49.6, within(0.04));
    }

    /** Of rectified mains even multiples are left; the tenth of them tells the frequency ten times as well. */
    @Test
    void multiplesAloneTellItToo() {
        assertThat(found(record(50.15, 2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.5))).isCloseTo(50.15, within(0.0125));
        assertThat(found(record(49.85, 2, 0, 0.5, 0, 0.4))).isCloseTo(49.85, within(0.02));
    }

    @Test
    void noiseAloneIsNoLine() {
        assertThat(MainsSearch.of(record(50, 2), 50 / RATE, 10)).isEmpty();
        assertThat(MainsSearch.of(record(50, 2, 0.02), 50 / RATE, 10)).isEmpty();
    }

    /** 5 % away is not the mains, and 125 Hz is no multiple. */
    @Test
    void lineElsewhereIsNotTheMains() {
        assertThat(MainsSearch.of(record(125, 2, 1), 50 / RATE, 10)).isEmpty();
    }

    @Test
    void aRecordOfThreePeriodsShowsAStrongLine() {
        double[] values = new double[480];
        Random random = new Random(4);
        for (int i = 0; i < values.length; i++) {
            values[i] = 0.01 * random.nextGaussian() + Math.sin(2 * Math.PI * 50 * i / RATE);
        }
        assertThat(RATE * MainsSearch.of(Samples.of(values), 50 / RATE, 3).orElseThrow())
                .isBetween(49.5, 50.5);
    }
}
