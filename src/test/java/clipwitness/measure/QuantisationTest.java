package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.TestRecord;
import clipwitness.signal.ReferenceRow;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Scatter that a converter adds against quantisation.csv: step over root of 12. It adds to white noise of one step as an independent error
 * (B. Widrow, I. Kollár, Quantization Noise, 2008: from half a step on; from memory).
 */
class QuantisationTest {
    static Stream<ReferenceRow> converters() {
        return ReferenceRow.of(QuantisationTest.class, "quantisation.csv");
    }

    @ParameterizedTest
    @MethodSource("converters")
    void theConvertersOwnNoiseAddsToThatOfTheSignal(ReferenceRow row) {
        double step = row.number("LSB for full scale 2 V");
        WaveformResult result = TestRecord.of(p -> 0.8 * TestRecord.SINE.applyAsDouble(p))
                .sampled(357.1, 81.37, 0.123)
                .noisy(step, step, 1)
                .measured();
        assertThat(Values.value(result, WaveformQuantity.NOISE))
                .isCloseTo(Math.hypot(step, row.number("LSB/sqrt(12)")), Percentage.withPercentage(1.5));
    }
}
