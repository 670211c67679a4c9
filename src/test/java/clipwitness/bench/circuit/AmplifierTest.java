package clipwitness.bench.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.bench.Cycle;
import org.junit.jupiter.api.Test;

/** An amplifier at its limits. */
class AmplifierTest {
    /** A wave that is much steeper than the limit becomes a triangle: it climbs for half a period, so its peak is limit / (4 f). */
    @Test
    void aSteepWaveBecomesATriangle() {
        Cycle out = new Slew(8_000).of(Cycle.sine(1_000, 100));
        assertThat(out.peak()).isCloseTo(2, within(0.01));
    }

    @Test
    void aSlowWaveIsNotTouchedByTheSlewRate() {
        Cycle sine = Cycle.sine(1_000, 1);
        Cycle out = new Slew(7_000).of(sine);
        assertThat(out.points().toArray()).containsExactly(sine.points().toArray(), within(1e-12));
    }

    @Test
    void farBeyondItsSupplyAnAmplifierStandsAtTheRailOfThatSide() {
        Saturation amplifier = new Saturation(100, 4.2, 3.8);
        assertThat(amplifier.outputFor(1)).isCloseTo(4.2, within(1e-6));
        assertThat(amplifier.outputFor(-1)).isCloseTo(-3.8, within(1e-6));
        assertThat(amplifier.outputFor(0.01)).isCloseTo(1, within(1e-5));
    }
}
