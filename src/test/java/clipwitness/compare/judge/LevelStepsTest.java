package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.LevelSeries;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LevelStepsTest {
    /**
     * A cubic y = x - x^3/3 has the describing function 1 - x^2/4 for a sine of peak x: its fundamental is 1 dB short at
     * x = 2 sqrt(1 - 10^(-1/20)) = 0.6595 (soft-clip-levels.csv, "1 dB compression of the fundamental" of the cubic).
     */
    @Test
    void fundamentalOfACubicIsOneDecibelShortAt0Point6595() {
        List<StateAtCondition> steps = new ArrayList<>();
        for (double x = 0.02; x < 1; x *= 1.1) {
            steps.add(setting(x, x * (1 - x * x / 4), 0));
        }
        LevelSeries series = LevelSteps.series(steps);
        assertThat(series.compressionPoint().value().orElseThrow()).isCloseTo(0.6595, within(0.003));
        assertThat(series.steps().get(1).slope().value().orElseThrow()).isCloseTo(1, within(1e-3));
        assertThat(Said.reason(series.steps().get(0).slope().reason())).contains("the lowest step has none below it");
    }

    @Test
    void aStraightLineNeverCompresses() {
        LevelSeries series = LevelSteps.series(List.of(setting(0.1, 1, 1e-3), setting(0.2, 2, 1e-3)));
        assertThat(Said.reason(series.compressionPoint().reason())).contains("not reached");
        assertThat(series.steps().get(1).slope().value().orElseThrow()).isCloseTo(1, within(1e-12));
    }

    /**
     * Outputs known to 1 %, 0.0869 dB, at 0.1, 0.2 and 0.4 V: two of them are 0.1228 dB. A slope over 6.0206 dB is known to 0.0204; 1 dB is
     * reached on a rise of 1.938 dB (1.6 instead of 2) over 6.0206 dB, so that 0.1228 dB move the place by 0.3816 dB, 4.393 %.
     */
    @Test
    void theNoiseOfTheStepsIsThatOfSlopeAndCompressionPoint() {
        LevelSeries series =
                LevelSteps.series(List.of(setting(0.1, 1, 0.01), setting(0.2, 2, 0.02), setting(0.4, 3.2, 0.032)));
        assertThat(series.steps().get(1).slope().asValue().orElseThrow().standardUncertainty())
                .isCloseTo(0.0204, within(1e-4));
        assertThat(series.steps().get(2).slope().value().orElseThrow()).isCloseTo(4.0824 / 6.0206, within(1e-4));
        Measured.Value point = series.compressionPoint().asValue().orElseThrow();
        assertThat(point.number()).isBetween(0.2, 0.4);
        assertThat(point.budget())
                .filteredOn(c -> c.source() == Source.NOISE)
                .singleElement()
                .satisfies(c ->
                        assertThat(c.standardUncertainty() / point.number()).isCloseTo(0.04393, within(1e-5)));
    }

    @Test
    void twoStepsOfOneInputHaveNoSlope() {
        LevelSeries series = LevelSteps.series(List.of(setting(0.1, 1, 1e-3), setting(0.1, 1.1, 1e-3)));
        assertThat(Said.reason(series.steps().get(1).slope().reason())).hasValue("two steps have the same input level");
    }

    private static StateAtCondition setting(double level, double output, double uncertainty) {
        CaptureResult capture = MadeUpCapture.capture("before")
                .gain(50)
                .level(level)
                .with(WaveformQuantity.FUNDAMENTAL, output, uncertainty)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, level, 0)
                .done();
        return new StateAtCondition("before", "Before", capture.row().condition(), List.of(capture));
    }
}
