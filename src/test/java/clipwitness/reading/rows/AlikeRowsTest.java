package clipwitness.reading.rows;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.reading.layout.Dialect;
import clipwitness.reading.number.Delimiter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows that are written alike against the language's own conversion of decimal text, which is rounded to the nearest double. */
class AlikeRowsTest {
    private static final int ROWS = 2000;
    private static final Pattern CELL = Pattern.compile("[^,;\\s]+");
    private static final Dialect COMMAS = new Dialect(Delimiter.COMMA, '.');

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
                    %.9e,%.5f\\n        | COMMA     | .
                    %.3E,%+.4e\\n       | COMMA     | .
                    %.6f;%.3f\\r\\n     | SEMICOLON | ,
                    "  %9.6f  %8.3f\\n" | BLANKS    | .
                    %.6f\\t%.3f\\t\\n   | TAB       | .
                    %.13f,%.11f\\n      | COMMA     | .
                    %.7f, %.6e,\\r\\n   | COMMA     | .
                    %.0f,%.0f\\n        | COMMA     | .
                    """)
    void everyNumberIsTheNearestDouble(String format, Delimiter delimiter, char mark) throws InputException {
        Random random = new Random(format.length());
        StringBuilder text = new StringBuilder();
        List<Double> wanted = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            int decade = 3 * i / ROWS;
            String row = String.format(
                    Locale.ROOT,
                    format.replace("\\n", "\n").replace("\\r", "\r").replace("\\t", "\t"),
                    i * 3.7e-3,
                    random.nextGaussian() * Math.pow(10, decade));
            CELL.matcher(row)
                    .results()
                    .map(cell -> Double.parseDouble(cell.group()))
                    .forEach(wanted::add);
            text.append(row.replace('.', mark));
        }
        Reading reading = new Reading(new Dialect(delimiter, mark));
        reading.read(text.toString());
        assertThat(reading.rows()).containsExactlyElementsOf(wanted);
        assertThat(reading.alike).as("rows read alike").isGreaterThan(ROWS / 4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.001,-1.25\n", "1.5e-03,+2.0e+00\r\n", "12,7,\n", "0.0010000000000,-0.12345678901234\n"})
    void aRowWithAnyByteReplacedIsReadAsByItselfOrLeftAlone(String row) throws InputException {
        int taken = 0;
        for (int place = 0; place < row.length(); place++) {
            for (int other = 0; other < 256; other++) {
                byte[] bytes = row.getBytes(StandardCharsets.US_ASCII);
                bytes[place] = (byte) other;
                String changed = new String(bytes, StandardCharsets.ISO_8859_1);
                Reading reading = new Reading(COMMAS);
                reading.read(row.repeat(3));
                int before = reading.alike;
                Reading alone = new Reading(COMMAS);
                alone.read(changed);
                reading.read(changed);
                taken += reading.alike - before;
                List<Double> rows = reading.rows();
                assertThat(rows.subList(6, rows.size()))
                        .as("byte %d at %d", other, place)
                        .isEqualTo(reading.alike > before ? alone.rows() : rows.subList(6, rows.size()));
            }
        }
        assertThat(taken).as("rows read alike").isGreaterThan(10 * 2);
    }

    @Test
    void aRowWhoseTimeRunsBackEndsTheRows() throws InputException {
        Reading reading = new Reading(COMMAS);
        assertThat(reading.read("0.001,5\n0.002,5\n0.002,6\n0.001,5\n0.003,5\n"))
                .isEqualTo("0.001,5\n0.003,5\n");
        assertThat(reading.rows()).containsExactly(0.001, 5.0, 0.002, 5.0, 0.002, 6.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.002,9.91e37\n", "0.002,1.00e25\n", "0.002,1.00e-30\n"})
    void whatIsOrMayBeAMarkForAnOverflowAndWhatRoundsTwiceAreLeft(String row) throws InputException {
        Reading reading = new Reading(COMMAS);
        assertThat(reading.read("0.001,1.00e-3\n" + row.replaceAll("e.*", "e-3") + row))
                .isEqualTo(row);
    }

    @Test
    void aRowThatTheBlockEndsInIsLeft() throws InputException {
        Reading reading = new Reading(COMMAS);
        assertThat(reading.read("0.001,5\n0.002,5\n0.003,5")).isEqualTo("0.003,5");
    }

    /** Reads as {@link RowScanner} does: alike rows together, the first of a kind alone. */
    private static final class Reading {
        private final RowPlan plan;
        private final NumberTable table = new NumberTable("rows.csv", new Room(1 << 20), 2, 0);
        private final double[] row = new double[2];
        private final PlainRow plain;
        private final AlikeRows rows;
        private double lastTime = Double.NEGATIVE_INFINITY;
        private int alike;

        Reading(Dialect dialect) {
            plan = new RowPlan(
                    dialect,
                    List.of(0, 1),
                    List.of("t", "u"),
                    0,
                    2,
                    List.of(Optional.empty(), Optional.empty()),
                    false,
                    List.of());
            plain = new PlainRow(plan, (byte) '\n', row);
            rows = new AlikeRows(plan, table);
        }

        /** Reads rows; what is left. */
        String read(String text) throws InputException {
            byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
            byte[] block = Arrays.copyOf(bytes, bytes.length + PlainRow.SLACK);
            int at = 0;
            while (at < bytes.length) {
                int before = table.rows();
                int next = rows.read(block, at, bytes.length, lastTime);
                alike += table.rows() - before;
                lastTime = next > at ? rows.lastTime() : lastTime;
                if (next == at) {
                    next = plain.read(block, at);
                    if (next < 0 || !(row[0] >= lastTime)) {
                        return text.substring(at);
                    }
                    rows.learn(block, at, next);
                    table.add(row);
                    lastTime = row[0];
                }
                at = next;
            }
            return "";
        }

        List<Double> rows() {
            List<Double> values = new ArrayList<>();
            NumberTable copy = new NumberTable("copy.csv", new Room(1 << 20), 2, 0);
            try {
                copy.add(table);
            } catch (InputException e) {
                throw new AssertionError(e);
            }
            double[] first = copy.take(0);
            double[] second = copy.take(1);
            for (int i = 0; i < first.length; i++) {
                values.add(first[i]);
                values.add(second[i]);
            }
            return values;
        }
    }
}
