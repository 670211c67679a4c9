package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.ready.Readiness;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.NotExamined;
import clipwitness.compare.result.ReadyItem;
import clipwitness.fault.InputException;
import clipwitness.fixture.NoiseRecord;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reading.Progress;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs of two records with the input terminated: noise and hum before and after a repair. */
class NoiseJobsTest {
    private static final String MAINS = "bench: {mains: 50 Hz}\n";
    private static final double[] HUM = {3e-4, 1e-4, 1e-4};

    @TempDir
    Path folder;

    private JobResults examined(String sheet, String role, NoiseRecord before, NoiseRecord after)
            throws IOException, InputException {
        return examined(sheet, role, before, after, 1);
    }

    private JobResults examined(String sheet, String role, NoiseRecord before, NoiseRecord after, long seed)
            throws IOException, InputException {
        write("job.yaml", sheet + """
                report: {number: N-1, date: 2026-05-04}
                states:
                  received: {label: As it came, role: before}
                  done: {label: Repaired, role: %s}
                """.formatted(role));
        write("captures.csv", "file,state,kind,gain\na.csv,received,noise,50\nb.csv,done,noise,50\n");
        write("a.csv", before.csv(2 * seed));
        write("b.csv", after.csv(2 * seed + 1));
        Job job = JobReader.read(folder);
        return Examination.of(job, "00", Loading.some(job, r -> true, Progress.NONE));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static NoiseRecord record(double seconds, double... lines) {
        return new NoiseRecord(20_000, seconds, 5e-4, 50, lines, 1e-5);
    }

    private static List<Decision> decisions(JobResults results, ItemQuantity quantity) {
        return results.comparisons().get(0).items().stream()
                .filter(i -> i.quantity() == quantity)
                .map(Item::decision)
                .toList();
    }

    @Test
    void threeTimesTheHumFailsAndTheMainsItselfSuggestsInduction() throws IOException, InputException {
        JobResults results = examined(MAINS, "unchanged", record(0.5, HUM), record(0.5, 9e-4, 1e-4, 3e-4));
        assertThat(results.comparisons().get(0).verdict()).isEqualTo(Decision.FAIL);
        assertThat(decisions(results, ItemQuantity.HUM)).containsExactly(Decision.FAIL);
        Item hum = results.comparisons().get(0).items().stream()
                .filter(i -> i.quantity() == ItemQuantity.HUM)
                .findFirst()
                .orElseThrow();
        double truth = 10 * Math.log10((81 + 1 + 9) / (9.0 + 1 + 1));
        assertThat(hum.change().value().orElseThrow())
                .isCloseTo(truth, within(hum.change().expandedUncertainty().orElseThrow()));
        assertThat(results.hints()).extracting(Hint::code).containsExactly(HintCode.EXTRA_HUM);
        assertThat(results.hints().get(0).text().code()).isEqualTo(HintRemark.EXTRA_HUM_INDUCED);
    }

    @Test
    void twiceTheMainsAndItsMultiplesSuggestRipple() throws IOException, InputException {
        JobResults results = examined(MAINS, "unchanged", record(0.5, HUM), record(0.5, 3e-4, 9e-4, 1e-4, 4e-4));
        assertThat(results.hints().get(0).text().code()).isEqualTo(HintRemark.EXTRA_HUM_RIPPLE);
    }

    @Test
    void aUnitThatDidNotChangePassesWithoutAHint() throws IOException, InputException {
        for (int seed = 1; seed <= 8; seed++) {
            JobResults results = examined(MAINS, "unchanged", record(0.4, HUM), record(0.4, HUM), seed);
            assertThat(results.hints()).isEmpty();
            assertThat(results.comparisons().get(0).verdict()).isEqualTo(Decision.PASS);
            assertThat(results.comparisons().get(0).judged()).containsExactly(ItemQuantity.NOISE, ItemQuantity.HUM);
        }
    }

    @Test
    void bothFiguresOfTheNoiseAreJudgedAndLessNoisePasses() throws IOException, InputException {
        NoiseRecord quieter = new NoiseRecord(20_000, 0.5, 1e-4, 50, new double[] {}, 1e-5);
        JobResults results = examined(MAINS, "unchanged", record(0.5), quieter);
        assertThat(decisions(results, ItemQuantity.NOISE)).containsExactly(Decision.PASS, Decision.PASS);
        assertThat(results.comparisons().get(0).items())
                .extracting(i -> i.subject().map(ItemSubject::key))
                .containsExactly(Optional.of("rms"), Optional.of("aWeighted"));
    }

    @Test
    void moreHissFails() throws IOException, InputException {
        NoiseRecord louder = new NoiseRecord(20_000, 0.5, 8e-4, 50, new double[] {}, 1e-5);
        JobResults results = examined(MAINS, "unchanged", record(0.5), louder);
        assertThat(decisions(results, ItemQuantity.NOISE)).containsExactly(Decision.FAIL, Decision.FAIL);
        assertThat(results.hints()).isEmpty(); // more hiss is no hum
    }

    @Test
    void ofAStateThatIsMeantToDifferNoiseIsDescribedAndHumIsJudged() throws IOException, InputException {
        JobResults results = examined(MAINS, "changed", record(0.5, HUM), record(0.5, 9e-4, 1e-4, 3e-4));
        assertThat(decisions(results, ItemQuantity.NOISE)).containsExactly(Decision.DESCRIBED, Decision.DESCRIBED);
        assertThat(decisions(results, ItemQuantity.HUM)).containsExactly(Decision.FAIL);
    }

    @Test
    void aRecordOfTwoPeriodsLeavesHumNotExamined() throws IOException, InputException {
        JobResults results = examined(MAINS, "unchanged", record(0.04, HUM), record(0.04, HUM));
        assertThat(results.captures()).allSatisfy(c -> assertThat(codes(c)).contains(DoubtCode.TOO_SHORT_FOR_HUM));
        assertThat(notExamined(results, ItemQuantity.HUM).orElseThrow().reason().is(DoubtReason.TOO_SHORT_FOR_HUM))
                .isTrue();
        assertThat(decisions(results, ItemQuantity.NOISE)).hasSize(2);
    }

    @Test
    void mainsThatTheSheetDoesNotStateIsTakenFromTheStateThatHumsMost() throws IOException, InputException {
        NoiseRecord sixty = new NoiseRecord(20_000, 0.5, 5e-4, 60, new double[] {9e-4, 3e-4}, 1e-5);
        JobResults results = examined("", "unchanged", record(0.5), sixty);
        assertThat(results.captures()).allSatisfy(c -> assertThat(codes(c)).contains(DoubtCode.MAINS_ASSUMED));
        assertThat(results.noise()).allSatisfy(n -> assertThat(n.nominal()).isEqualTo(60));
        assertThat(decisions(results, ItemQuantity.HUM)).containsExactly(Decision.FAIL);
    }

    @Test
    void withoutAnyLineNothingIsAssumedAndHumIsNotExamined() throws IOException, InputException {
        JobResults results = examined("", "unchanged", record(0.5), record(0.5));
        assertThat(results.captures()).allSatisfy(c -> assertThat(codes(c)).doesNotContain(DoubtCode.MAINS_ASSUMED));
        assertThat(notExamined(results, ItemQuantity.HUM)
                        .orElseThrow()
                        .reason()
                        .is(ComparisonReason.NO_HUM_OF_ANY_MAINS))
                .isTrue();
        assertThat(results.comparisons().get(0).verdict()).isEqualTo(Decision.PASS);
    }

    @Test
    void aConverterTooCoarseDecidesNothingAndAsksForAFinerRange() throws IOException, InputException {
        NoiseRecord coarse = new NoiseRecord(20_000, 0.5, 5e-4, 50, new double[] {}, 1.2e-3);
        NoiseRecord louder = new NoiseRecord(20_000, 0.5, 5.5e-4, 50, new double[] {}, 1.2e-3);
        JobResults results = examined(MAINS, "unchanged", coarse, louder);
        assertThat(decisions(results, ItemQuantity.NOISE)).contains(Decision.UNDECIDED);
    }

    @Test
    void readySaysFromWhichIncreaseOnItShows() throws IOException, InputException {
        JobResults results = examined(MAINS, "unchanged", record(0.5, HUM), record(0.5, HUM));
        List<ReadyItem> items =
                Readiness.of(results.job(), results.captures().subList(0, 1)).items();
        assertThat(items).extracting(ReadyItem::quantity).containsExactly(ItemQuantity.NOISE, ItemQuantity.HUM);
        assertThat(items).allMatch(ReadyItem::sufficient);
    }

    private static List<DoubtCode> codes(CaptureResult capture) {
        return capture.doubts().stream().map(Doubt::code).toList();
    }

    private static Optional<NotExamined> notExamined(JobResults results, ItemQuantity quantity) {
        Comparison comparison = results.comparisons().get(0);
        return comparison.notExamined().stream()
                .filter(n -> n.quantity() == quantity)
                .findFirst();
    }
}
