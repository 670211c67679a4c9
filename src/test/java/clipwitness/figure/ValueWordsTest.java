package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ValueWordsTest {
    private static final ValueWords VALUES = new ValueWords(Speech.ENGLISH);
    private static final ConditionWords CONDITIONS = new ConditionWords(Speech.ENGLISH);

    /** JCGM 100, 7.2.6: two significant digits of an uncertainty are enough, and the value is rounded to them. */
    @Test
    void aValueIsRoundedToTwoDigitsOfItsUncertainty() {
        assertThat(VALUES.of(Measured.withNoise(-15.4678, Unit.DBC, 0.12))).isEqualTo("−15.47\u00a0dBc");
        assertThat(VALUES.of(Measured.withNoise(-65.4678, Unit.DBC, 2.4))).isEqualTo("−65.5\u00a0dBc");
        assertThat(VALUES.of(Measured.withNoise(0.23149, Unit.VOLT, 0.002))).isEqualTo("231\u00a0mV");
    }

    @Test
    void aBoundIsValuePlusUncertainty() {
        assertThat(VALUES.of(Measured.withNoise(0.1, Unit.PERCENT, 0.15).asUpperBound()))
                .isEqualTo("below 0.40\u00a0%");
    }

    @Test
    void aChangeShowsItsSign() {
        assertThat(VALUES.change(Measured.withNoise(0.264, Unit.DECIBEL, 0.05), "dB"))
                .isEqualTo("+0.26\u00a0dB");
        assertThat(VALUES.change(Measured.withNoise(-0.264, Unit.DECIBEL, 0.05), "dB"))
                .isEqualTo("−0.26\u00a0dB");
    }

    @Test
    void aDifferenceOfPercentagesCountsInPoints() {
        assertThat(VALUES.change(Measured.withNoise(1.264, Unit.PERCENT, 0.05), "points"))
                .isEqualTo("+1.26\u00a0points");
    }

    @Test
    void onlyWhatDiffersFromTheMainConditionIsNamed() {
        Condition main = condition(50, 1000, 0.1, "noon");
        assertThat(CONDITIONS.of(main, main.withoutGain())).isEqualTo("50\u00a0% gain");
        assertThat(CONDITIONS.of(condition(12.5, 82.4, 0.2, "scooped"), main))
                .isEqualTo("12.5\u00a0% gain, 82.4\u00a0Hz, 200\u00a0mV, scooped");
    }

    private static Condition condition(double gain, double frequency, double level, String setting) {
        return new Condition(
                OptionalDouble.of(gain), OptionalDouble.of(frequency), OptionalDouble.of(level), Optional.of(setting));
    }
}
