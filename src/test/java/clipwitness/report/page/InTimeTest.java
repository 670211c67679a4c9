package clipwitness.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;

class InTimeTest {
    @Test
    void workThatNeverEndsIsToldToEndWhenItsTimeIsOver() throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        assertThatThrownBy(() -> InTime.run(Duration.ofMillis(1), () -> {
                    while (!Thread.currentThread().isInterrupted()) {
                        Thread.onSpinWait();
                    }
                    ended.countDown();
                    return 0;
                }))
                .isInstanceOf(TimeoutException.class);
        ended.await(); // without a limit: where the work is not told, this test does not end either
    }

    /** The machine may be as busy as it likes: work that waits for a processor uses up no time. */
    @Test
    void workThatWaitsIsNotPressed() throws Exception {
        assertThat(InTime.<String>run(Duration.ofMillis(200), () -> {
                    Thread.sleep(400);
                    return "done";
                }))
                .isEqualTo("done");
    }

    @Test
    void whatTheWorkThrowsIsThrown() {
        assertThatThrownBy(() -> InTime.run(Duration.ofHours(1), () -> {
                    throw new InputException(ErrorCode.EMPTY, Origin.of("a.csv"), "is empty", "");
                }))
                .isInstanceOf(InputException.class)
                .hasMessage("a.csv: is empty");
        assertThatThrownBy(() -> InTime.run(Duration.ofHours(1), () -> {
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
    }
}
