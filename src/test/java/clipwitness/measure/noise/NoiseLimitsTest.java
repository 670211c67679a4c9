package clipwitness.measure.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import clipwitness.fixture.NoiseRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Uncertainties of noise and hum by the law of propagation, and the borders of what is measured. */
class NoiseLimitsTest {
    private static final double RATE = 8000;
    private static final OptionalDouble FIFTY = OptionalDouble.of(50);
    private static final double[] NONE = {};

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    private static NoiseInput input(Samples samples, double accuracy) {
        return new NoiseInput(
                new Waveform(samples, RATE, Unit.VOLT),
                FIFTY,
                Optional.of(new VerticalScale(0.01, OptionalDouble.empty())),
                accuracy);
    }

    /** 1 mV of noise over 16,000 samples leaves 1 mV / root 16,000 = 7.91 µV in the rms of a line; a bound of 3 % is 3 % / root 3 of the figure. */
    @Test
    void aLineIsKnownByTheNoiseAndTheLengthOfTheRecord() {
        NoiseRecord record = new NoiseRecord(RATE, 2, 1e-3, 50.1, new double[] {0.02, 0.01}, 0);
        NoiseResult result = NoiseMeasurement.of(input(record.samples(3), 0.03));
        Measured line = result.hum().get(0).lines().get(1).level();
        assertThat(line.value().orElseThrow()).isCloseTo(0.01 / Math.sqrt(2), within(3e-5));
        assertThat(part(line, Source.NOISE)).isCloseTo(1e-3 / Math.sqrt(16_000), within(4e-7));
        assertThat(part(line, Source.VERTICAL_ACCURACY))
                .isCloseTo(0.01 / Math.sqrt(2) * 0.03 / Math.sqrt(3), within(1e-6));
        assertThat(result.hum().get(0).lines()).hasSize(10);
        assertThat(result.hum().get(0).lines().get(2).frequency()).isEqualTo(150);
        assertThat(result.hum().get(0).power()).isCloseTo((4e-4 + 1e-4) / 2, within(5e-6));
        assertThat(result.range().perDivision()).hasValue(0.01);
        assertThat(result.lasts()).isEqualTo(2);
        Measured rms = result.values().get(NoiseFigure.RMS);
        double volts = rms.value().orElseThrow();
        assertThat(part(rms, Source.VERTICAL_ACCURACY)).isCloseTo(volts * 0.03 / Math.sqrt(3), within(1e-9));
        assertThat(volts).isCloseTo(Math.sqrt(2.5e-4 + 1e-6 * 3580 / 4000), within(2e-5));
    }

    /** The power is known to 1 / root of band times time, 3,580 Hz over 2 s, its root to half of that: 0.59 %; windows lose a little. */
    @Test
    void whiteNoiseIsKnownByItsBandTimesItsTime() {
        NoiseResult result = NoiseMeasurement.of(input(new NoiseRecord(RATE, 2, 1e-3, 50, NONE, 0).samples(4), 0));
        Measured.Value rms = result.values().get(NoiseFigure.RMS).asValue().orElseThrow();
        assertThat(result.band()).contains(new Band(20, 3600));
        assertThat(rms.number()).isCloseTo(1e-3 * Math.sqrt(3580 / 4000.0), within(2e-5));
        assertThat(rms.standardUncertainty() / rms.number()).isCloseTo(0.5 / Math.sqrt(7160), within(0.6e-3));
        NoiseSpectrum spectrum = result.spectrum().orElseThrow();
        assertThat((spectrum.points() - 1) * spectrum.spacing()).isCloseTo(RATE / 2, within(1e-6));
        double square = 0;
        for (int i = 10; i < spectrum.points() - 10; i++) {
            square += Math.pow(spectrum.density(i), 2) / (spectrum.points() - 20);
        }
        assertThat(Math.sqrt(square)).isCloseTo(1e-3 / Math.sqrt(RATE / 2), within(3e-7));
    }

    /** Steps of q make q / root 12 over the whole band. Of a figure f all of it or none may be in it: f less root of f² less its square, as a bound. */
    @Test
    void theConvertersNoiseMayBePartOfTheFigure() {
        NoiseRecord record = new NoiseRecord(RATE, 2, 2e-3, 50, NONE, 1e-3);
        NoiseResult result = NoiseMeasurement.of(input(record.samples(5), 0));
        double floor = 1e-3 / Math.sqrt(12) * Math.sqrt(3580 / 4000.0);
        assertThat(result.floor().orElseThrow()).isCloseTo(floor, within(2e-3 * floor));
        Measured rms = result.values().get(NoiseFigure.RMS);
        double volts = rms.value().orElseThrow();
        assertThat(part(rms, Source.CONVERTER_STEP))
                .isCloseTo((volts - Math.sqrt(volts * volts - floor * floor)) / Math.sqrt(3), within(1e-7));
        assertThat(rms.asValue().orElseThrow().isUpperBound()).isFalse();
    }

