package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import org.junit.jupiter.api.Test;

/** Harmonics that noise buries. */
class HarmonicListTest {
    @Test
    void aHarmonicThatIsNotThereHasNoLevel() {
        assertThat(HarmonicList.bound(0, 0, 1, 0).reason()).hasValue(Reason.of(FigureReason.NO_SUCH_HARMONIC));
        assertThat(NoisyPower.ZERO
                        .levelOver(1, 0, Unit.DBC, FigureReason.WAVES_EQUAL)
                        .reason())
                .hasValue(Reason.of(FigureReason.WAVES_EQUAL));
    }

    /** A tenth is -20 dBc; noise of a tenth more may double the amplitude twice over: 20 lg 3 = 9.54 dB. */
    @Test
    void aBuriedHarmonicOfATenthIsABoundAtMinus20() {
        Measured level = HarmonicList.bound(0.1, 0.1, 1, 0);
        assertThat(level.value().orElseThrow()).isCloseTo(-20, within(1e-9));
        assertThat(level.expandedUncertainty().orElseThrow()).isCloseTo(9.5424, within(1e-4));
        assertThat(level.asValue().orElseThrow().isUpperBound()).isTrue();
    }
}
