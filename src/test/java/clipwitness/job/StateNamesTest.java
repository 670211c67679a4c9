package clipwitness.job;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.fixture.TestJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What sentences call the states of a sheet: its short names, else names that follow from the labels and are never the same for two. */
class StateNamesTest {
    @TempDir
    Path folder;

    private List<String> called(String received, String original) throws IOException, InputException {
        return TestJob.in(folder)
                .sheet("states:\n  received: {" + received + ", role: before}\n  original: {" + original
                        + ", role: unchanged}\n")
                .read()
                .sheet()
                .states()
                .stream()
                .map(State::called)
                .toList();
    }

    @Test
    void theShortNameOfTheSheetStandsAsItIsWritten() throws IOException, InputException {
        assertThat(called(
                        "label: As received, short: Old Pair",
                        "label: \"After, all of it done again\", short: new pair"))
                .containsExactly("Old Pair", "new pair");
    }

    @Test
    void withoutOneItFollowsFromTheLabel() throws IOException, InputException {
        assertThat(called("label: As received", "label: \"After, old clippers\""))
                .containsExactly("as received", "old clippers");
    }

    /** An empty text is no text on this sheet, whichever key it stands behind. */
    @Test
    void anEmptyShortNameIsNone() throws IOException, InputException {
        assertThat(called("label: As received, short: \"\"", "label: \"After, old clippers\", short: \"  \""))
                .containsExactly("as received", "old clippers");
    }

    @Test
    void twoLabelsThatWouldGiveTheSameNameGiveTheNamesOfTheTable() throws IOException, InputException {
        assertThat(called("label: \"Before, old clippers\"", "label: \"After, old clippers\""))
                .containsExactly("received", "original");
    }

    @Test
    void aNameThatAnotherStateHasOnTheSheetIsNotDerived() throws IOException, InputException {
        assertThat(called("label: As received, short: old clippers", "label: \"After, old clippers\""))
                .containsExactly("old clippers", "original");
    }
}
