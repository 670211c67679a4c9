package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whatever the bytes: a capture, or a refusal that names the file, in a time and a memory bounded by the file's size. Whether the file is read
 * in one piece or in many makes no difference.
 */
class ReaderFuzzTest {
    private static final String NAME = "x.csv";
    private static final int LARGEST = 1 << 16;
    /** Of the processor, the first calls with their instrumenting included. */
    private static final long MOST_NANOSECONDS = 10_000_000_000L;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @FuzzTest(maxDuration = "20m")
    void anyBytesAreReadOrRefused(byte[] bytes) throws IOException {
        if (bytes.length > LARGEST) {
            return;
        }
        Path file = Files.createTempFile("fuzz", ".csv");
        try {
            Files.write(file, bytes);
            long before = THREADS.getCurrentThreadCpuTime();
            String outcome = outcome(file, new Split(1 << 20, 1));
            assertThat(THREADS.getCurrentThreadCpuTime() - before).isLessThan(MOST_NANOSECONDS);
            if (bytes.length % 8 == 0) {
                assertThat(outcome(file, new Split(Math.max(1, bytes.length / 5), 2)))
                        .isEqualTo(outcome);
            }
        } finally {
            Files.delete(file);
        }
    }

    private static String outcome(Path file, Split split) {
        try {
            Work work = new Work(split, Progress.NONE::advance, Room.ofMachine());
            Export export = ExportReader.read(file, NAME, ReadingOptions.none(), work);
            int hash = 1;
            for (Channel channel : export.channels()) {
                hash = 31 * hash + channel.samples().hashCode();
            }
            return export.evidence() + " " + export.doubts() + " " + hash;
        } catch (InputException e) {
            for (Problem problem : e.problems()) {
                assertThat(problem.where().file()).isEqualTo(NAME);
                assertThat(problem.what()).isNotBlank();
                assertThat(problem.remedy()).isNotBlank();
            }
            return e.getMessage();
        }
    }
}
