package clipwitness.batch.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.fixture.JobFolder;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows of a captures table whose export does not hold what the row says, each with its whole message. */
class LoadingTest {
    private static final String SLOW = "Time (s),X (V)\n0,1\n2e-6,2\n4e-6,3\n";
    private static final String FAST = "Time (s),X (V)\n0,1\n1e-6,2\n2e-6,3\n";
    private static final String SHORT = "Time (s),X (V)\n0,1\n1e-6,2\n";
    private static final String CURVE = "V (V),I (mA)\n0.1,0.01\n0.3,0.02\n0.5,0.5\n0.6,2\n";

    @TempDir
    private Path folder;

    @Test
    void aCurveIsNoWave() throws IOException {
        assertThat(problems("before-0.csv,before,waveform,0,", "before-0.csv", CURVE))
                .containsExactly(
                        "captures.csv, line 2, kind: before-0.csv holds a curve of current against voltage, not a"
                                + " record over time, but kind is waveform. Write junction if it is a traced device; export the"
                                + " record with its time column or give its interval in column interval if it is a wave");
    }

    @Test
    void channelsInTwoFilesAreOfOneIntervalAndLength() throws IOException {
        assertThat(problems(
                        "before-0.csv,before,waveform,0,in.csv\nafter-0.csv,after,waveform,0,short.csv",
                        "before-0.csv",
                        FAST,
                        "in.csv",
                        SLOW,
                        "after-0.csv",
                        FAST,
                        "short.csv",
                        SHORT))
                .containsExactly(
                        "captures.csv, line 2, input-file: in.csv (3 samples every 2.0E-6 s) and before-0.csv (3 samples"
                                + " every 1.0E-6 s) are not one record. Export both channels from the same acquisition",
                        "captures.csv, line 3, input-file: short.csv (2 samples every 1.0E-6 s) and after-0.csv (3 samples"
                                + " every 1.0E-6 s) are not one record. Export both channels from the same acquisition");
    }

    @Test
    void aFileThatStandsInTwoRowsIsNamedOnce() throws IOException {
        assertThat(problems(
                        "before-0.csv,before,waveform,0,\nbefore-0.csv,after,waveform,0,",
                        "before-0.csv",
                        "Time (s),X (V)\n0,1\n1,abc\n2,3\n3,4\n"))
                .containsExactly("before-0.csv, line 3, column X: 'abc' is not a number. Is the row damaged? Export the"
                        + " capture again; no row is ever skipped");
    }

    @Test
    void anExportThatIsGoneWhenItsTurnComesWasLostMeanwhile() throws IOException {
        JobFolder job = JobFolder.unchanged(folder, "T-1");
        ExecutorService workers = Executors.newFixedThreadPool(2);
        try {
            InputException refusal = catchThrowableOfType(InputException.class, () -> {
                Job read = JobReader.read(job.path());
                Files.delete(job.path().resolve("after-0.csv"));
                Loading.all(read, workers, Progress.NONE);
            });
            assertThat(refusal)
                    .hasMessage(
                            "after-0.csv: the file was there at first and was lost meanwhile. Leave the folder alone"
                                    + " while the program reads it, then run it again");
        } finally {
            workers.shutdown();
        }
    }

    @Test
    void aCaptureForWhichTheMemoryDidNotSufficeIsReadOnceMoreWhenItIsAlone() throws Exception {
        Job job = JobReader.read(JobFolder.unchanged(folder, "T-1").path());
        assertThat(Loading.some(job, row -> row.file().equals("after-0.csv"), new Narrow(1)))
                .hasSize(1);
    }

    @Test
    void aCaptureForWhichTheMemoryDoesNotSufficeAloneIsNamed() throws Exception {
        Job job = JobReader.read(JobFolder.unchanged(folder, "T-1").path());
        assertThatThrownBy(() -> Loading.some(job, row -> row.file().equals("after-0.csv"), new Narrow(2)))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("after-0.csv: needs more memory than the ")
                .hasMessageEndingWith("CLIPWITNESS_OPTS set to -Xmx8g, or export fewer samples");
    }

    /** Memory that ends so many times while exports are read. */
    private static final class Narrow implements Progress {
        private final AtomicInteger left;

        Narrow(int times) {
            left = new AtomicInteger(times);
        }

        @Override
        public void expect(long bytes) {
            // nobody waits
        }

        @Override
        public void advance(long bytes) {
            if (left.getAndDecrement() > 0) {
                throw new OutOfMemoryError("Java heap space");
            }
        }
    }

    private List<String> problems(String rows, String... files) throws IOException {
        JobFolder job = JobFolder.unchanged(folder, "T-1");
        job.write("captures.csv", "file,state,kind,gain,input-file\n" + rows + "\n");
        for (int i = 0; i < files.length; i += 2) {
            job.write(files[i], files[i + 1]);
        }
        ExecutorService workers = Executors.newFixedThreadPool(2);
        try {
            InputException refusal = catchThrowableOfType(InputException.class, () -> {
                Job read = JobReader.read(job.path());
                Loading.all(read, workers, Progress.NONE);
            });
            return refusal.problems().stream().map(Problem::message).toList();
        } finally {
            workers.shutdown();
        }
    }
}
