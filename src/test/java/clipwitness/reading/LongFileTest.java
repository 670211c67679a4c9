package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files longer than the part from which the layout is told, read block by block. */
class LongFileTest {
    private static final int ROWS = 150_000;

    @TempDir
    private Path folder;

    @Test
    void noRowIsLostBetweenTwoBlocks() throws IOException, InputException {
        check(text(ROWS).toString(), StandardCharsets.US_ASCII);
    }

    @Test
    void utf16IsReadInBlocksToo() throws IOException, InputException {
        check(text(ROWS).toString(), StandardCharsets.UTF_16LE);
    }

    @Test
    void aFaultFarDownIsFoundByItsLine() throws IOException {
        String text = text(ROWS).append("0.150,x\n0.151,1\n").toString();
        Path file = Files.writeString(folder.resolve("long.csv"), text);
        assertThatThrownBy(() -> ExportReader.read(file, "long.csv", ReadingOptions.none()))
                .hasMessageStartingWith("long.csv, line 150002, column CH1: 'x' is not a number");
    }

    @Test
    void zeroBytesFarDownAreNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("long.csv"), text(ROWS) + "\0".repeat(5_000));
        assertThatThrownBy(() -> ExportReader.read(file, "long.csv", ReadingOptions.none()))
                .hasMessageStartingWith("long.csv, line 150002: there are zero bytes where text should be");
    }

    @Test
    void aLineWithoutEndFarDownIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("long.csv"), text(ROWS) + "1".repeat(3_000_000));
        assertThatThrownBy(() -> ExportReader.read(file, "long.csv", ReadingOptions.none()))
                .hasMessageStartingWith("long.csv, line 150002: the line is longer than 32768 characters");
    }

    @Test
    void wholeNumbersAtTheStartDoNotHideADecimalCommaAtTheEnd() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (ms);CH1 (V)\n");
        for (int i = 0; i < 60_000; i++) {
            text.append(i).append(i < 50_000 ? ";0\n" : ";0,5\n");
        }
        Path file = Files.writeString(folder.resolve("long.csv"), text.toString());
        TimeRecord record = (TimeRecord) ExportReader.read(file, "long.csv", ReadingOptions.none());
        assertThat(record.channels().get(0).samples().maximum()).isEqualTo(0.5);
    }

    private void check(String text, Charset charset) throws IOException, InputException {
        Path file = Files.write(folder.resolve("long.csv"), text.getBytes(charset));
        TimeRecord record = (TimeRecord) ExportReader.read(file, "long.csv", ReadingOptions.none());
        assertThat(record.size()).isEqualTo(ROWS);
        for (int i = 0; i < ROWS; i++) {
            assertThat(record.channels().get(0).samples().at(i)).isEqualTo(i % 1000 - 500);
        }
    }

    private static StringBuilder text(int rows) {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < rows; i++) {
            text.append(String.format(Locale.ROOT, "%.6f,%d%n", i * 1e-6, i % 1000 - 500)
                    .replace("\r", ""));
        }
        return text;
    }
}
