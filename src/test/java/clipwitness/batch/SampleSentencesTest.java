package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import clipwitness.report.build.ReportModels;
import clipwitness.report.model.ReportModel;
import clipwitness.words.WordBundle;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences of the first page are short, as plain English asks for: under 25 words each, a lead has two to five. */
class SampleSentencesTest {
    private static final int MOST_WORDS = 25;

    private static ReportModel page(String name) throws InputException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(Path.of("sample-captures", name));
            JobResults results = Examination.of(job, "0".repeat(64), Loading.all(job, worker, Progress.NONE));
            return new ReportModels(WordBundle.builtIn()).of(results, Map.of(), "", List.of(), "test");
        } finally {
            worker.shutdownNow();
        }
    }

    /** What is read on the first page, the list of what was looked at left out. */
    private static Stream<String> sentences(ReportModel page) {
        Stream<String> verdicts =
                page.verdicts().stream().flatMap(v -> Stream.concat(Stream.of(v.sentence()), v.more().stream()));
        Stream<String> findings = page.findings().stream().map(f -> f.text());
        Stream<String> hints = page.hints().stream().map(f -> f.name());
        return Stream.of(verdicts, findings, hints)
                .flatMap(s -> s)
                .flatMap(text -> Stream.of(text.split("(?<=[.;:]) ")));
    }

    /** Words with a letter or a digit; a number and its unit are one. */
    private static long words(String sentence) {
        return Stream.of(sentence.split("[ ]"))
                .filter(w -> w.codePoints().anyMatch(Character::isLetterOrDigit))
                .count();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "diode-renewal", "jack-repair", "lifted-joint"})
    void sentencesAreShort(String name) throws InputException {
        assertThat(sentences(page(name)))
                .allSatisfy(s -> assertThat(words(s)).as(s).isLessThan(MOST_WORDS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "diode-renewal", "jack-repair", "lifted-joint"})
    void leadsHaveTwoToFiveWordsAndNoSentenceHasQuotationMarks(String name) throws InputException {
        ReportModel page = page(name);
        Stream<String> verdicts = page.changed().stream().map(v -> v.word());
        Stream<String> leads = page.findings().stream().map(f -> f.lead());
        assertThat(Stream.concat(verdicts, leads))
                .allSatisfy(l -> assertThat(words(l)).as(l).isBetween(2L, 5L));
        assertThat(sentences(page)).noneMatch(s -> s.contains("“"));
    }
}
