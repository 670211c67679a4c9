package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * At its corner a filter of the first order leaves 1/sqrt 2 and turns the phase by 45°, so a sine of peak 1 comes out as half a sine
 * plus or minus half a cosine; at a tenth of the corner it leaves 1/1.01 in phase and 0.1/1.01 across it. Straight lines between 4096 points
 * take 4e-7 away.
 */
class OnePoleTest {
    private static final double QUARTER = 0.25 / 400;
    private static final Cycle SINE = Cycle.sine(400, 1);

    @Test
    void lowPassAtItsCornerLagsBy45Degrees() {
        Cycle out = OnePole.lowPass(400).of(SINE);
        assertThat(out.at(QUARTER)).isCloseTo(0.5, within(1e-6));
        assertThat(out.at(0)).isCloseTo(-0.5, within(1e-6));
    }

    @Test
    void highPassAtItsCornerLeadsBy45Degrees() {
        Cycle out = OnePole.highPass(400).of(SINE);
        assertThat(out.at(QUARTER)).isCloseTo(0.5, within(1e-6));
        assertThat(out.at(0)).isCloseTo(0.5, within(1e-6));
    }

    @Test
    void lowPassFarAboveTheSineHardlyTouchesIt() {
        Cycle out = OnePole.lowPass(4000).of(SINE);
        assertThat(out.at(QUARTER)).isCloseTo(1 / 1.01, within(1e-6));
        assertThat(out.at(0)).isCloseTo(-0.1 / 1.01, within(1e-6));
    }

    @Test
    void highPassKeepsASteadyVoltageAway() {
        Cycle out = OnePole.highPass(5).of(SINE.map(v -> 3));
        assertThat(out.peak()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aCornerIsAboveZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> OnePole.lowPass(0));
    }
}
