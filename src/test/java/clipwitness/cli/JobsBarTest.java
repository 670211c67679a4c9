package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobsBarTest {
    private static final long SECOND = 1_000_000_000;
    private static final String LONG_NAME = "A bass overdrive of a customer whose name is long";

    @Test
    void theRestIsExpectedToTakeAsLongForItsWorkAsWhatHasEnded() {
        assertThat(JobsBar.left(10 * SECOND, 0.125)).isEqualTo("about 70 s left");
        assertThat(JobsBar.left(120 * SECOND, 0.25)).isEqualTo("about 6 min left");
        assertThat(JobsBar.left(120 * SECOND, 1)).isEqualTo("about 0 s left");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 80, 200})
    void theBarShowsWhatIsDoneWithinTheTerminalAndLeavesAnEmptyLineBehind(int columns) {
        StringWriter err = new StringWriter();
        try (JobsBar bar = new JobsBar(new PrintWriter(err), 2, () -> columns)) {
            bar.doing(LONG_NAME, "reading and measuring");
            bar.ended(0.1);
            bar.above(() -> err.append("a: done\n"));
            bar.doing(LONG_NAME, "making the pages");
            bar.ended(1);
        }
        String line = "\r" + " ".repeat(Math.min(columns - 1, 119)) + "\r";
        assertThat(err.toString()).contains("Jobs", line + "a: done\n").endsWith(line);
        assertThat(err.toString().split("[\r\n]")).allMatch(drawn -> drawn.length() < columns);
    }

    @Test
    void aLineThatBecomesShorterLeavesNothingOfTheLongerOne() {
        StringWriter err = new StringWriter();
        BarPlace place = new BarPlace(new PrintWriter(err), () -> 11);
        place.accept("0123456789");
        place.accept("012");
        assertThat(err.toString()).isEqualTo("\r0123456789\r012       ");
    }

    @Test
    void theNameGivesWayFirstThenWhatIsDone() {
        String left = ", about 22 s left";
        assertThat(JobsBar.text(LONG_NAME, "making the pages", left, 90))
                .isEqualTo(LONG_NAME + ": making the pages, about 22 s left");
        assertThat(JobsBar.text(LONG_NAME, "making the pages", left, 50))
                .isEqualTo("A bass overdri…: making the pages, about 22 s left");
        assertThat(JobsBar.text(LONG_NAME, "making the pages", left, 34))
                .isEqualTo("making the pages, about 22 s left");
        assertThat(JobsBar.text(LONG_NAME, "making the pages", left, 20)).isEqualTo("about 22 s left");
        assertThat(JobsBar.text(LONG_NAME, "making the pages", left, -5)).isEmpty();
        assertThat(JobsBar.text("b7", "comparing", "", 34)).isEqualTo("b7: comparing");
    }

    @Test
    void theWidthIsTheOneThatTheTerminalAnswers() {
        assertThat(Terminal.columns("50 132\n")).isEqualTo(132);
        assertThat(Terminal.columns("0 0\n")).isEqualTo(80); // it does not know it
        assertThat(Terminal.columns("stty: unknown")).isEqualTo(80);
    }
}
