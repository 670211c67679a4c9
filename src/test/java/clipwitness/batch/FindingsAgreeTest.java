package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.figure.FigureCatalogue;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import clipwitness.report.build.ReportModels;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.model.ReportModel;
import clipwitness.words.WordBundle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** First page, pictures and results of a sample job say the same: the same sentences, at the same setting, from the same figures. */
class FindingsAgreeTest {
    private static ReportModel page;
    private static Map<String, Figure> pictures;
    private static Map<?, ?> json;

    @BeforeAll
    static void make() throws InputException {
        JobResults results = results("bass-drive-switch");
        pictures = FigureCatalogue.of(results).all();
        page = new ReportModels(WordBundle.builtIn()).of(results, pictures, "", List.of(), "test");
        String text = new String(ResultsJson.bytes(results, "test"), StandardCharsets.UTF_8);
        json = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
    }

    private static JobResults results(String name) throws InputException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(Path.of("sample-captures", name));
            return Examination.of(job, "0".repeat(64), Loading.all(job, worker, Progress.NONE));
        } finally {
            worker.shutdownNow();
        }
    }

    private static Stream<Map<?, ?>> findings(String... codes) {
        return list(json, "findings").filter(f -> List.of(codes).contains(f.get("code")));
    }

    private static Stream<Map<?, ?>> list(Map<?, ?> object, String name) {
        return ((List<?>) object.get(name)).stream().map(o -> (Map<?, ?>) o);
    }

    private static List<String> texts(Stream<Map<?, ?>> findings) {
        return findings.map(f -> (String) f.get("text")).toList();
    }

    @Test
    void thePagesFindingsAreThoseOfTheResultsInTheirOrder() {
        List<String> told = texts(findings(
                "character",
                "onset",
                "equal-gain",
                "level-matched",
                "other-drive",
                "asymmetry",
                "even-harmonics",
                "same-shape",
                "moved"));
        String answers =
                page.changed().stream().map(v -> v.word() + " " + v.sentence()).collect(Collectors.joining(" "));
        String others =
                page.findings().stream().map(f -> f.lead() + " " + f.text()).collect(Collectors.joining(" "));
        assertThat(answers + " " + others).isEqualTo(String.join(" ", told.subList(0, told.size() - 2)));
        assertThat(page.findings()).hasSize(4);
    }

    @Test
    void theMainPictureSaysWhatTheResultsSayOfIt() {
        assertSaysWhatTheResultsSay("cycles-main", 50.0);
    }

    @Test
    void thePictureOfTheFirstPageSaysWhatTheResultsSayOfIt() {
        assertSaysWhatTheResultsSay("answer", 100.0);
    }

    private static void assertSaysWhatTheResultsSay(String name, double gain) {
        String finding = pictures.get(name).finding();
        String opening = finding.substring(0, finding.indexOf(": ") + 2);
        List<String> pictured =
                texts(findings("pictured").filter(f -> f.get("gainPercent").equals(gain)));
        assertThat(pictured).hasSize(3).allSatisfy(t -> assertThat(t).startsWith(opening));
        assertThat(finding)
                .startsWith(opening
                        + String.join(
                                "; ",
                                pictured.stream()
                                        .map(t -> t.substring(opening.length(), t.length() - 1))
                                        .toList())
                        + ".");
    }

    @Test
    void thePictureAtEqualLoudnessSaysWhatTheResultsSayOfIt() {
        String finding = pictures.get("cycles-matched").finding();
        assertThat(texts(findings("remainder").filter(f -> f.get("word").equals("range"))))
                .hasSize(3)
                .allSatisfy(t -> assertThat(finding).contains(t.substring(t.indexOf(", ") + 2, t.length() - 1)));
    }

    @Test
    void pictureAndTableOfTheFirstPageSpeakOfTheSettingOfTheAnswer() {
        assertThat(pictures.get("answer").title()).endsWith("at full gain");
        assertThat(page.keyFigures().title()).endsWith("at full gain");
        assertThat(page.changed().get(0).sentence()).contains("at full gain");
        assertThat(findings("character").limit(1))
                .allSatisfy(f -> assertThat(f.get("gainPercent")).isEqualTo(100.0));
    }

    /** What a finding says of an item is the item's own change, and its word is the change's sign. */
    @Test
    void figuresOfFindingsAreThoseOfTheComparisons() {
        List<Map<?, ?>> tellings = findings("differs", "pictured").toList();
        assertThat(tellings)
                .isNotEmpty()
                .allSatisfy(f -> ((Map<?, ?>) f.get("figures"))
                        .forEach((quantity, value) -> assertThat(value).isEqualTo(change(f, (String) quantity))));
        assertThat(findings("pictured")).anySatisfy(f -> {
            assertThat(f.get("word")).isEqualTo("level more, thd less");
            assertThat((String) f.get("text")).contains("louder").contains("less");
            assertThat((Double) ((Map<?, ?>) f.get("figures")).get("level")).isPositive();
            assertThat((Double) ((Map<?, ?>) f.get("figures")).get("thd")).isNegative();
        });
    }

    private static Object change(Map<?, ?> finding, String quantity) {
        return list(json, "comparisons")
                .filter(c ->
                        c.get("from").equals(finding.get("from")) && c.get("to").equals(finding.get("to")))
                .flatMap(c -> list(c, "items"))
                .filter(i -> i.get("quantity").equals(quantity)
                        && i.get("gainPercent").equals(finding.get("gainPercent"))
                        && i.get("frequency").equals(finding.get("frequency")))
                .map(i -> (Object) i.get("change"))
                .findFirst()
                .orElseThrow();
    }
}
