package clipwitness.measure.capture;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.fixture.Said;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Measurement book, section 1: twenty periods of 500 samples in codes of 10 mV, cut at a level as a converter cuts them, behind the noise. The swing of 2.4 V
 * about 0.4 V fills no converter.
 */
class OverRangeTest {
    private static final double STEP = 0.01;
    private static final int PERIOD = 500;
    private static final double NOISE = 0.5 * STEP;

    private static Samples wave(double noise, double least, double most) {
        Random random = new Random(5);
        double[] samples = new double[20 * PERIOD];
        for (int i = 0; i < samples.length; i++) {
            double volts = 0.4 + 1.2 * Math.sin(2 * Math.PI * (i + 0.5) / PERIOD) + noise * random.nextGaussian();
            samples[i] = Math.max(least, Math.min(most, STEP * Math.rint(volts / STEP)));
        }
        return Samples.of(samples);
    }

    private static Optional<String> evidence(double noise, double least, double most, VerticalScale... scale) {
        return Said.reason(OverRange.evidence(
                wave(noise, least, most), STEP, PERIOD, noise, Stream.of(scale).findFirst()));
    }

    private static VerticalScale scale(double perDivision) {
        return new VerticalScale(perDivision, OptionalDouble.empty());
    }

    private static VerticalScale scale(double perDivision, double offset) {
        return new VerticalScale(perDivision, OptionalDouble.of(offset));
    }

    /** Eight bits about zero end at 127 and at -128 codes. */
    @Test
    void aSilentEndAtTheLastCodeIsOverRange() {
        assertThat(evidence(NOISE, -9, 1.27))
                .hasValueSatisfying(
                        t -> assertThat(t).endsWith("samples lie on the upper extreme, where the noise vanishes"));
        assertThat(evidence(NOISE, -9, 1.28)).isPresent();
        assertThat(evidence(NOISE, -9, 1.26)).isEmpty();
        assertThat(evidence(NOISE, -9, 1.29)).isEmpty();
    }

    /** 1.6 V and more below zero: the wave turned over. */
    @Test
    void theLowerEndIsNamedAsSuch() {
        Samples turned = wave(NOISE, -9, 1.28).map(v -> -v);
        assertThat(Said.reason(OverRange.evidence(turned, STEP, PERIOD, NOISE, Optional.empty())))
                .hasValueSatisfying(t -> assertThat(t).contains("lie on the lower extreme"));
    }

    /** A plateau of the unit itself has the noise of the rest on it, or none anywhere. */
    @Test
    void anEndThatIsNotSilentIsTheUnits() {
        assertThat(evidence(0, -9, 1.27)).isEmpty();
        assertThat(evidence(0.29 * STEP, -9, 1.27)).isEmpty();
        assertThat(evidence(0.31 * STEP, -9, 1.27)).isPresent();
    }

    /** Two divisions of 0.5 V, to one and a half codes. */
    @Test
    void aSilentEndAtAWholeNumberOfDivisionsIsOverRange() {
        assertThat(evidence(NOISE, -9, 1.00, scale(0.5))).isPresent();
        assertThat(evidence(NOISE, -9, 1.01, scale(0.5))).isPresent();
        assertThat(evidence(NOISE, -9, 0.99, scale(0.5))).isPresent();
        assertThat(evidence(NOISE, -9, 1.02, scale(0.5))).isEmpty();
        assertThat(evidence(NOISE, -9, 1.10, scale(0.5))).isEmpty();
        assertThat(evidence(NOISE, -9, 1.10, scale(0.5, 0.1))).isPresent();
        assertThat(evidence(NOISE, -9, 1.00, scale(0.5, 0.1))).isEmpty();
    }

    /** The centre of the screen is no end. */
    @Test
    void aSilentEndAtTheCentreIsNone() {
        assertThat(evidence(NOISE, 0, 9, scale(0.5))).isEmpty();
    }

    /** 128 codes of 10 mV from the centre are 5.12 divisions of 0.25 V, 4 of 0.32 V, and 3.2 of 0.4 V, where no screen ends. */
    @Test
    void anEndOfTheScreenIsOverRangeWithoutNoise() {
        assertThat(evidence(0, -9, 1.28, scale(0.25, 0)))
                .hasValueSatisfying(
                        t -> assertThat(t).endsWith("samples lie on the upper end of the converter's range"));
        assertThat(evidence(0, -9, 1.28, scale(0.32, 0))).isPresent();
        assertThat(evidence(0, -9, 1.24, scale(0.25, 0))).isPresent();
        assertThat(evidence(0, -9, 1.22, scale(0.25, 0))).isEmpty();
        assertThat(evidence(0, -9, 1.28, scale(0.4, 0))).isEmpty();
        assertThat(evidence(0, -9, 1.28, scale(0.2, 0))).isEmpty();
        assertThat(evidence(0, -9, 1.28, scale(0.25))).isEmpty();
        assertThat(evidence(0, -9, 1.38, scale(0.25, 0.1))).isPresent();
        assertThat(evidence(0, -9, 1.28, scale(0.25, 0.1))).isEmpty();
    }

    /** 240 codes are 94.1 % of 255, 239 are 93.7 %; four codes more than 255 may be a scale that is a little off. */
    @Test
    void aSpanOf94PercentOfAConvertersCodesFillsIt() {
        assertThat(filled(240)).isPresent();
        assertThat(filled(239)).isEmpty();
        assertThat(filled(259)).isPresent();
        assertThat(filled(261)).isEmpty();
    }

    /** A sine that is cut so that it spans a number of codes. */
    private static Optional<String> filled(int codes) {
        double[] samples = new double[20 * PERIOD];
        for (int i = 0; i < samples.length; i++) {
            double sine = 3 * Math.sin(2 * Math.PI * (i + 0.5) / PERIOD);
            samples[i] = STEP * Math.max(0, Math.min(codes, Math.rint(sine / STEP)));
        }
        return Said.reason(OverRange.evidence(Samples.of(samples), STEP, PERIOD, 0, Optional.empty()));
    }

    /** One period of three has a plateau. */
    @Test
    void aPlateauInFewPeriodsIsNoEnd() {
        double[] samples = wave(NOISE, -9, 1.27).toArray();
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= i / PERIOD % 3 == 0 ? 1 : 0.5;
        }
        assertThat(Said.reason(OverRange.evidence(Samples.of(samples), STEP, PERIOD, NOISE, Optional.empty())))
                .isEmpty();
    }
}
