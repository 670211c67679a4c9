package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GainControlTest {
    /** The usual audio taper leaves 15 % of the track at half rotation; a bow of 32 leaves 1/(1 + sqrt 32) = 15.02 %. */
    @Test
    void halfRotationLeaves15PercentOfTheTrack() {
        assertThat(new GainControl(0, 32).shareAt(0.5)).isCloseTo(0.1502, within(5e-5));
    }

    @Test
    void endStopsHold() {
        GainControl control = new GainControl(0.05, 32);
        assertThat(control.shareAt(-0.01)).isEqualTo(0.05);
        assertThat(control.shareAt(1.01)).isEqualTo(1);
    }

    /** 10 mV, twice 8, the volume at a quarter: 40 mV. */
    @Test
    void anEffectThatDoesNotClipOnlyAmplifies() {
        LegPair open = new LegPair(ClipperLeg.open(), ClipperLeg.open());
        Effect effect =
                new Effect(2, new GainControl(0, 32), FeedbackClipper.nonInverting(1, 7, open), List.of(), 0.25);
        assertThat(effect.outputFor(Cycle.sine(400, 0.01), 1).peak()).isCloseTo(0.04, within(1e-12));
    }
}
