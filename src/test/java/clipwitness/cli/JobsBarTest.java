package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class JobsBarTest {
    private static final long SECOND = 1_000_000_000;

    @Test
    void theRestIsExpectedToTakeAsLongAJobAsThoseThatEnded() {
        assertThat(JobsBar.left(10 * SECOND, 5, 40)).isEqualTo("about 70 s left");
        assertThat(JobsBar.left(120 * SECOND, 10, 40)).isEqualTo("about 6 min left");
        assertThat(JobsBar.left(120 * SECOND, 40, 40)).isEqualTo("about 0 s left");
    }

    @Test
    void theBarShowsWhatIsDoneAndLeavesAnEmptyLineBehind() {
        StringWriter err = new StringWriter();
        try (JobsBar bar = new JobsBar(new PrintWriter(err), 2)) {
            bar.doing("a: reading");
            bar.ended();
            bar.above(() -> err.append("a: done\n"));
            bar.doing("b: reading and measuring and much more than that");
            bar.ended();
        }
        assertThat(err.toString())
                .contains("Jobs", "2/2", "\r" + " ".repeat(79) + "\ra: done\n")
                .endsWith("\r" + " ".repeat(79) + "\r");
        assertThat(err.toString().split("[\r\n]")).allMatch(line -> line.length() <= 79);
    }
}
