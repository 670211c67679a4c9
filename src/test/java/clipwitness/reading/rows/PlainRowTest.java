package clipwitness.reading.rows;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.reading.layout.Dialect;
import clipwitness.reading.number.Delimiter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick reader of rows against the language's own conversion of decimal text, which is rounded to the nearest double. */
class PlainRowTest {
    private final double[] row = new double[2];

    @Test
    void aHundredThousandNumbersReadAsTheLanguageReadsThem() {
        Random random = new Random(12);
        int taken = 0;
        for (int i = 0; i < 100_000; i++) {
            String format = random.nextBoolean() ? "%." + random.nextInt(17) + "e" : "%." + random.nextInt(12) + "f";
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(20) - 10);
            String text = String.format(Locale.ROOT, format, value);
            if (read(',', '.', text + "," + text + "\n") >= 0) {
                taken++;
                assertThat(row).as(text).containsExactly(Double.parseDouble(text), Double.parseDouble(text));
            }
        }
        assertThat(taken).isGreaterThan(80_000);
    }

    @Test
    void everyNumberOfDigitsBeforeAndAfterTheMarkIsRead() {
        String digits = "1234567890123456";
        for (int whole = 0; whole <= 15; whole++) {
            for (int fraction = whole == 0 ? 1 : 0; whole + fraction <= 15; fraction++) {
                String text = digits.substring(0, whole)
                        + (fraction == 0 ? "" : "." + digits.substring(whole, whole + fraction));
                assertThat(read(';', '.', "-" + text + ";" + text + "\r\n"))
                        .as(text)
                        .isPositive();
                assertThat(row).containsExactly(-Double.parseDouble(text), Double.parseDouble(text));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1,2",
                "1,\n",
                ",2\n",
                "1,2,3\n",
                "a,2\n",
                "1,\"2\"\n",
                "1.,2\n",
                "1,2.\n",
                "1,.\n",
                "1,--2\n",
                "1,2e\n",
                "1,2e+\n",
                "1,1e0001\n",
                "1,1e30\n",
                "1,2x\n",
                "#1,2\n",
                "\n",
                "1;2\n",
                "1,2\0\n",
                "1,2\n2\n",
                "1,12345678901234567890\n",
                "1,9.9e36\n"
            })
    void whatIsNoPlainRowIsLeftAlone(String text) {
        assertThat(read(',', '.', text)).isEqualTo(text.equals("1,2\n2\n") ? 4 : -1);
    }

    @Test
    void blanksBeforeACellAndADelimiterAtTheEndAreNoCells() {
        assertThat(read(',', '.', "  1.5, -2,\n")).isEqualTo(11);
        assertThat(read(' ', '.', "  1.5   -2\n")).isEqualTo(11);
        assertThat(row).containsExactly(1.5, -2);
    }

    @Test
    void decimalCommaAndEveryLineEndAreRead() {
        assertThat(read(';', ',', "1,5;2,25D-1\r\r\n")).isEqualTo(14);
        assertThat(row).containsExactly(1.5, 0.225);
    }

    @Test
    void aLineThatMayStandAgainAmongTheRowsKeepsAllRowsFromTheShorterWayIfItReadsAsOne() {
        assertThat(readBeside("Voltage (V),Current (A)")).isPositive();
        assertThat(readBeside("sweep,1")).isPositive();
        assertThat(readBeside("0.5,1e-3")).isNegative();
    }

    private int readBeside(String repeated) {
        PlainRow plain = new PlainRow(plan(Delimiter.COMMA, '.'), (byte) '\n', row);
        plain.except(List.of(repeated.getBytes(StandardCharsets.US_ASCII)));
        return plain.read(Arrays.copyOf("1,2\n".getBytes(StandardCharsets.US_ASCII), 4 + PlainRow.SLACK), 0);
    }

    private int read(char delimiter, char mark, String text) {
        Delimiter between =
                delimiter == ' ' ? Delimiter.BLANKS : delimiter == ';' ? Delimiter.SEMICOLON : Delimiter.COMMA;
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        return new PlainRow(plan(between, mark), (byte) '\n', row)
                .read(Arrays.copyOf(bytes, bytes.length + PlainRow.SLACK), 0);
    }

    private static RowPlan plan(Delimiter delimiter, char mark) {
        return new RowPlan(
                new Dialect(delimiter, mark),
                List.of(0, 1),
                List.of("a", "b"),
                0,
                2,
                List.of(Optional.empty(), Optional.empty()),
                false,
                List.of());
    }
}
