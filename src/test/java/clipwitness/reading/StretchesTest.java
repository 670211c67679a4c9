package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Samples one below the other with blank lines between: one record, or segments that each have a trigger of their own. */
class StretchesTest {
    @TempDir
    private Path folder;

    @Test
    void stretchesWithoutATimeAreNotOneRecord() throws IOException, InputException {
        assertThat(doubts(
                        "Sample interval,1e-6 s\nCH1 (V)\n" + "0.1\n0.2\n".repeat(20) + "\n" + "0.3\n0.2\n".repeat(20)))
                .containsExactly(Tuple.tuple(
                        DoubtCode.UNEVEN_TIME,
                        Severity.REFUSAL,
                        "blank lines part the samples into 2 stretches, and no column of time says whether one goes on where"
                                + " the last ended. Export the stretches one by one, or with their time"));
    }

    @Test
    void aBlankLineAfterEachRowPartsNothing() throws IOException, InputException {
        assertThat(doubts("Sample interval,1e-6 s\nCH1 (V)\n" + "0.1\n\n0.2\n\n".repeat(20)))
                .isEmpty();
    }

    @Test
    void aBlankLineAtTheEndPartsNothing() throws IOException, InputException {
        assertThat(doubts("Sample interval,1e-6 s\nCH1 (V)\n" + "0.1\n0.2\n".repeat(20) + "\n\n"))
                .isEmpty();
    }

    private List<Tuple> doubts(String text) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        return ExportReader.read(file, "x.csv", ReadingOptions.none()).doubts().stream()
                .map((Doubt d) -> Tuple.tuple(d.code(), d.severity(), Said.doubt(d)))
                .toList();
    }
}
