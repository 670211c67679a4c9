package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.VerticalRange;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Vertical ranges follow in steps of 1, 2 and 5; a finer one holds a wave that fills 95 % of it at most. Eight bits of 10 mV are 2.56 V. */
class FinerRangeTest {
    private static WaveformResult spanning(double volts, OptionalDouble perDivision) {
        return MadeUpCapture.ordinary("a", 50)
                .with(WaveformQuantity.PEAK_UP, 0.75 * volts, 0.001)
                .with(WaveformQuantity.PEAK_DOWN, 0.25 * volts, 0.001)
                .range(new VerticalRange(perDivision, OptionalDouble.of(0.01)))
                .done()
                .waveform()
                .orElseThrow();
    }

    @Test
    void aWaveUsesTheCodesThatItSpans() {
        assertThat(FinerRange.used(spanning(1.28, OptionalDouble.empty()), 8).orElseThrow())
                .isCloseTo(0.5, within(1e-12));
        assertThat(FinerRange.used(spanning(1.28, OptionalDouble.empty()), 12).orElseThrow())
                .isCloseTo(0.03125, within(1e-12));
        assertThat(FinerRange.used(spanning(0, OptionalDouble.empty()), 8)).isEmpty();
    }

    /** From 5 to 2 it is two and a half times, else twice: 38 % of the codes become 95 %, or 47.5 %. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.475",
        "0.1, 0.475",
        "2, 0.475",
        "0.02, 0.475",
        "0.995, 0.475",
        "5, 0.38",
        "0.5, 0.38",
        "0.05, 0.38"
    })
    void theNextFinerRangeHoldsAWaveUpToItsEdge(double perDivision, double edge) {
        OptionalDouble scale = OptionalDouble.of(perDivision);
        assertThat(FinerRange.nextHolds(spanning(2.56 * (edge - 0.004), scale), 8))
                .isTrue();
        assertThat(FinerRange.nextHolds(spanning(2.56 * (edge + 0.004), scale), 8))
                .isFalse();
    }

    @Test
    void whereTheScaleIsNotKnownTheNextRangeIsTakenForTheWidestStep() {
        assertThat(FinerRange.nextHolds(spanning(2.56 * 0.376, OptionalDouble.empty()), 8))
                .isTrue();
        assertThat(FinerRange.nextHolds(spanning(2.56 * 0.384, OptionalDouble.empty()), 8))
                .isFalse();
    }
}
