package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The amplitude of a line is that of the plain sum over all samples, within the bound that is stated. */
class LineZoomTest {
    private static final int SAMPLES = 6000;

    /** Twice the magnitude of the Fourier sum at any frequency, over the number of samples. */
    private static double plain(double[] record, double cycles) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < record.length; i++) {
            double angle = 2 * Math.PI * cycles * i / record.length;
            cosine += record[i] * Math.cos(angle);
            sine += record[i] * Math.sin(angle);
        }
        return 2 * Math.hypot(cosine, sine) / record.length;
    }

    @Test
    void everyAmplitudeWithinReachIsThatOfThePlainSumWithinTheBound() {
        Random random = new Random(8);
        double[] record = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            record[i] = random.nextGaussian() + 0.05 * Math.cos(2 * Math.PI * 403.3 * i / SAMPLES);
        }
        LineZoom zoom = new LineZoom(record, 400, 4);
        assertThat(zoom.bound()).isPositive().isLessThan(5e-4);
        double most = 0;
        for (double cycles = 396; cycles <= 404; cycles += 0.1) {
            double error = Math.abs(zoom.amplitude(cycles) - plain(record, cycles));
            assertThat(error).as(cycles + " periods").isLessThanOrEqualTo(zoom.bound());
            most = Math.max(most, error);
        }
        assertThat(most).isLessThan(zoom.bound() / 4); // the bound takes every sample for the worst
    }

    @Test
    void aRecordThatIsShorterThanItsBlocksIsSummedAsItIs() {
        double[] record = {1, -2, 0.5, 3, -1};
        LineZoom zoom = new LineZoom(record, 1.2, 2);
        assertThat(zoom.bound()).isPositive();
        assertThat(Math.abs(zoom.amplitude(2.1) - plain(record, 2.1))).isLessThanOrEqualTo(zoom.bound());
    }
}
