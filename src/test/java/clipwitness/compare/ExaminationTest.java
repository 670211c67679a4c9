package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.InputException;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of a whole job: what was not compared, and why; what looks wrong. */
class ExaminationTest {
    @TempDir
    private Path folder;

    @Test
    void twoStatesWithoutACommonConditionAreUndecided() throws IOException, InputException {
        Comparison old = comparison(Bench.ordinary("before", 25), Bench.ordinary("old", 75));
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
        assertThat(comparison(Bench.ordinary("before", 50), Bench.ordinary("old", 50))
                        .notExamined())
                .contains(
                        new NotExamined(ItemQuantity.NOISE, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.HUM, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.RESPONSE, "no response capture of “As it came”"),
                        new NotExamined(ItemQuantity.RAIL, "the sheet has no meter readings"));
    }

    @Test
    void oneExportForTwoStatesIsADoubt() throws IOException, InputException {
        JobResults results = examined(Bench.ordinary("before", 50), Bench.ordinary("old", 50));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::code, Doubt::text)
                .containsExactly(tuple(
                        DoubtCode.NOT_COMPARABLE,
                        "the same export, byte for byte, stands for “As it came” too (line 2 of the captures table)"));
    }

    private Comparison comparison(Bench... captures) throws IOException, InputException {
        return examined(captures).comparisons().get(0);
    }

    private JobResults examined(Bench... captures) throws IOException, InputException {
        return new TestExamination(folder).of(captures);
    }
}
