package clipwitness.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {
    private static final NumberText ENGLISH = NumberText.in("en");
    private static final Locale DEFAULT = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(DEFAULT);
    }

    /** JCGM 100:2008, 7.2.6: at most two digits of the uncertainty, the estimate rounded to agree with it. */
    @ParameterizedTest
    @CsvSource({
        "23.14,   PERCENT, 1.08,     23.1 ± 1.1 %",
        "10.05762, OHM,    0.027,    10.058 ± 0.027 Ω", // the example of 7.2.6
        "0.231,   VOLT,    0.0004,   231.00 ± 0.40 mV",
        "0.0231,  VOLT,    0.0011,   23.1 ± 1.1 mV",
        "1230,    OHM,     153,      1.23 ± 0.15 kΩ",
        "1230,    DECIBEL, 153,      1230 ± 150 dB",
        "0.61,    VOLT,    0.0996,   610 ± 100 mV",
        "0.02,    DECIBEL, 0.1,      0.02 ± 0.10 dB",
        "0,       VOLT,    1e-9,     0.0 ± 1.0 nV",
        "-0.5,    DECIBEL, 0.04,     −0.500 ± 0.040 dB",
        "999.96,  HERTZ,   0.1,      999.96 ± 0.10 Hz",
        "999.996, HERTZ,   1,        1.0000 ± 0.0010 kHz",
        "2.5e-9,  AMPERE,  1e-10,    2.50 ± 0.10 nA",
        "-2.25451, DEGREE, 0.00036,  −2.255 ± 0.001°",
        "0.00034, PERCENT, 0.00062,  0.000 ± 0.001 %", // a hundred-thousandth of a wave: no converter has such a step
    })
    void uncertaintyHasTwoDigitsAndTheValueAsManyDecimals(double value, Unit unit, double expanded, String text) {
        assertThat(ENGLISH.measured(value, unit, expanded)).isEqualTo(unbroken(text));
    }

    /** A bound is rounded up, so that what it says stays true: 0.1371 % lies below 0.14 %, -67.9 dBc below -67 dBc. */
    @ParameterizedTest
    @CsvSource({
        "0.1371,   PERCENT, 0.14 %",
        "0.00098,  PERCENT, 0.01 %",
        "0.0434,   PERCENT, 0.05 %",
        "6.61,     PERCENT, 6.7 %",
        "118e-6,   VOLT,    120 µV",
        "-67.9,    DBC,     −67 dBc",
        "-104.2,   DBC,     −104 dBc",
        "-0.4,     DECIBEL, 0 dB",
    })
    void aBoundHasTwoDigitsAtMostAndIsRoundedUp(double value, Unit unit, String text) {
        assertThat(ENGLISH.bound(value, unit, 0).text()).isEqualTo(unbroken(text));
    }

    @Test
    void aNumberInAMessageHasNoExponent() {
        assertThat(NumberText.plain(100, 2)).isEqualTo("100");
        assertThat(NumberText.plain(1234.5, 2)).isEqualTo("1200");
        assertThat(NumberText.plain(0.01234, 2)).isEqualTo("0.012");
    }

    @Test
    void aValueNeverShowsMoreThanEightDigitsAndItsUncertaintyIsThenRoundedUp() {
        assertThat(ENGLISH.measured(1000, Unit.HERTZ, 1.2e-9)).isEqualTo(unbroken("1.0000000 ± 0.0000001 kHz"));
    }

    @Test
    void aValueWithoutUncertaintyShowsFourDigits() {
        assertThat(ENGLISH.measured(0.61237, Unit.VOLT, 0)).isEqualTo(unbroken("612.4 mV"));
        assertThat(ENGLISH.measured(0, Unit.VOLT, 0)).isEqualTo(unbroken("0 V"));
    }

    @Test
    void aChangeShowsItsSign() {
        assertThat(ENGLISH.parts(0.02, Unit.DECIBEL, 0.1, 0, true).full()).isEqualTo(unbroken("+0.02 ± 0.10 dB"));
        assertThat(ENGLISH.parts(-0.02, Unit.DECIBEL, 0.1, 0, true).full()).isEqualTo(unbroken("−0.02 ± 0.10 dB"));
        assertThat(ENGLISH.signed(0.02, Unit.DECIBEL, 2)).isEqualTo(unbroken("+0.02 dB"));
        assertThat(ENGLISH.signed(-3.456, Unit.DECIBEL, 1)).isEqualTo(unbroken("−3.5 dB"));
    }

    @Test
    void whatRoundsToZeroHasNoSign() {
        assertThat(ENGLISH.signed(-0.004, Unit.DECIBEL, 2)).isEqualTo(unbroken("0.00 dB"));
        assertThat(ENGLISH.signed(0.004, Unit.DECIBEL, 2)).isEqualTo(unbroken("0.00 dB"));
    }

    /** SI brochure, 9th edition, table 7. */
    @ParameterizedTest
    @CsvSource({
        "0.0231,  VOLT,    23.1 mV",
        "0.1,     VOLT,    100 mV",
        "999.6,   HERTZ,   1.00 kHz",
        "2200,    OHM,     2.20 kΩ",
        "1e6,     OHM,     1.00 MΩ",
        "2e9,     OHM,     2.00 GΩ",
        "5e12,    OHM,     5000 GΩ",
        "1.5e-6,  SECOND,  1.50 µs",
        "1e-13,   AMPERE,  100 fA",
        "2e-18,   AMPERE,  0.00200 fA",
        "7e-11,   AMPERE,  70.0 pA",
        "-12.345, DBC,     −12.3 dBc",
        "1234.5,  CELSIUS, 1230 °C",
        "0.0231,  ONE,     0.0231",
        "-12.34,  DEGREE,  −12.3°",
        "2.345,   KELVIN,  2.35 K",
        "0,       AMPERE,  0 A",
    })
    void threeDigitsWithThePrefixThatFits(double value, Unit unit, String text) {
        assertThat(ENGLISH.rounded(value, unit, 3)).isEqualTo(unbroken(text));
    }

    @ParameterizedTest
    @CsvSource({
        "1000, HERTZ, 1 kHz",
        "0.1, VOLT, 100 mV",
        "62.5, PERCENT, 62.5 %",
        "100, PERCENT, 100 %",
        "0, PERCENT, 0 %",
        "0.30000000000000004, VOLT, 300 mV",
        "2200, OHM, 2.2 kΩ",
    })
    void aNominalValueHasNoZerosAtTheEnd(double value, Unit unit, String text) {
        assertThat(ENGLISH.nominal(value, unit)).isEqualTo(unbroken(text));
    }

    @Test
    void fixedDecimalsHaveNoPrefix() {
        assertThat(ENGLISH.fixed(0.5, Unit.DECIBEL, 2)).isEqualTo(unbroken("0.50 dB"));
        assertThat(ENGLISH.fixed(0.0231, Unit.VOLT, 3)).isEqualTo(unbroken("0.023 V"));
    }

    @Test
    void theLanguageDecidesTheDecimalMark() {
        assertThat(NumberText.in("de").measured(23.14, Unit.PERCENT, 1.08)).isEqualTo(unbroken("23,1 ± 1,1 %"));
        assertThat(NumberText.in("en-GB").nominal(2.5, Unit.ONE)).isEqualTo("2.5");
    }

    @Test
    void theDefaultLocaleDecidesNothing() {
        Locale.setDefault(Locale.GERMANY);
        assertThat(NumberText.in("en").nominal(2.5, Unit.ONE)).isEqualTo("2.5");
    }

    @Test
    void numbersThatAreNoneAreRefused() {
        assertThatThrownBy(() -> ENGLISH.nominal(Double.NaN, Unit.VOLT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("only finite numbers have a text but this is NaN");
        assertThatThrownBy(() -> ENGLISH.measured(1, Unit.VOLT, -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an expanded uncertainty must be 0 or more but is -1.0");
    }

    /** The texts above are written with plain spaces; on paper none of them may break. */
    private static String unbroken(String text) {
        return text.replace(' ', '\u00a0');
    }

    @Test
    void theRowsLargestValueChoosesThePrefixOfAll() {
        assertThat(ENGLISH.parts(0.0231, Unit.VOLT, 0.0011, 1.4, false))
                .isEqualTo(new NumberParts("0.0231", "0.0011", "V"));
        assertThat(ENGLISH.parts(0.0231, Unit.VOLT, 0.0011, 0.5, true))
                .isEqualTo(new NumberParts("+23.1", "1.1", "mV"));
    }

    /** 0.001 dB is 0.0115 % of a voltage (10^(0.001 / 20)): no instrument of this trade holds less. */
    @Test
    void aLevelHasThreeDecimalsAtMostAndItsUncertaintyIsThenRoundedUp() {
        assertThat(ENGLISH.measured(0.000123, Unit.DECIBEL, 0.000512)).isEqualTo("0.000\u00a0±\u00a00.001\u00a0dB");
        assertThat(ENGLISH.coarse(399.99123, Unit.HERTZ, 0.00021, 3).full())
                .isEqualTo("399.991\u00a0±\u00a00.001\u00a0Hz");
        assertThat(ENGLISH.coarse(41_234.56, Unit.HERTZ, 12, 3).full()).isEqualTo("41235\u00a0±\u00a012\u00a0Hz");
    }

    @Test
    void anAngleStandsCloseToItsSign() {
        assertThat(ENGLISH.parts(179.64, Unit.DEGREE, 0.4, 0, false).full()).isEqualTo(unbroken("179.64 ± 0.40°"));
        assertThat(ENGLISH.parts(1.5, Unit.ONE, 0, 0, false).text()).isEqualTo("1.500");
    }

    @Test
    void whatLiesAtMostSoHighIsRoundedUp() {
        assertThat(ENGLISH.atMost(-0.0712, Unit.DECIBEL, 2)).isEqualTo(unbroken("0.08 dB"));
        assertThat(ENGLISH.atMost(0.07, Unit.DECIBEL, 2)).isEqualTo(unbroken("0.07 dB"));
    }

    /** JCGM 100:2008, 7.2.6: two digits of the uncertainty at most, the value to the same place. */
    @ParameterizedTest
    @CsvSource({"13, 2, 0", "9.9, 2, 1", "0.74, 2, 2", "0.074, 2, 2", "0.074, 4, 3", "0, 2, 2"})
    void aValueHasNoDecimalThatItsUncertaintyMakesMeaningless(double expanded, int most, int decimals) {
        assertThat(NumberText.decimals(expanded, most)).isEqualTo(decimals);
    }

    @ParameterizedTest
    @CsvSource({"0.72, 0.05, 3, 3", "0.72, 0.4, 3, 2", "0.72, 1.3, 3, 1", "0.72, 0.0004, 3, 3", "0, 1, 3, 3"})
    void norADigit(double value, double expanded, int most, int digits) {
        assertThat(NumberText.digits(value, expanded, most)).isEqualTo(digits);
    }
}
