package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record that does not fit the memory is refused with the reason, before the memory is full. */
class RoomTest {
    /** Two columns of 1000 rows, and one of them once more: 3 x 8 x 1000 bytes. */
    private static final Room THOUSAND_ROWS = new Room(24_000);

    @TempDir
    private Path folder;

    @Test
    void asManyRowsAsFitAreRead() throws IOException, InputException {
        assertThat(read(1_000, 1).size()).isEqualTo(1_000);
        assertThat(read(1_000, 2).size()).isEqualTo(1_000);
    }

    @Test
    void oneRowMoreIsRefusedWhetherReadLineByLineOrInPieces() {
        for (int workers = 1; workers <= 2; workers++) {
            int cores = workers;
            assertThatThrownBy(() -> read(1_001, cores))
                    .isInstanceOf(InputException.class)
                    .hasMessage("x.csv: the file has more rows than fit the memory: 1000 of 2 columns, where 0 MB are"
                            + " reserved. Export fewer periods, or fewer channels a file; or give the program more memory,"
                            + " 8 GB with CLIPWITNESS_OPTS set to -Xmx8g");
        }
    }

    @Test
    void tenMillionRowsOfTwoColumnsFitTheMemoryThatIsSetAsideOfAGigabyte() {
        assertThat(new Room((long) (0.7 * (1L << 30))).rows(2)).isGreaterThan(10_000_000);
    }

    @Test
    void oneColumnIsCalledSo() {
        assertThat(new Room(16).exceeded("x.csv", 1))
                .hasMessageStartingWith("x.csv: the file has more rows than fit the memory: 1 of 1 column,");
    }

    private Export read(int rows, int workers) throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < rows; i++) {
            text.append(i).append(',').append(i % 7).append('\n');
        }
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        Work work = new Work(new Split(512, workers), Progress.NONE::advance, THOUSAND_ROWS);
        return ExportReader.read(file, "x.csv", ReadingOptions.none(), work);
    }
}
