package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import org.junit.jupiter.api.Test;

class NumberFormsTest {
    @Test
    void aNegativeNumberHasATrueMinusAndZeroHasNone() {
        assertThat(NumberForms.plain(-12.34, 1)).isEqualTo("−12.3");
        assertThat(NumberForms.plain(-0.04, 1)).isEqualTo("0.0");
        assertThat(NumberForms.signed(0.26, 1)).isEqualTo("+0.3");
        assertThat(NumberForms.signed(0.01, 1)).isEqualTo("0.0");
    }

    @Test
    void settingsAreWrittenAsShortAsTheyAre() {
        assertThat(NumberForms.shortest(50, 1)).isEqualTo("50");
        assertThat(NumberForms.shortest(12.5, 1)).isEqualTo("12.5");
        assertThat(NumberForms.shortest(100, 1)).isEqualTo("100");
    }

    /** JCGM 100, 7.2.6: two significant digits of an uncertainty are enough, and the value is rounded to them. */
    @Test
    void aValueIsRoundedToTwoDigitsOfItsUncertainty() {
        assertThat(ValueWords.of(Measured.withNoise(-15.4678, Unit.DBC, 0.12))).isEqualTo("−15.47 dBc");
        assertThat(ValueWords.of(Measured.withNoise(-65.4678, Unit.DBC, 2.4))).isEqualTo("−65.5 dBc");
        assertThat(ValueWords.of(Measured.withNoise(0.23149, Unit.VOLT, 0.002))).isEqualTo("231 mV");
    }

    @Test
    void aBoundIsValuePlusUncertainty() {
        assertThat(ValueWords.of(Measured.withNoise(0.1, Unit.PERCENT, 0.15).asUpperBound()))
                .isEqualTo("below 0.40 %");
    }

    @Test
    void conditionsAreWrittenWithPrefixes() {
        assertThat(ConditionWords.quantity(0.1, Unit.VOLT)).isEqualTo("100 mV");
        assertThat(ConditionWords.quantity(82.4, Unit.HERTZ)).isEqualTo("82.4 Hz");
        assertThat(ConditionWords.quantity(1000, Unit.HERTZ)).isEqualTo("1 kHz");
    }
}
