package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.report.words.JobWording;
import java.util.List;
import org.junit.jupiter.api.Test;

class TogetherTest {
    @Test
    void capturesOfOneRunAreSaidToBeTakenAsOneWave() {
        assertThat(together(capture(1, "a"), capture(1, "b")))
                .singleElement()
                .asString()
                .startsWith("2 captures of this setting have the same run: they are taken as captures of one wave");
    }

    @Test
    void runsAreSaidToBeTakenAsSettingsAnew() {
        assertThat(together(capture(1, "a"), capture(2, "b")))
                .singleElement()
                .asString()
                .startsWith("This setting was captured in 2 runs: the controls were set anew for each");
    }

    @Test
    void oneCaptureOfASettingNeedsNoWord() {
        assertThat(together(
                        capture(1, "a"), MadeUpCapture.ordinary("received", 100).done()))
                .isEmpty();
    }

    private static CaptureResult capture(int run, String digest) {
        return MadeUpCapture.ordinary("received", 50).run(run).sha256(digest).done();
    }

    /** What is said of the first of some captures. */
    private static List<String> together(CaptureResult... captures) {
        JobResults good = ExampleJob.good().results();
        JobResults results = new JobResults(
                good.job(), good.inputsDigest(), List.of(captures), good.series(), good.comparisons(), List.of());
        return new Together(JobWording.english(results), results).of(captures[0].row());
    }
}
