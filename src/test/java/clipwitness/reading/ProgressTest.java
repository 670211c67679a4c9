package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fault.InputException;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reading counts the bytes of the file, whatever it is recoded to. */
class ProgressTest {
    @TempDir
    private Path folder;

    @Test
    void aFileIsReadToItsEndInEveryEncoding() throws IOException, InputException {
        for (Charset charset : new Charset[] {StandardCharsets.UTF_8, StandardCharsets.UTF_16LE}) {
            Path file = Files.writeString(folder.resolve("x.csv"), "\uFEFF" + rows(20_000), charset);
            AtomicLong read = new AtomicLong();
            Work work = new Work(new Split(Integer.MAX_VALUE, 1), counting(read)::advance, Room.ofMachine());
            assertThat(ExportReader.read(file, "x.csv", ReadingOptions.none(), work)
                            .size())
                    .isEqualTo(20_000);
            assertThat((double) read.get() / Files.size(file))
                    .as(charset.name())
                    .isCloseTo(1, within(0.01));
        }
    }

    private static String rows(int count) {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < count; i++) {
            text.append(i).append(',').append(i % 7).append('\n');
        }
        return text.toString();
    }

    private static Progress counting(AtomicLong read) {
        return new Progress() {
            @Override
            public void expect(long bytes) {
                // only what is read is counted
            }

            @Override
            public void advance(long bytes) {
                read.addAndGet(bytes);
            }
        };
    }
}