    /** Of 500 samples a second four multiples of 50 Hz lie below 0.45 of the rate. */
    @Test
    void aRefusedRecordNamesTheLinesThatWereLookedFor() {
        NoiseInput slow =
                new NoiseInput(new Waveform(Samples.of(new double[100]), 500, Unit.VOLT), FIFTY, Optional.empty(), 0);
        NoiseResult result = NoiseMeasurement.refused(slow, Reason.of(FigureReason.CAPTURE_NOT_MEASURED));
        assertThat(result.hum()).hasSize(1);
        assertThat(result.hum().get(0).lines())
                .extracting(HumLine::frequency)
                .containsExactly(50.0, 100.0, 150.0, 200.0);
        assertThat(result.hum().get(0).lines()).extracting(HumLine::order).containsExactly(1, 2, 3, 4);
        assertThat(result.hum().get(0).lines())
                .allMatch(l -> l.level().reason().orElseThrow().is(FigureReason.CAPTURE_NOT_MEASURED));
        assertThat(result.values().get(NoiseFigure.A_WEIGHTED).value()).isEmpty();
        assertThat(result.band()).isEmpty();
    }

    /** Five periods of 50 Hz are 800 samples; one period is 160. */
    @Test
    void humNeedsFivePeriodsAndNoiseOne() {
        Samples long1 = new NoiseRecord(RATE, 1, 1e-3, 50, NONE, 0).samples(6);
        assertThat(codes(NoiseMeasurement.of(input(first(long1, 800), 0)))).isEmpty();
        NoiseResult four = NoiseMeasurement.of(input(first(long1, 799), 0));
        assertThat(codes(four)).containsExactly(DoubtCode.TOO_SHORT_FOR_HUM);
        assertThat(four.values().get(NoiseFigure.RMS).value()).isPresent();
        assertThat(NoiseMeasurement.of(input(first(long1, 160), 0))
                        .values()
                        .get(NoiseFigure.RMS)
                        .value())
                .isPresent();
        NoiseResult less = NoiseMeasurement.of(input(first(long1, 159), 0));
        assertThat(less.values().get(NoiseFigure.RMS).reason().orElseThrow().is(FigureReason.RECORD_TOO_SHORT))
                .isTrue();
        assertThat(less.hum()
                        .get(0)
                        .lines()
                        .get(0)
                        .level()
                        .reason()
                        .orElseThrow()
                        .is(DoubtReason.TOO_SHORT_FOR_HUM))
                .isTrue();
    }

    private static Samples first(Samples samples, int count) {
        return Samples.of(Arrays.copyOf(samples.toArray(), count));
    }

    private static List<DoubtCode> codes(NoiseResult result) {
        return result.doubts().stream().map(Doubt::code).toList();
    }

    /** One sample of a hundred may be missing. */
    @Test
    void gapsOfMoreThanOnePercentRefuse() {
        double[] values = new double[1000];
        assertThat(NoiseDoubts.missingSamples(Samples.of(values))).isEmpty();
        Arrays.fill(values, 100, 110, Double.NaN);
        assertThat(NoiseDoubts.missingSamples(Samples.of(values)).orElseThrow().severity())
                .isEqualTo(Severity.WARNING);
        values[500] = Double.NaN;
        assertThat(NoiseDoubts.missingSamples(Samples.of(values)).orElseThrow().severity())
                .isEqualTo(Severity.REFUSAL);
    }

    /** Codes of 1 V: so many at the highest, so many below it, the rest about zero. */
    private static boolean isPiledUp(int top, int below, double highest, double lowest) {
        double[] values = new double[200];
        for (int i = 0; i < values.length; i++) {
            values[i] = i % 3 - 1;
        }
        Arrays.fill(values, 0, top, highest);
        Arrays.fill(values, top, top + below, highest - Math.signum(highest));
        values[199] = lowest;
        return NoiseDoubts.overRange(Samples.of(values), OptionalDouble.of(1)).isPresent();
    }

    /** Ten at the end, more than five times those beside it, in noise of eight codes or more. */
    @Test
    void samplesThatPileUpAtAnEndAreOverRange() {
        assertThat(isPiledUp(10, 1, 5, -3)).isTrue();
        assertThat(isPiledUp(9, 1, 5, -3)).isFalse();
        assertThat(isPiledUp(10, 2, 5, -3)).isFalse();
        assertThat(isPiledUp(11, 2, 5, -3)).isTrue();
        assertThat(isPiledUp(11, 2, 5, -2)).isFalse();
        assertThat(isPiledUp(11, 2, -5, 3)).isTrue();
        assertThat(isPiledUp(9, 2, -5, 3)).isFalse();
        assertThat(NoiseDoubts.overRange(Samples.of(new double[50]), OptionalDouble.empty()))
                .isEmpty();
    }
}
