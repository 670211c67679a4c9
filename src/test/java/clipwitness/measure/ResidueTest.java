package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResidueTest {
    @Test
    void aDistortionThatDoesNotExceedItsUncertaintyIsABound() {
        Measured.Value bound = knob(Measured.withNoise(0.14, Unit.PERCENT, 0.005), 0.33);
        assertThat(bound.isUpperBound()).isTrue();
        assertThat(bound.shown()).isCloseTo(0.80, within(0.005));
        assertThat(knob(Measured.withNoise(1.4, Unit.PERCENT, 0.005), 0.33).isUpperBound())
                .isFalse();
    }

    /**
     * A harmonic of 1e-4 of the fundamental, 25 % of rotation from a setting where it is 0.03: 1 % of knob may make 0.0012 of it, its
     * double with 1e-4 is 0.0025, -52 dBc.
     */
    @Test
    void aHarmonicThatTheKnobMayHaveMadeIsBoundedByItsAmplitude() {
        double firstOrder = 8.686 * 0.0012 / 1e-4;
        Measured.Value bound = knob(Measured.withNoise(-80, Unit.DBC, 0.1), firstOrder);
        assertThat(bound.isUpperBound()).isTrue();
        assertThat(bound.shown()).isCloseTo(-52, within(0.1));
        assertThat(bound.expanded()).isCloseTo(28, within(0.1));
    }

    @Test
    void aHarmonicThatStandsOutKeepsItsInterval() {
        Measured.Value level = knob(Measured.withNoise(-30, Unit.DBC, 0.1), 0.5);
        assertThat(level.isUpperBound()).isFalse();
        assertThat(level.expanded()).isCloseTo(1.02, within(0.01));
    }

    private static Measured.Value knob(Measured.Value figure, double uncertainty) {
        return Residue.plus(figure, List.of(new Contribution(Source.KNOB, uncertainty)))
                .asValue()
                .orElseThrow();
    }
}
