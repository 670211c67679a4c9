package clipwitness.compare.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.measure.noise.NoiseResult;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Growth of lines of the mains worked out by hand. */
class HumGrowthTest {
    private static NoiseAtCondition setting(String state, NoiseResult noise) {
        CaptureResult capture = MadeUpQuiet.of(state).noise(noise);
        return new NoiseAtCondition(state, state, Condition.NONE, List.of(capture));
    }

    private static NoiseResult humming(double... amplitudes) {
        return MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, amplitudes));
    }

    private static NoisePair pair(NoiseResult before, NoiseResult after) {
        return new NoisePair(setting("before", before), setting("after", after));
    }

    /**
     * Squares in (mV)²: 9, 16, 0 and 1 before, 36, 64, 100 and 4 after, together 26 and 204, 10 lg 7.846 = 8.947 dB. They grew by 27, 48, 100
     * and 3, 178 in all; the even ones by 51. The fourth grew by less than a tenth.
     */
    private static final NoisePair GROWN = pair(humming(3e-3, 4e-3, 0, 1e-3), humming(6e-3, 8e-3, 10e-3, 2e-3));

    @Test
    void theLinesThatGrewMostComeFirstAndSmallOnesAreLeftOut() {
        HumGrowth growth = HumGrowth.beyond(3, GROWN).orElseThrow();
        assertThat(growth.lines()).extracting(HumGrowth.Line::frequency).containsExactly(150.0, 100.0, 50.0);
        assertThat(growth.lines()).extracting(HumGrowth.Line::isNew).containsExactly(true, false, false);
        assertThat(growth.change().number()).isCloseTo(8.947, within(1e-3));
        assertThat(growth.evenShare()).isCloseTo(51.0 / 178, within(1e-4));
    }

    @Test
    void aLineHasItsRmsBeforeAndAfter() {
        List<HumGrowth.Line> lines = HumGrowth.beyond(3, GROWN).orElseThrow().lines();
        assertThat(lines.get(1).before()).isCloseTo(2.82843e-3, within(1e-7));
        assertThat(lines.get(1).after()).isCloseTo(5.65685e-3, within(1e-7));
        assertThat(lines.get(0).after()).isCloseTo(7.07107e-3, within(1e-7));
    }

    /** Noise alone of a variance v hides a line up to a square of (8 + sqrt 80) v: 4.116 uV peak, 2.911 uV rms. */
    @Test
    void ofALineThatIsNewTheBoundOfBeforeIsTold() {
        HumGrowth.Line fresh = HumGrowth.beyond(3, GROWN).orElseThrow().lines().get(0);
        assertThat(fresh.before()).isCloseTo(2.911e-6, within(2e-9));
    }

    @Test
    void aGrowthWithinTheLimitIsNone() {
        assertThat(HumGrowth.beyond(8.94, GROWN)).isPresent();
        assertThat(HumGrowth.beyond(8.95, GROWN)).isEmpty();
        assertThat(HumGrowth.beyond(3, pair(humming(6e-3), humming(3e-3)))).isEmpty();
    }

    /** 3 ± 0.002 mV grew to 6 ± 0.002 mV: the wider end of the change is the upper one of what is 6 mV over the lower one of what was 3 mV. */
    @Test
    void theChangeCarriesTheUncertaintyOfBothStates() {
        HumGrowth growth =
                HumGrowth.beyond(3, pair(humming(3e-3), humming(6e-3))).orElseThrow();
        assertThat(growth.change().standardUncertainty())
                .isCloseTo(Math.hypot(20 * Math.log10(3 / 2.998), 20 * Math.log10(6.002 / 6)) / 2, within(1e-8));
    }

    @Test
    void aLineThatFellIsNotNamed() {
        HumGrowth growth = HumGrowth.beyond(3, pair(humming(3e-3, 2e-3), humming(9e-3, 1e-3)))
                .orElseThrow();
        assertThat(growth.lines()).extracting(HumGrowth.Line::frequency).containsExactly(50.0);
        assertThat(growth.evenShare()).isZero();
    }

    @Test
    void withoutLinesOrWithARecordTooShortNothingGrows() {
        assertThat(HumGrowth.beyond(-100, pair(humming(0, 0), humming(0, 0)))).isEmpty();
        NoisePair cut = pair(MadeUpQuiet.tooShort(), humming(6e-3));
        assertThat(HumGrowth.beyond(-100, cut)).isEmpty();
        assertThat(cut.withoutHum().map(NoiseAtCondition::state)).isEqualTo(Optional.of("before"));
        assertThat(GROWN.withoutHum()).isEmpty();
    }

    @Test
    void linesAreThoseThatStandOutInEitherAndWereLookedForInBoth() {
        assertThat(pair(humming(3e-3, 0, 0), humming(0, 2e-3, 0, 5e-3)).lines()).containsExactly(1, 2);
    }
}
