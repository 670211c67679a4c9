package clipwitness.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityParserTest {
    /** Prefixes: SI brochure, 9th edition, table 7. The values are compared exactly: 0.1 is the double nearest to a tenth. */
    @ParameterizedTest
    @CsvSource({
        "100 mV, VOLT, 0.1",
        "1 kHz, HERTZ, 1000",
        "2.2 kΩ, OHM, 2200",
        "2.2 kΩ, OHM, 2200", // ohm sign
        "2.2 kohm, OHM, 2200",
        "2.2kOhm, OHM, 2200",
        "470 ohms, OHM, 470",
        "1 MΩ, OHM, 1000000",
        "1 GΩ, OHM, 1e9",
        "2 us, SECOND, 0.000002",
        "2 µs, SECOND, 0.000002", // micro sign
        "2 μs, SECOND, 0.000002", // Greek mu
        "4 ns, SECOND, 4e-9",
        "10 pA, AMPERE, 1e-11",
        "3 fA, AMPERE, 3e-15",
        "21 °C, CELSIUS, 21",
        "21 ºC, CELSIUS, 21", // ordinal indicator
        "21 ℃, CELSIUS, 21",
        "-5 C, CELSIUS, -5",
        "3 K, KELVIN, 3",
        "0.5 %, PERCENT, 0.5",
        "-32 dB, DECIBEL, -32",
        "−32 dB, DECIBEL, -32", // minus sign
        "-54.2 dBc, DBC, -54.2",
        "90 deg, DEGREE, 90",
        "90°, DEGREE, 90",
        "0.71, ONE, 0.71",
        ".5 V, VOLT, 0.5",
        "5. V, VOLT, 5",
        "+1e-3 V, VOLT, 0.001",
        "1.5E3 Hz, HERTZ, 1500",
        "100mV, VOLT, 0.1",
        "'  100   mV ', VOLT, 0.1",
        "1 KHz, HERTZ, 1000",
    })
    void numberSpaceAndUnit(String text, Unit unit, double value) throws QuantityFormatException {
        assertThat(QuantityParser.withUnit(text, unit).quantity()).isEqualTo(new Quantity(value, unit));
        assertThat(QuantityParser.parse(text, unit)).isEqualTo(new Quantity(value, unit));
    }

    @Test
    void spacesThatDoNotBreakAreSpaces() throws QuantityFormatException {
        for (String space : new String[] {"\u00a0", "\u2009", "\u202f", "\t"}) {
            assertThat(QuantityParser.parse("100" + space + "mV", Unit.VOLT).value())
                    .isEqualTo(0.1);
        }
    }

    @Test
    void theUnitMayBeLeftOutWhereThatIsAllowed() throws QuantityFormatException {
        assertThat(QuantityParser.parse("0.1", Unit.VOLT)).isEqualTo(new Quantity(0.1, Unit.VOLT));
        assertThat(QuantityParser.inAnyUnit("350"))
                .extracting(WrittenQuantity::unit)
                .isEqualTo(Unit.ONE);
    }

    @ParameterizedTest
    @CsvSource({
        "16.1 V, 0.1",
        "16 V, 1",
        "16.00 V, 0.01",
        "8.1 mA, 0.0001",
        "1.2e-3 V, 0.0001",
        "100 kHz, 1000",
    })
    void theLastDigitAsWrittenIsKept(String text, BigDecimal digit) throws QuantityFormatException {
        assertThat(QuantityParser.inAnyUnit(text).digit()).isEqualByComparingTo(digit);
    }

    @Test
    void aPercentageIsAlsoARatio() throws QuantityFormatException {
        assertThat(QuantityParser.withUnit("0.1 %", Unit.PERCENT).ratio()).isEqualTo(0.001);
        assertThat(QuantityParser.withUnit("3 %", Unit.PERCENT).ratio()).isEqualTo(0.03);
    }

    @Test
    void theDefaultLocaleDecidesNothing() throws QuantityFormatException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(QuantityParser.parse("1.5 V", Unit.VOLT).value()).isEqualTo(1.5);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100    | VOLT    | '100' has no unit. Write a number, a space and the unit, for example 100 mV",
                "loud   | VOLT    | 'loud' is not a voltage. Write a number, a space and the unit, for example 100 mV",
                "100 mQ | VOLT    | '100 mQ' has no unit that is known here: 'mQ'. Write a number, a space and the unit, for example 100 mV",
                "100 mA | VOLT    | '100 mA' is a current, not a voltage. Write a number, a space and the unit, for example 100 mV",
                "1 V    | AMPERE  | '1 V' is a voltage, not a current. Write a number, a space and the unit, for example 8 mA",
                "1 Hz   | SECOND  | '1 Hz' is a frequency, not a time. Write a number, a space and the unit, for example 2 µs",
                "1 s    | HERTZ   | '1 s' is a time, not a frequency. Write a number, a space and the unit, for example 1 kHz",
                "1 °C   | OHM     | '1 °C' is a temperature, not a resistance. Write a number, a space and the unit, for example 2.2 kΩ",
                "1 K    | CELSIUS | '1 K' is a temperature difference, not a temperature. Write a number, a space and the unit, for example 21 °C",
                "1 dB   | KELVIN  | '1 dB' is a difference of level, not a temperature difference. Write a number, a space and the unit, for example 3 K",
                "1 dBc  | DECIBEL | '1 dBc' is a level over the fundamental, not a difference of level. Write a number, a space and the unit, for example 0.5 dB",
                "1 deg  | DBC     | '1 deg' is an angle, not a level over the fundamental. Write a number, a space and the unit, for example -40 dBc",
                "1 %    | DEGREE  | '1 %' is a percentage, not an angle. Write a number, a space and the unit, for example 90 deg",
                "1 ohm  | PERCENT | '1 ohm' is a resistance, not a percentage. Write a number, a space and the unit, for example 3 %",
                "1 V    | ONE     | '1 V' is a voltage, not a plain number. Write a number without a unit, for example 0.71",
                "1,5 V  | VOLT    | '1,5 V' holds a comma. Write 1.5 V",
                "-,5 V  | VOLT    | '-,5 V' holds a comma. Write -0.5 V",
                "0,125 V| VOLT    | '0,125 V' holds a comma. Write 0.125 V",
                "1,000 Hz | HERTZ | '1,000 Hz' holds a comma. Write 1.000 Hz or 1000 Hz, whichever is meant",
                "1,2,3 V | VOLT   | '1,2,3 V' has no unit that is known here: ',2,3 V'. Write a number, a space and the unit, for example 100 mV",
                "1e999 V | VOLT   | '1e999 V' is too large. Write a number, a space and the unit, for example 100 mV",
                "--1 V  | VOLT    | '--1 V' is not a voltage. Write a number, a space and the unit, for example 100 mV",
                "NaN V  | VOLT    | 'NaN V' is not a voltage. Write a number, a space and the unit, for example 100 mV",
                "1 mdB  | DECIBEL | '1 mdB' has no unit that is known here: 'mdB'. Write a number, a space and the unit, for example 0.5 dB",
            })
    void refusals(String text, Unit unit, String message) {
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> QuantityParser.withUnit(text, unit));
        assertThat(refusal).hasMessage(message);
        assertThat(refusal.what() + ". " + refusal.remedy()).isEqualTo(message);
    }

    @Test
    void aWholePageIsCutInItsMessage() {
        QuantityFormatException refusal = catchThrowableOfType(
                QuantityFormatException.class, () -> QuantityParser.inAnyUnit("loud\u0007\n" + "x".repeat(100)));
        assertThat(refusal.what()).isEqualTo("'loud " + "x".repeat(35) + "…' is not a number with a unit");
    }
}
