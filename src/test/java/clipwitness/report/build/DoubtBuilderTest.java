package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.report.model.ListedDoubt;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoubtBuilderTest {
    private static final DoubtBuilder BUILDER =
            new DoubtBuilder(JobWording.english(ExampleJob.good().results()));

    @Test
    void aDoubtThatManyCapturesShareIsOneLineWithItsRangeAndItsPlaces() {
        List<CaptureResult> captures = new ArrayList<>();
        captures.add(straightened("received", 25, 0.021, 3400));
        captures.add(straightened("received", 100, 0.034, 3300));
        captures.add(MadeUpCapture.ordinary("received", 0).done());
        captures.add(straightened("new", 25, 0.034, 3350));
        captures.add(straightened("new", 100, 0.034, 3350));
        List<ListedDoubt> doubts = BUILDER.all(captures);
        assertThat(doubts).hasSize(1);
        assertThat(plain(doubts.get(0).text()))
                .startsWith("Rising and falling input give two curves (gap 2.1 % to 3.4 %)")
                .endsWith("are of the wave without its low-pass (3.3 kHz to 3.4 kHz).");
        assertThat(plain(doubts.get(0).places()))
                .isEqualTo("4 captures: as received at 25 % gain and full gain; new clippers in all 2");
    }

    @Test
    void whatConcernsAllCapturesIsLeftOutOfThoseOfAPart() {
        Doubt sound = Doubt.of(Severity.NOTE, DoubtReason.AC_COUPLED_SOUND);
        CaptureResult first =
                MadeUpCapture.ordinary("received", 0).doubting(sound).done();
        CaptureResult second = straightened("received", 25, 0.021, 3400);
        List<CaptureResult> all =
                List.of(first, second.withDoubts(List.of(sound, second.doubts().get(0))));
        assertThat(BUILDER.own(all.subList(1, 2), all))
                .singleElement()
                .satisfies(d -> assertThat(d.text()).startsWith("Rising and falling input"));
        assertThat(BUILDER.own(all.subList(0, 1), all)).isEmpty();
        assertThat(BUILDER.all(all)).hasSize(2);
    }

    @Test
    void oneOfTwoRunsIsNamed() {
        List<CaptureResult> captures = List.of(
                straightened("received", 50, 0.021, 3400),
                MadeUpCapture.ordinary("received", 50).run(2).done());
        assertThat(plain(BUILDER.all(captures).get(0).places())).isEqualTo("as received at 50 % gain in run 1");
    }

    private static CaptureResult straightened(String state, double gain, double gap, double corner) {
        return MadeUpCapture.ordinary(state, gain)
                .doubting(Doubt.of(
                        Severity.NOTE,
                        DoubtReason.STRAIGHTENED_LOW,
                        Argument.prefixed(100 * gap, Unit.PERCENT, 2),
                        Argument.prefixed(corner, Unit.HERTZ, 2)))
                .done();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
