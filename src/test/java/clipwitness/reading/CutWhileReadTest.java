package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An export that is cut while it is read is no export with a cut last row. */
class CutWhileReadTest {
    private static final String MESSAGE = "long.csv: the file was changed while it was read."
            + " Leave the folder alone while the program reads it, then run it again";

    @TempDir
    private Path folder;

    @Test
    void aFileThatIsCutWhileSeveralReadItIsNamedAsChanged() throws IOException {
        for (int workers : new int[] {1, 2, 4}) {
            Path file = Files.writeString(folder.resolve("long.csv"), rows(200_000));
            Work work = new Work(new Split(4_096, workers), bytes -> cut(file), Room.ofMachine());
            assertThatThrownBy(() -> ExportReader.read(file, "long.csv", ReadingOptions.none(), work))
                    .isInstanceOf(InputException.class)
                    .hasMessage(MESSAGE);
        }
    }

    @Test
    void aFileThatGrowsWhileItIsReadIsNamedAsChanged() throws IOException {
        Path file = Files.writeString(folder.resolve("long.csv"), rows(1_000));
        Work work = new Work(new Split(4_096, 1), bytes -> append(file), Room.ofMachine());
        assertThatThrownBy(() -> ExportReader.read(file, "long.csv", ReadingOptions.none(), work))
                .isInstanceOf(InputException.class)
                .hasMessage(MESSAGE);
    }

    private static String rows(int count) {
        return "Time (s),CH1 (V)\n"
                + IntStream.range(0, count)
                        .mapToObj(i -> String.format(Locale.ROOT, "%.6f,%d.5\n", i * 1e-6, i % 7))
                        .collect(Collectors.joining());
    }

    private static void cut(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(1_000_000);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void append(Path file) {
        try {
            Files.writeString(file, "0.001,1.5\n", StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
