package clipwitness.compare.noise;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.Said;
import clipwitness.measure.noise.MainsHum;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which mains the captures of a job are taken to have. */
class MainsChoiceTest {
    private static final OptionalDouble SILENT = OptionalDouble.empty();
    private static final Doubt OTHER = Doubt.of(Severity.NOTE, DoubtReason.UNIT_ASSUMED_SOUND, Argument.name("CH2"));

    private static CaptureResult capture(String state, MainsHum fifty, MainsHum sixty) {
        NoiseResult noise = MadeUpQuiet.hiss(1);
        return MadeUpQuiet.of(state)
                .doubting(OTHER)
                .noise(new NoiseResult(
                        noise.band(),
                        noise.spectrum(),
                        noise.values(),
                        List.of(fifty, sixty),
                        noise.floor(),
                        noise.range(),
                        noise.lasts(),
                        noise.doubts()));
    }

    private static final CaptureResult WEAK = capture("a", MadeUpQuiet.hum(50, 2e-3, 1e-3), MadeUpQuiet.hum(60, 0));
    private static final CaptureResult STRONG = capture("b", MadeUpQuiet.hum(50, 0), MadeUpQuiet.hum(60, 5e-3));
    private static final CaptureResult SILENCE = capture("c", MadeUpQuiet.hum(50, 0), MadeUpQuiet.hum(60, 0));
    private static final CaptureResult WAVE = MadeUpCapture.ordinary("d", 50).done();

    private static List<Double> nominal(CaptureResult capture) {
        return capture.noise().orElseThrow().hum().stream()
                .map(MainsHum::nominal)
                .toList();
    }

    @Test
    void theLinesWithTheMostPowerInAnyCaptureDecideForAll() {
        List<CaptureResult> made = MainsChoice.made(List.of(WEAK, WAVE, STRONG, SILENCE), SILENT);
        assertThat(made.get(1)).isSameAs(WAVE);
        for (int i : new int[] {0, 2, 3}) {
            assertThat(nominal(made.get(i))).containsExactly(60.0);
            assertThat(made.get(i).doubts()).hasSize(2).contains(OTHER);
            assertThat(Said.doubt(made.get(i).doubts().get(1))).containsPattern("60.Hz");
        }
    }

    @Test
    void whatTheSheetStatesIsNoAssumption() {
        CaptureResult stated = MadeUpQuiet.of("a").noise(MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, 1e-3)));
        List<CaptureResult> made = MainsChoice.made(List.of(stated), OptionalDouble.of(50));
        assertThat(nominal(made.get(0))).containsExactly(50.0);
        assertThat(made.get(0).doubts()).isEmpty();
    }

    @Test
    void whereNoLineStandsOutNothingIsAssumed() {
        List<CaptureResult> made = MainsChoice.made(List.of(SILENCE), SILENT);
        assertThat(nominal(made.get(0))).containsExactly(50.0);
        assertThat(made.get(0).doubts()).containsExactly(OTHER);
    }
}
