package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChangeTest {
    /** Standard uncertainties of 3 and 4 make variances of 9 and 16, of 25 together. */
    @Test
    void theShareOfTheFirstSettingIsThatOfItsVariance() {
        Map<Source, Double> shares = Change.shares(
                List.of(new Contribution(Source.KNOB, 3), new Contribution(Source.NOISE, 1)),
                List.of(new Contribution(Source.KNOB, 4)));
        assertThat(shares.get(Source.KNOB)).isCloseTo(9.0 / 25, within(1e-12));
        assertThat(shares.get(Source.NOISE)).isEqualTo(1);
    }

    /** 3 and 4 of one source are 5 of it (JCGM 100, 5.1.2). */
    @Test
    void contributionsOfOneSourceAddByTheirSquares() {
        assertThat(Budget.bySource(List.of(new Contribution(Source.KNOB, 3), new Contribution(Source.KNOB, 4))))
                .singleElement()
                .satisfies(c -> assertThat(c.standardUncertainty()).isCloseTo(5, within(1e-12)));
    }

    /**
     * 0.001 % of distortion known to 0.01 % may be anything up to 0.02 %. As a level it stands at its standard uncertainty, -40 dB of 1 %,
     * known to 8.686 dB, the decibels of a relative amplitude of 1.
     */
    @Test
    void aDistortionBelowItsNoiseStandsAtTheNoise() {
        WaveformResult buried = MadeUpCapture.ordinary("a", 50)
                .with(
                        WaveformQuantity.THD,
                        Measured.withNoise(0.001, Unit.PERCENT, 0.01).asUpperBound())
                .done()
                .waveform()
                .orElseThrow();
        Measured.Value level = ItemValue.THD.of(buried).asValue().orElseThrow();
        assertThat(level.number()).isCloseTo(-40, within(1e-9));
        assertThat(level.standardUncertainty()).isCloseTo(8.686, within(1e-3));
        assertThat(level.isUpperBound()).isTrue();
    }
}
