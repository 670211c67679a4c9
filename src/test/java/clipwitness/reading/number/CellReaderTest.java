package clipwitness.reading.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reader against the language's own conversion of decimal text, which is rounded to the nearest double. */
class CellReaderTest {
    @Test
    void aHundredThousandNumbersReadAsTheLanguageReadsThem() {
        Random random = new Random(11);
        CellReader reader = new CellReader('.');
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(60) - 30);
            String text =
                    String.format(Locale.ROOT, random.nextBoolean() ? "%." + random.nextInt(20) + "e" : "%.9f", value);
            assertThat(read(reader, text)).as(text).isTrue();
            assertThat(reader.value()).as(text).isEqualTo(Double.parseDouble(text));
        }
    }

    @Test
    void theSmallestAndTheLongestNumbersKeepTheirLastBit() {
        CellReader reader = new CellReader('.');
        for (String text : new String[] {
            "4.9e-324",
            "2.2250738585072011e-308",
            "9007199254740993",
            "0.1000000000000000055511151231257827",
            "123456789012345678"
        }) {
            assertThat(read(reader, text)).isTrue();
            assertThat(reader.value()).as(text).isEqualTo(Double.parseDouble(text));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "-", "+", ".", "e5", "1e", "1e+", "1.2.3", "0x10", "1f", "1d", "1_000", "12 3", "1e99999", "abc",
                "--1"
            })
    void whatIsNoNumberIsRefused(String text) {
        assertThat(read(new CellReader('.'), text)).isFalse();
    }

    @Test
    void aCommaWithoutDigitsAfterItEndsACell() {
        assertThat(read(new CellReader(','), "3,")).isFalse();
        assertThat(read(new CellReader('.'), "3.")).isTrue();
    }

    @Test
    void digitsCountFromTheFirstThatIsNotZero() {
        CellReader reader = new CellReader('.');
        assertThat(read(reader, "-0.0021900")).isTrue();
        assertThat(reader.digits()).isEqualTo(5);
        assertThat(reader.afterMark()).isEqualTo(8);
    }

    @Test
    void marksOfOverflowHaveNoValue() {
        CellReader reader = new CellReader('.');
        assertThat(read(reader, "-9.91E37")).isTrue();
        assertThat(reader.value()).isNaN();
        assertThat(read(reader, "8.9e36")).isTrue();
        assertThat(reader.value()).isEqualTo(8.9e36);
    }

    private static boolean read(CellReader reader, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return reader.read(bytes, 0, bytes.length);
    }
}
