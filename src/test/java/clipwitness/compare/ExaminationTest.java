package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.InputException;
import clipwitness.job.JobReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of a whole job: what was not compared, and why; what looks wrong. */
class ExaminationTest {
    private static final String STATES = """
            states:
              before: {label: As it came, role: before}
              old: {label: Old pair, role: unchanged}
              new: {label: New pair, role: changed}
            """;

    @TempDir
    private Path folder;

    @Test
    void twoStatesWithoutACommonConditionAreUndecided() throws IOException, InputException {
        Comparison old = comparison("", Bench.ordinary("before", 25), Bench.ordinary("old", 75));
        assertThat(old.verdict()).isEqualTo(Decision.UNDECIDED);
        assertThat(old.reason())
                .hasValue("there is no waveform capture of “As it came” and “Old pair” under the same gain, frequency,"
                        + " level and setting, so nothing says whether it is unchanged");
        assertThat(old.notExamined())
                .contains(
                        new NotExamined(
                                ItemQuantity.LEVEL, "no waveform capture under a condition that both states share"),
                        new NotExamined(ItemQuantity.POLARITY, "no input channel was captured in both states"));
    }

    @Test
    void whatWasNotCapturedIsNamed() throws IOException, InputException {
        assertThat(comparison("", Bench.ordinary("before", 50), Bench.ordinary("old", 50))
                        .notExamined())
                .contains(
                        new NotExamined(ItemQuantity.NOISE, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.HUM, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.RESPONSE, "no response capture of “As it came”"),
                        new NotExamined(ItemQuantity.RAIL, "the sheet has no meter readings"));
    }

    @Test
    void oneExportForTwoStatesIsADoubt() throws IOException, InputException {
        JobResults results = examined("", Bench.ordinary("before", 50), Bench.ordinary("old", 50));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::code, Doubt::text)
                .containsExactly(tuple(
                        DoubtCode.NOT_COMPARABLE,
                        "the same export, byte for byte, stands for “As it came” too (line 2 of the captures table)"));
    }

    @Test
    void anOldPairThatNoLongerNullsBesideANewOneThatDoesLooksSwapped() throws IOException, InputException {
        JobResults results = examined(
                "",
                Bench.ordinary("before", 50),
                Bench.ordinary("old", 50).harmonics(1, 0.2, 0.1),
                Bench.ordinary("new", 50));
        assertThat(results.hints())
                .containsExactly(new Hint(
                        "states-swapped",
                        Optional.of("old"),
                        "“New pair” sounds as the unit did before and “Old pair” does not: the two positions, or their"
                                + " captures, look swapped.",
                        "“New pair” meets every limit for an unchanged state at 1 clipped setting; “Old pair” fails the"
                                + " null-depth limit"));
    }

    @Test
    void twoPairsThatBothNullLookNotSwapped() throws IOException, InputException {
        assertThat(examined("", Bench.ordinary("before", 50), Bench.ordinary("old", 50), Bench.ordinary("new", 50))
                        .hints())
                .isEmpty();
    }

    private Comparison comparison(String sheet, Bench... captures) throws IOException, InputException {
        return examined(sheet, captures).comparisons().get(0);
    }

    private JobResults examined(String sheet, Bench... captures) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), "report: {number: T-1, date: 2026-05-04}\n" + sheet + STATES);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        List<CaptureResult> done = Stream.of(captures).map(Bench::done).toList();
        return Examination.of(JobReader.read(folder), "00", done);
    }
}
