package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.Problem;
import clipwitness.fixture.JobFolder;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A fault of the program ends one job, and leaves what is needed to find its cause. */
class OwnFaultTest {
    @TempDir
    private Path temp;

    /** Fails in the first job of a batch, as a fault of the program would. */
    private static final class Faulty implements Progress {
        private final Error error;
        private boolean failed;

        Faulty(Error error) {
            this.error = error;
        }

        @Override
        public synchronized void expect(long bytes) {
            if (!failed) {
                failed = true;
                if (error != null) {
                    throw error;
                }
                throw new IllegalArgumentException("bytes must be odd", new NullPointerException());
            }
        }

        @Override
        public void advance(long bytes) {
            // nobody waits
        }
    }

    @Test
    void theWholeStackTraceIsWrittenBesideTheResultsAndTheMessageNamesTheFile() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        JobOutcome outcome = run(Optional.of(temp.resolve("out")), job).get(0);
        Path file = temp.resolve("out/T-1-fault.txt");
        assertThat(messages(outcome)).singleElement().satisfies(m -> {
            assertThat(m)
                    .startsWith(job
                            + ": a fault of the program, not of the job: NullPointerException (at batch.OwnFaultTest");
            assertThat(m)
                    .endsWith("please report it with the job folder and " + file + ", which holds the stack trace");
        });
        assertThat(Files.readString(file))
                .startsWith("clipwitness 1.2.3, Java " + Runtime.version())
                .contains("java.lang.IllegalArgumentException: bytes must be odd")
                .contains("Caused by: java.lang.NullPointerException")
                .contains("at clipwitness.batch.OwnFaultTest$Faulty.expect(OwnFaultTest.java:")
                .contains("at clipwitness.batch.Batch.run(Batch.java:");
    }

    @Test
    void theOtherJobOfTheBatchIsReported() throws IOException {
        JobFolder.unchanged(temp.resolve("week/a"), "T-1");
        JobFolder.unchanged(temp.resolve("week/b"), "T-2");
        List<JobOutcome> outcomes = run(Optional.empty(), temp.resolve("week"));
        JobOutcome failed = outcomes.stream()
                .filter(o -> o instanceof JobOutcome.Failed)
                .findFirst()
                .orElseThrow(); // they run side by side: either meets the fault
        assertThat(failed.folder().resolve("report")).isDirectoryContaining("glob:**/T-?-fault.txt");
        assertThat(outcomes).filteredOn(o -> o instanceof JobOutcome.Reported).hasSize(1);
    }

    @Test
    void aStackTraceThatCannotBeWrittenIsASecondProblem() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        Path out = Files.writeString(temp.resolve("out"), "a file, no folder");
        List<String> messages = messages(run(Optional.of(out), job).get(0));
        assertThat(messages.get(0)).endsWith("please report it with the job folder");
        assertThat(messages.get(1))
                .isEqualTo(
                        out.resolve("T-1-fault.txt") + ": could not be written: " + out
                                + " is a file, not a folder. Choose another place with --out; what stood there before is as it was");
    }

    @Test
    void whereTheNumberIsNotKnownTheFileHasTheNameOfTheJobFolder() {
        OwnFault.unnumbered(temp.resolve("job"), new IllegalStateException("x"))
                .outcome(new ReportOptions(Optional.of(temp.resolve("out")), List.of(), "clipwitness 1.2.3"));
        assertThat(temp.resolve("out/job-fault.txt")).exists();
    }

    @ParameterizedTest
    @MethodSource("errors")
    void anErrorOfTheMachineEndsOneJobAndNoBatch(Error error, String message) throws IOException {
        JobFolder.unchanged(temp.resolve("week/a"), "T-1");
        JobFolder.unchanged(temp.resolve("week/b"), "T-2");
        List<JobOutcome> outcomes = run(new Faulty(error), Optional.empty(), temp.resolve("week"));
        assertThat(outcomes).hasSize(2); // they run side by side: either meets the error
        assertThat(outcomes)
                .filteredOn(o -> o instanceof JobOutcome.Failed)
                .singleElement()
                .satisfies(o -> assertThat(messages(o))
                        .singleElement()
                        .satisfies(m -> assertThat(m).startsWith(o.folder() + message)));
    }

    static Stream<Arguments> errors() {
        return Stream.of(
                Arguments.of(
                        new OutOfMemoryError("Java heap space"),
                        ": needs more memory than the " + Runtime.getRuntime().maxMemory() / 1_000_000
                                + " MB that the program has. Give it more"),
                Arguments.of(
                        new StackOverflowError(),
                        ": something in it is nested too deeply to be read. Look for lists within lists"),
                Arguments.of(
                        new NoClassDefFoundError("Could not initialize class X"),
                        ": a fault of the program, not of the job: Could not initialize class X"),
                Arguments.of(
                        new ExceptionInInitializerError(new IllegalStateException("no display")),
                        ": a fault of the program, not of the job: no display"));
    }

    private static List<JobOutcome> run(Optional<Path> out, Path path) {
        return run(new Faulty(null), out, path);
    }

    private static List<JobOutcome> run(Faulty faulty, Optional<Path> out, Path path) {
        List<JobOutcome> told = new ArrayList<>();
        ReportOptions options = new ReportOptions(out, List.of(), "clipwitness 1.2.3");
        List<JobOutcome> outcomes =
                new Batch(options, (outcome, place, all) -> told.add(outcome), faulty).run(List.of(path));
        assertThat(told).isEqualTo(outcomes);
        return outcomes;
    }

    private static List<String> messages(JobOutcome outcome) {
        return ((JobOutcome.Failed) outcome)
                .problems().stream().map(Problem::message).toList();
    }
}
