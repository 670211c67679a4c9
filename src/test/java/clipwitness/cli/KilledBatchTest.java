package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.Installed;
import clipwitness.fixture.JobFolder;
import clipwitness.report.data.StandingResults;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A batch that is killed at any moment leaves whole sets of documents or none, and the next run completes. The moments are random within the time that a
 * whole run takes, so that they are spread over it on a machine of any speed.
 */
class KilledBatchTest {
    private static final int JOBS = 2;
    private static final int A_FEW = 3;
    private static final int MANY = 50;
    private static final long LONGEST_MINUTES = 5;

    @TempDir
    private Path temp;

    @Test
    void aBatchKilledAtAFewMomentsIsCompletedByTheNextRun() throws Exception {
        killed(A_FEW);
    }

    @Test
    @Tag("kill")
    @Timeout(value = 40, unit = TimeUnit.MINUTES)
    void aBatchKilledAt50MomentsIsCompletedByTheNextRun() throws Exception {
        killed(MANY);
    }

    private void killed(int times) throws Exception {
        Path week = temp.resolve("week");
        for (int i = 0; i < JOBS; i++) {
            JobFolder.unchanged(week.resolve("job-" + i), "T-" + i);
        }
        Path out = temp.resolve("out");
        long start = System.nanoTime();
        assertThat(ended(started(week, out))).isZero();
        long whole = System.nanoTime() - start;
        List<byte[]> wanted = contents(out);
        assertThat(wanted).hasSize(3 * JOBS + 2);
        Random random = new Random(17);
        for (int i = 0; i < times; i++) {
            if (i % 2 == 1) {
                forget(out);
            }
            List<String> before = names(out);
            Process run = started(week, out);
            TimeUnit.NANOSECONDS.sleep((long) (whole * random.nextDouble()));
            run.destroyForcibly();
            run.waitFor();
            requireWholeSets(out, before);
            if (random.nextInt(3) == 0) {
                assertThat(ended(started(week, out))).isZero();
                requireSame(out, wanted);
            }
        }
        assertThat(ended(started(week, out))).isZero();
        requireSame(out, wanted);
    }

    /** After a kill: what stood still stands, each document can be read, and the three of a job are there together, or the journal for the next run is. */
    private static void requireWholeSets(Path out, List<String> before) throws IOException {
        List<String> names = names(out);
        assertThat(names)
                .containsAll(before.stream().filter(n -> !n.startsWith(".")).toList());
        boolean unfinished = names.stream().anyMatch(n -> n.startsWith(".clipwitness-journal"));
        for (int i = 0; i < JOBS; i++) {
            String number = "T-" + i;
            List<String> set = List.of(number + "-results.json", number + "-results.csv", number + ".pdf");
            long there = set.stream().filter(names::contains).count();
            assertThat(unfinished ? 0 : there % set.size()).as(names.toString()).isZero();
            if (names.contains(set.get(0))) {
                assertThat(StandingResults.read(Files.readAllBytes(out.resolve(set.get(0)))))
                        .isPresent();
            }
            if (names.contains(set.get(2))) {
                String pdf = Files.readString(out.resolve(set.get(2)), StandardCharsets.ISO_8859_1);
                assertThat(pdf.stripTrailing()).startsWith("%PDF-").endsWith("%%EOF");
            }
        }
    }

    private static void requireSame(Path out, List<byte[]> wanted) throws IOException {
        List<byte[]> found = contents(out);
        assertThat(found).as(names(out).toString()).hasSameSizeAs(wanted);
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(found.get(i)).isEqualTo(wanted.get(i));
        }
    }

    private static void forget(Path out) throws IOException {
        for (String name : names(out)) {
            Files.delete(out.resolve(name));
        }
    }

    private static Process started(Path week, Path out) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command =
                new ArrayList<>(List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-cp"));
        command.addAll(List.of(Installed.classPath(), "clipwitness.cli.Main", "report", "--quiet"));
        command.addAll(List.of(week.toString(), "--out", out.toString()));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static int ended(Process run) throws InterruptedException {
        assertThat(run.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)).isTrue();
        return run.exitValue();
    }

    private static List<byte[]> contents(Path folder) throws IOException {
        List<byte[]> contents = new ArrayList<>();
        for (String name : names(folder)) {
            contents.add(Files.readAllBytes(folder.resolve(name)));
        }
        return contents;
    }

    private static List<String> names(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
