package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The other way round nothing is to be solved: choose the current, and the voltages follow. */
class FeedbackClipperTest {
    private static final Junction JUNCTION = new Junction(2.5e-9, 1.75, 0.6, 25);
    private static final LegPair ONE_UP = new LegPair(ClipperLeg.of(JUNCTION), ClipperLeg.open());
    private static final LegPair OPEN = new LegPair(ClipperLeg.open(), ClipperLeg.open());

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e-7, 1e-5, 1e-4, 1e-3})
    void aChosenCurrentGivesItsVoltageBack(double current) {
        double across = JUNCTION.voltageAt(current);
        double drive = 2_200 * (across / 100_000 + current);
        assertThat(FeedbackClipper.nonInverting(2_200, 100_000, ONE_UP).outputFor(drive))
                .isCloseTo(drive + across, within(1e-12));
        assertThat(FeedbackClipper.inverting(2_200, 100_000, ONE_UP).outputFor(drive))
                .isCloseTo(-across, within(1e-12));
    }

    /** Gain of an ideal amplifier: 1 + Rf/Rg, and -Rf/Rg where it inverts. */
    @Test
    void withoutLegsItAmplifies() {
        assertThat(FeedbackClipper.nonInverting(10_000, 90_000, OPEN).outputFor(-0.2))
                .isCloseTo(-2, within(1e-12));
        assertThat(FeedbackClipper.inverting(10_000, 90_000, OPEN).outputFor(-0.2))
                .isCloseTo(1.8, within(1e-12));
    }

    /** 1 mA through 1 kΩ and a junction that is all but a wire: 1 V across the leg. */
    @Test
    void aBadJointAddsItsVoltage() {
        ClipperLeg leg = ClipperLeg.of(new Junction(1, 1, 0, 25)).withJoint(1_000);
        FeedbackClipper clipper = FeedbackClipper.inverting(1_000, 1e12, new LegPair(leg, ClipperLeg.open()));
        assertThat(clipper.outputFor(1)).isCloseTo(-1, within(1e-4));
    }

    @Test
    void anAmplifierNeedsBothResistances() {
        assertThatIllegalArgumentException().isThrownBy(() -> FeedbackClipper.inverting(0, 1, OPEN));
        assertThatIllegalArgumentException().isThrownBy(() -> FeedbackClipper.nonInverting(1, Double.NaN, OPEN));
    }
}
