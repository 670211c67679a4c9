package clipwitness.reading.layout;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.reading.number.WrittenUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A heading comes apart into name, unit and role. */
class HeadingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Time (s)|Time|s|TIME",
                "CH1[mV]|CH1|mV|UNKNOWN",
                "Spannung 1 in mV|Spannung 1|mV|VOLTAGE",
                "in s|''|s|UNKNOWN",
                "[s]|''|s|UNKNOWN",
                "U/V|U|V|VOLTAGE",
                "I / mA|I|mA|CURRENT",
                "t_ms|t|ms|TIME",
                "Kanal A|Kanal A|-|UNKNOWN",
                "Channel A (V)|Channel A|V|UNKNOWN",
                "CH1V|CH1|V|UNKNOWN",
                "V(A)|V(A)|V|VOLTAGE",
                "I(D1)|I(D1)|A|CURRENT",
                "Ic (Ib = 10 uA)|Ic (Ib = 10 uA)|-|CURRENT",
                "V1|V1|-|VOLTAGE",
                "Collector current (mA)|Collector current|mA|CURRENT",
                "No.|No.|-|INDEX",
                "Elapsed time, ms|Elapsed time|ms|TIME"
            })
    void aHeadingComesApart(String text, String name, String unit, ColumnRole role) {
        Heading heading = Heading.of(text);
        assertThat(heading.name()).isEqualTo(name);
        assertThat(heading.unit().map(WrittenUnit::symbol).orElse("-")).isEqualTo(unit);
        assertThat(heading.role()).isEqualTo(role);
    }
}
