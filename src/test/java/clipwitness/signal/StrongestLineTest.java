package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StrongestLineTest {
    private static OptionalDouble line(int samples, double perSample, double noise, double offset) {
        Random random = new Random(4);
        double[] values = new double[samples];
        for (int i = 0; i < samples; i++) {
            values[i] = offset + Math.sin(2 * Math.PI * perSample * i) + noise * random.nextGaussian();
        }
        return StrongestLine.of(Samples.of(values));
    }

    /** The transform of four times as many places, a power of two: 16,384 and 8192. */
    @Test
    void aSineIsFoundToHalfALineOfThePaddedTransform() {
        assertThat(line(4096, 0.01, 0.1, 5).orElseThrow()).isCloseTo(0.01, within(0.5 / 16_384));
        assertThat(line(3000, 0.2, 0.1, -5).orElseThrow()).isCloseTo(0.2, within(0.5 / 8192));
    }

    /** Three periods in the first 8192 samples, 36 in the record: it is looked at again, thinned. */
    @Test
    void aSlowSineInALongRecordIsLookedAtAgain() {
        double perSample = 3.0 / 8192;
        assertThat(line(98_304, perSample, 0.1, 1).orElseThrow()).isCloseTo(perSample, within(0.2 / 32_768));
    }

    @Test
    void fewerThanOneAndAHalfPeriodsAreNoLine() {
        assertThat(line(4096, 1.2 / 4096, 0, 0)).isEmpty();
        assertThat(line(4096, 2.2 / 4096, 0, 0)).isPresent();
    }

    @Test
    void noiseAndAConstantHaveNoLine() {
        Random random = new Random(6);
        double[] noise = new double[4096];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = random.nextGaussian();
        }
        assertThat(StrongestLine.of(Samples.of(noise))).isEmpty();
        assertThat(StrongestLine.of(Samples.of(new double[4096]))).isEmpty();
    }

    /** A tenth of the samples missing. */
    @Test
    void gapsDoNotHideALine() {
        double[] values = new double[98_304];
        for (int i = 0; i < values.length; i++) {
            values[i] = i % 10 == 0 ? Double.NaN : 2 + Math.sin(2 * Math.PI * 3 / 8192 * i);
        }
        assertThat(StrongestLine.of(Samples.of(values)).orElseThrow()).isCloseTo(3.0 / 8192, within(0.2 / 32_768));
    }
}
