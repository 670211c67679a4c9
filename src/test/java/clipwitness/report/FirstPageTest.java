package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.Examination;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first page holds the answers and their picture, however long the names and however many the states. */
class FirstPageTest {
    private static final String SHEET = """
        report: {number: S-6, title: "A rather long title of a job with six states of one overdrive for the bass guitar", date: 2026-05-04, received: 2026-04-01}
        shop: {name: Harbour Lane Bench and Daughters of the Northern Shore, contact: "one, two, three"}
        customer: "a bassist with a rather long name of his own (invented)"
        unit: {name: "Bass overdrive of the second series", maker: "invented and sons", serial: "0042-777-333", supply: 9 V}
        stimulus: {shape: sine, frequency: 1 kHz, level: 100 mV}
        states:
          received: {label: "As received from the customer with all parts as they came", role: before}
          original: {label: "After, original position of the switch with the old diodes", role: unchanged}
          one: {label: "After, first new position of the switch with one more diode", role: changed, also-against: [original]}
          two: {label: "After, second new position of the switch with two more diodes", role: changed, also-against: [original]}
          three: {label: "After, third new position of the switch with germanium diodes", role: changed}
          four: {label: "After, fourth new position of the switch with no diodes at all", role: changed}
        """;

    @TempDir
    Path folder;

    private JobResults sixStates(List<Hint> hints) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), SHEET);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        Job job = JobReader.read(folder);
        List<CaptureResult> captures = job.sheet().states().stream()
                .flatMap(s -> Stream.of(50, 100).map(g -> capture(s.name(), g)))
                .toList();
        JobResults found = Examination.of(job, "0".repeat(64), captures);
        return new JobResults(job, found.inputsDigest(), found.captures(), found.series(), found.comparisons(), hints);
    }

    private static CaptureResult capture(String state, int gain) {
        boolean stays = state.equals("received") || state.equals("original");
        return MadeUpCapture.ordinary(state, gain)
                .with(WaveformQuantity.THD, stays ? 20 : 12 + state.length(), 0.05)
                .done();
    }

    private static Hint hint(String state) {
        return new Hint(
                HintCode.ONE_SIDE_NOT_CLIPPING,
                Optional.of(state),
                Remark.of(
                        HintRemark.ONE_SIDE_NOT_CLIPPING,
                        Argument.name("third new position of all"),
                        Argument.word(Word.UPPER_HALF)),
                Remark.of(HintRemark.NO_OUTPUT_BY_TONE, Argument.word(Word.FULL_GAIN)));
    }

    @Test
    void thePictureStaysOnItWithThreeHintsLongNamesAndSixStates() throws IOException, InputException {
        JobResults results = sixStates(List.of(hint("one"), hint("two"), hint("three")));
        try (Rendered report = Rendered.of(results, "customer")) {
            assertThat(report.page(1))
                    .contains("Is the original sound unharmed?")
                    .contains("Stands for answer")
                    .contains("does not clip where the other does");
            assertThat(report.text()).doesNotContain("Stands for cycles-main");
        }
    }

    /** A mark of passing is praise: no state that was meant to change gets it. */
    @Test
    void noStateThatWasMeantToChangeIsPraised() throws IOException, InputException {
        try (Rendered report = Rendered.of(sixStates(List.of()), "customer")) {
            String changes =
                    report.text().split("What does the change do\\?", 2)[1].split("What else was found", 2)[0];
            assertThat(changes).doesNotContain("✓").contains("–");
        }
    }

    @Test
    void labelsTooLongForASentenceLeaveTheNameOfTheCapturesTable() throws IOException, InputException {
        assertThat(sixStates(List.of()).job().sheet().states())
                .extracting(s -> s.called())
                .containsExactly("received", "original", "one", "two", "three", "four");
    }
}
