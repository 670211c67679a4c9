package clipwitness.measure.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.fixture.NoiseRecord;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Noise of known density and lines of known amplitude are measured as what they are. */
class NoiseMeasurementTest {
    private static final double[] NONE = {};
    private static final OptionalDouble FIFTY = OptionalDouble.of(50);

    @Test
    void whiteNoiseHasItsShareOfTheBand() {
        NoiseRecord record = new NoiseRecord(100_000, 2, 1e-3, 50, NONE, 0);
        NoiseResult result = record.measured(1, FIFTY);
        assertThat(result.band()).contains(new Band(20, 20_000));
        double truth = Math.sqrt(record.whitePower(new Band(20, 20_000)));
        assertThat(value(result, NoiseFigure.RMS).number()).isCloseTo(truth, within(0.01 * truth));
        assertThat(value(result, NoiseFigure.RMS).expanded()).isBetween(0.003 * truth, 0.012 * truth);
    }

    @Test
    void aSineOf1KilohertzKeepsItsRmsUnderTheWeighting() {
        NoiseRecord record = new NoiseRecord(48_000, 1, 1e-6, 1000, new double[] {0.01}, 0);
        NoiseResult result = record.measured(2, FIFTY);
        assertThat(value(result, NoiseFigure.RMS).number()).isCloseTo(0.01 / Math.sqrt(2), within(1e-6));
        assertThat(value(result, NoiseFigure.A_WEIGHTED).number()).isCloseTo(0.01 / Math.sqrt(2), within(1e-6));
    }

    @Test
    void aLineOf50HertzIsWeightedAsTheStandardSaysHoweverShortTheSegment() {
        double weighted = 0.01 / Math.sqrt(2) * Math.pow(10, -30.2717 / 20);
        for (double seconds : new double[] {0.2, 0.5, 1, 4}) {
            NoiseResult result = new NoiseRecord(48_000, seconds, 1e-8, 50, new double[] {0.01}, 0).measured(3, FIFTY);
            assertThat(value(result, NoiseFigure.A_WEIGHTED).number())
                    .as(seconds + " s")
                    .isCloseTo(weighted, within(0.01 * weighted));
        }
    }

    @Test
    void linesOfTheMainsAreFoundWithTheirFrequency() {
        NoiseRecord record = new NoiseRecord(100_000, 1, 1e-3, 59.93, new double[] {5e-4, 2.5e-4, 0, 0, 1e-4}, 1e-4);
        MainsHum hum = record.measured(4, OptionalDouble.of(60)).hum().get(0);
        assertThat(hum.mains().orElseThrow().number()).isCloseTo(59.93, within(0.01));
        assertThat(hum.lines()).hasSize(10);
        assertThat(hum.lines().get(0).frequency()).isEqualTo(60);
        assertThat(level(hum, 1)).isCloseTo(5e-4 / Math.sqrt(2), within(2e-5));
        assertThat(level(hum, 2)).isCloseTo(2.5e-4 / Math.sqrt(2), within(2e-5));
        assertThat(level(hum, 5)).isCloseTo(1e-4 / Math.sqrt(2), within(2e-5));
        assertThat(hum.lines().get(2).level().reason().orElseThrow().is(FigureReason.LINE_HIDDEN))
                .isTrue();
    }

    @Test
    void noiseAloneShowsNoLines() {
        int shown = 0;
        for (int seed = 0; seed < 60; seed++) {
            NoiseResult result =
                    new NoiseRecord(20_000, 0.5, 1e-3, 50, NONE, 0).measured(100 + seed, OptionalDouble.empty());
            shown += result.hum().stream().anyMatch(MainsHum::stands) ? 1 : 0;
        }
        assertThat(shown).isLessThan(2);
    }

    @Test
    void ofTwoSetsOfLinesTheTrueOneCarriesThePower() {
        NoiseResult result = new NoiseRecord(50_000, 1, 3e-4, 60, new double[] {5e-4, 2e-4, 1e-4}, 0)
                .measured(5, OptionalDouble.empty());
        assertThat(result.hum()).extracting(MainsHum::nominal).containsExactly(50.0, 60.0);
        assertThat(result.hum().get(1).power())
                .isGreaterThan(20 * result.hum().get(0).power());
    }

    @Test
    void aRecordOfTwoPeriodsHasNoHumAndSaysHowLongOneMustBe() {
        NoiseResult result = new NoiseRecord(50_000, 0.04, 1e-3, 50, new double[] {1e-3}, 0).measured(6, FIFTY);
        assertThat(result.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.TOO_SHORT_FOR_HUM);
        assertThat(result.hum().get(0).lines())
                .allMatch(l -> l.level().reason().orElseThrow().is(DoubtReason.TOO_SHORT_FOR_HUM));
        assertThat(result.values().get(NoiseFigure.RMS).value()).isPresent();
        assertThat(result.band().orElseThrow().low()).isCloseTo(50, within(1e-9));
    }

    /** A step q makes noise of q / root 12 over half the sample rate (IEEE Std 1241). */
    @Test
    void theConvertersOwnNoiseIsNamedAndBoundsWhatLiesNearIt() {
        NoiseResult silent = new NoiseRecord(100_000, 1, 1e-5, 50, NONE, 1e-3).measured(7, FIFTY);
        assertThat(silent.values().get(NoiseFigure.RMS).reason().orElseThrow().is(FigureReason.RECORD_CONSTANT))
                .isTrue();
        NoiseResult hidden = new NoiseRecord(100_000, 1, 1.5e-4, 50, NONE, 1e-3).measured(7, FIFTY);
        assertThat(value(hidden, NoiseFigure.RMS).shown()).isGreaterThan(1.5e-4 * Math.sqrt(19_980 / 50_000.0));
        NoiseResult dithered = new NoiseRecord(100_000, 1, 5e-4, 50, NONE, 1e-3).measured(8, FIFTY);
        double floor = 1e-3 / Math.sqrt(12) * Math.sqrt(19_980 / 50_000.0);
        assertThat(dithered.floor().orElseThrow()).isCloseTo(floor, within(1e-3 * floor));
        assertThat(value(dithered, NoiseFigure.RMS).isUpperBound()).isTrue();
        NoiseResult fine = new NoiseRecord(100_000, 1, 5e-4, 50, NONE, 1e-4).measured(9, FIFTY);
        assertThat(value(fine, NoiseFigure.RMS).isUpperBound()).isFalse();
    }

    @Test
    void aRecordCutOffByTheConverterIsRefused() {
        NoiseRecord record = new NoiseRecord(100_000, 0.5, 1e-2, 50, NONE, 1e-4);
        Samples cut = record.samples(10).map(v -> Math.max(-0.0128, Math.min(0.0127, v)));
        NoiseResult result =
                NoiseMeasurement.of(new NoiseInput(new Waveform(cut, 100_000, Unit.VOLT), FIFTY, Optional.empty(), 0));
        assertThat(result.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.OVER_RANGE);
        assertThat(result.refused()).isTrue();
    }

    private static Measured.Value value(NoiseResult result, NoiseFigure figure) {
        return result.values().get(figure).asValue().orElseThrow();
    }

    private static double level(MainsHum hum, int order) {
        return hum.lines().get(order - 1).level().value().orElseThrow();
    }
}
