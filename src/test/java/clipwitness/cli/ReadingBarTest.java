package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ReadingBarTest {
    private final StringWriter err = new StringWriter();

    @Test
    void nothingIsPrintedWhereNobodySeesIt() {
        read(false, 10 * ReadingBar.LEAST_BYTES);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void nothingIsPrintedForAShortFile() {
        read(true, ReadingBar.LEAST_BYTES - 1);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aLongFileFillsABarThatLeavesAnEmptyLineBehind() {
        read(true, 1_000_000_000);
        assertThat(err.toString()).contains("Reading").contains("/1000 MB").contains("100%");
        assertThat(err.toString()).endsWith(" \r");
    }

    @Test
    void oneBarCanFollowAnother() {
        try (ReadingBar bar = new ReadingBar(new PrintWriter(err), true)) {
            bar.expect(1_000_000_000);
            bar.clear();
            bar.expect(2_000_000_000);
            bar.advance(1_000_000_000);
        }
        assertThat(err.toString()).contains("/1000 MB").contains(" 50%");
    }

    private void read(boolean shown, long bytes) {
        try (ReadingBar bar = new ReadingBar(new PrintWriter(err), shown)) {
            bar.expect(bytes / 2);
            bar.expect(bytes - bytes / 2);
            for (int i = 0; i < 4; i++) {
                bar.advance(bytes / 4);
            }
        }
    }
}
