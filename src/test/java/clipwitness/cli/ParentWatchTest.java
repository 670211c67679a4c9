package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ParentWatchTest {
    private static final int PATIENCE_SECONDS = 120;

    /** A program that waits until its input ends. */
    static final class Waiting {
        private Waiting() {}

        public static void main(String[] args) throws IOException {
            assertThat(System.in.read()).isEqualTo(-1);
        }
    }

    @Test
    void theEndOfAProcessIsNoticedHoweverItWasEnded() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Waiting.class.getName())
                .start();
        CountDownLatch gone = new CountDownLatch(2);
        ParentWatch.whenGone(process.pid(), gone::countDown);
        assertThat(gone.getCount()).isEqualTo(2);
        process.destroyForcibly().waitFor();
        ParentWatch.whenGone(process.pid(), gone::countDown);
        assertThat(gone.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    }
}
