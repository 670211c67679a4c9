package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.KeyedWords;
import clipwitness.fixture.PrintedWords;
import clipwitness.fixture.UserTexts;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sample jobs in a template whose every sentence is replaced by a code in Greek letters: what a translator would leave in English is
 * found by its Latin letters. Not looked at are what the user wrote, units, numbers, digests and the name of the program.
 */
class EveryWordIsTranslatedTest {
    private static final Pattern LANGUAGE = Pattern.compile("\n  language: en");

    private static final Pattern POINT = Pattern.compile("\\d\\.\\d");

    private static final String SOFTWARE = "clipwitness 0.1.0";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "bass-drive-switch, customer",
        "bass-drive-switch, bench",
        "jack-repair, customer",
        "jack-repair, bench",
        "lifted-joint, customer",
        "lifted-joint, bench"
    })
    void noEnglishAndNoDecimalPointIsLeftOnAPage(String name, String template) throws IOException {
        String printed = printed(name, template(template).toString());
        assertThat(PrintedWords.latin(printed))
                .as("words that are no line of words.properties")
                .isEmpty();
        assertThat(POINT.matcher(printed).results().map(m -> around(printed, m.start())))
                .as("decimal points where the language has a comma")
                .isEmpty();
    }

    /** The words that no page in English can do without; none of them is a word in German. */
    private static final Pattern ENGLISH = Pattern.compile("\\b(the|and|with|which|from|not|are)\\b");

    @ParameterizedTest
    @CsvSource({"bass-drive-switch, customer", "jack-repair, bench", "lifted-joint, customer", "diode-renewal, bench"})
    void noEnglishIsLeftOnAPageInGerman(String name, String template) throws IOException {
        String printed = printed(name, template);
        assertThat(ENGLISH.matcher(printed).results().map(m -> around(printed, m.start())))
                .isEmpty();
        assertThat(POINT.matcher(printed).results().map(m -> around(printed, m.start())))
                .isEmpty();
    }

    /** All that a report in German says to a reader, but for what the user wrote. */
    private String printed(String name, String template) throws IOException {
        JobOutcome outcome = outcome(germanJob(name), template);
        assertThat(outcome).isInstanceOf(JobOutcome.Reported.class);
        JobOutcome.Reported reported = (JobOutcome.Reported) outcome;
        Path pdf = reported.written().stream()
                .filter(f -> f.toString().endsWith(".pdf"))
                .findFirst()
                .orElseThrow();
        return new UserTexts(examined(reported.folder()))
                .without(PrintedWords.of(Files.readAllBytes(pdf)).replace(SOFTWARE, "|"));
    }

    private static JobResults examined(Path folder) throws IOException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(folder);
            return Examination.of(job, "0".repeat(64), Loading.all(job, worker, Progress.NONE));
        } catch (InputException e) {
            throw new IllegalStateException(e);
        } finally {
            worker.shutdownNow();
        }
    }

    private static String around(String text, int place) {
        return text.substring(Math.max(0, place - 20), Math.min(text.length(), place + 20));
    }

    private JobOutcome outcome(Path job, String template) {
        ReportOptions options = new ReportOptions(Optional.of(folder.resolve("out")), List.of(template), SOFTWARE);
        return new Batch(options, (outcome, place, all) -> {}, Progress.NONE)
                .run(List.of(job))
                .get(0);
    }

    private Path germanJob(String name) throws IOException {
        Path job = copy(Path.of("sample-captures", name), folder.resolve(name));
        Path sheet = job.resolve("job.yaml");
        String text = LANGUAGE.matcher(Files.readString(sheet)).replaceFirst("");
        Files.writeString(sheet, text.replaceFirst("\nreport:\n", "\nreport:\n  language: de\n"));
        return job;
    }

    private Path template(String name) throws IOException {
        Path template = copy(Path.of("report-templates", name), folder.resolve("translated"));
        Files.writeString(template.resolve("words.properties"), KeyedWords.text("de"));
        if (Files.exists(template.resolve("method.html"))) {
            Files.writeString(template.resolve("method.html"), "<p>αβγ</p>\n");
            Files.deleteIfExists(template.resolve("method-de.html"));
        }
        return template;
    }

    private static Path copy(Path from, Path to) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attrs) throws IOException {
                Files.createDirectories(to.resolve(from.relativize(dir).toString()));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attrs) throws IOException {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
                return FileVisitResult.CONTINUE;
            }
        });
        return to;
    }
}
