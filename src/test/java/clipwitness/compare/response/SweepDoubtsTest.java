package clipwitness.compare.response;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.Said;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sweep of 0.2 V peak against the onset of clipping of the waves of its state. */
class SweepDoubtsTest {
    private static final Doubt OTHER = Doubt.of(Severity.NOTE, DoubtReason.UNIT_ASSUMED_SOUND, Argument.name("CH2"));

    private static CaptureResult sweep() {
        return MadeUpQuiet.of("before")
                .gain(50)
                .doubting(OTHER)
                .response(MadeUpQuiet.sweep(List.of(MadeUpQuiet.point(1000, 10, 0.1))));
    }

    private static CaptureResult onsets(String state, double gainPercent, double up, double down) {
        return MadeUpCapture.ordinary(state, gainPercent)
                .with(WaveformQuantity.ONSET_UP, up, 0.001)
                .with(WaveformQuantity.ONSET_DOWN, down, 0.001)
                .done();
    }

    private static CaptureResult doubted(CaptureResult capture, CaptureResult... waves) {
        return SweepDoubts.added(List.of(capture), Catalogue.of(List.of(waves), s -> s))
                .get(0);
    }

    @Test
    void aSweepBeyondTheLowerOfTheOnsetsIsDoubtedWithBothFigures() {
        List<Doubt> doubts = doubted(sweep(), onsets("before", 50, 0.3, 0.15)).doubts();
        assertThat(doubts).hasSize(2).contains(OTHER);
        assertThat(doubts.get(1).severity()).isEqualTo(Severity.WARNING);
        assertThat(Said.doubt(doubts.get(1))).containsPattern("0?\\.?20.*V").containsPattern("0?\\.?15.*V");
    }

    @Test
    void theOnsetOfEitherHalfCounts() {
        assertThat(doubted(sweep(), onsets("before", 50, 0.15, 0.3)).doubts()).hasSize(2);
    }

    @Test
    void aSweepThatReachesTheOnsetAndNoFartherIsSound() {
        assertThat(doubted(sweep(), onsets("before", 50, 0.2, 0.3)).doubts()).containsExactly(OTHER);
    }

    @Test
    void wavesOfAnotherStateOrPositionSayNothing() {
        CaptureResult sweep = sweep();
        assertThat(doubted(sweep, onsets("old", 50, 0.1, 0.1))).isSameAs(sweep);
        assertThat(doubted(sweep, onsets("before", 75, 0.1, 0.1))).isSameAs(sweep);
        assertThat(doubted(sweep)).isSameAs(sweep);
    }

    @Test
    void aSteadySineIsNoSweep() {
        CaptureResult sine =
                MadeUpQuiet.of("before").gain(50).response(MadeUpQuiet.steady(MadeUpQuiet.point(1000, 10, 0.1)));
        assertThat(doubted(sine, onsets("before", 50, 0.1, 0.1)).doubts()).isEmpty();
    }
}
