package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import clipwitness.signal.ReferenceRow;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A record of any length has the distortion of its wave, not of its cut ends. */
class RecordLengthTest {
    private static final double LEVEL = 0.5;
    private static final String SERIES = " signed cosine series about positive crest";

    @ParameterizedTest
    @ValueSource(doubles = {3.1, 5.42, 17.77, 40})
    void aSineClippedAtHalfItsPeakHasTheDistortionOfTheReference(double cycles) {
        ReferenceRow row = ReferenceRow.of(getClass(), "hard-clipped-sine.csv")
                .filter(r ->
                        r.number("upper level / input peak") == LEVEL && r.number("lower level / input peak") == LEVEL)
                .findFirst()
                .orElseThrow();
        double power = IntStream.rangeClosed(2, 15)
                .mapToDouble(k -> Math.pow(row.number("A" + k + SERIES) / row.number("A1" + SERIES), 2))
                .sum();
        WaveformResult result = TestRecord.of(
                        p -> TestRecord.clip(LEVEL, LEVEL).applyAsDouble(TestRecord.SINE.applyAsDouble(p)))
                .sampled(500, cycles, 0.21)
                .measured();
        assertThat(Values.value(result, WaveformQuantity.THD)).isCloseTo(100 * Math.sqrt(power), within(0.05));
        assertThat(Values.value(result, WaveformQuantity.FREQUENCY)).isCloseTo(TestRecord.FREQUENCY, within(0.01));
    }
}
