package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import clipwitness.capture.Samples;
import clipwitness.fixture.Curves;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.JunctionModel;
import clipwitness.measure.junction.Temperature;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class ClipperCircuitTest {
    private static final JunctionModel SILICON = new JunctionModel(2.5e-9, 1.75 * 0.025692579121085846, 0.6, 0);

    private static ClipperLeg leg(int devices) {
        return new ClipperLeg(Collections.nCopies(devices, DeviceLaw.of(SILICON)));
    }

    private static ClippingPair oneAgainstTwo() {
        return new ClippingPair(leg(1), leg(2));
    }

    /** diode-clipper-cases.csv has the same two devices as one of twice n and Rs, "one silicon up two in series down". */
    @Test
    void twoDevicesInSeriesAreOneOfTwiceTheVoltage() {
        ClipperCircuit reference = ReferenceClipper.named("one silicon up two in series down");
        ClipperCircuit pair = new ClipperCircuit.Shunt(oneAgainstTwo(), 2200);
        for (double v = -9; v <= 9; v += 0.5) {
            assertThat(pair.outputAt(v)).isCloseTo(reference.outputAt(v), within(1e-9));
        }
    }

    /** Kirchhoff: the current through Rg is that through Rf and the pair; the non-inverting output is x + v. */
    @Test
    void feedbackClipperBalancesItsCurrents() {
        for (double x = -0.3; x <= 0.3; x += 0.05) {
            double y = new ClipperCircuit.Feedback(oneAgainstTwo(), 2200, 100_000, false).outputAt(x);
            double v = y - x;
            assertThat(v / 100_000 + oneAgainstTwo().currentAt(v)).isCloseTo(x / 2200, within(1e-12));
            double inverted = new ClipperCircuit.Feedback(oneAgainstTwo(), 2200, 100_000, true).outputAt(x);
            assertThat(inverted).isCloseTo(-v, within(1e-12));
        }
    }

    /** Reverse current of a leg of two is what each alone lets through: the same one at half the voltage. */
    @Test
    void devicesInSeriesShareTheReverseVoltage() {
        ClippingPair one = new ClippingPair(leg(1), leg(0));
        ClippingPair two = new ClippingPair(leg(2), leg(0));
        for (double v = 1e-3; v < 20; v *= 1.7) {
            assertThat(two.currentAt(-2 * v)).isCloseTo(one.currentAt(-v), withinPercentage(1e-6));
        }
    }

    /** A shunt of 1 MΩ carries a microampere a volt beside 2.5 nA; two such devices in series half of that. */
    @Test
    void leakyDevicesInSeriesShareTheReverseVoltageToo() {
        JunctionModel leaky = new JunctionModel(2.5e-9, 1.75 * 0.0257, 0.6, 1e-6);
        ClipperLeg two = new ClipperLeg(Collections.nCopies(2, DeviceLaw.of(leaky)));
        assertThat(new ClippingPair(two, leg(0)).currentAt(-4)).isCloseTo(-2.0025e-6, withinPercentage(1e-3));
    }

    /** Without a pair a feedback amplifier has the gain 1 + Rf / Rg, inverting -Rf / Rg. */
    @Test
    void openLegsLeaveThePlainAmplifier() {
        ClippingPair open = new ClippingPair(leg(0), leg(0));
        ClipperCircuit.Feedback plain = new ClipperCircuit.Feedback(open, 1000, 47_000, false);
        assertThat(plain.outputAt(0.01)).isCloseTo(0.48, within(1e-12));
        assertThat(plain.smallSignalGain()).isCloseTo(48, within(1e-9));
        assertThat(new ClipperCircuit.Feedback(open, 1000, 47_000, true).outputAt(0.01))
                .isCloseTo(-0.47, within(1e-12));
        assertThat(new ClipperCircuit.Shunt(open, 1000).outputAt(3)).isEqualTo(3);
    }

    @Test
    void smallSignalGainIsTheSlopeAtZero() {
        ClipperCircuit shunt = ReferenceClipper.named("germanium pair");
        assertThat(shunt.smallSignalGain()).isCloseTo(0.7823701837030602, within(1e-9)); // diode-clipper-cases.csv
        ClipperCircuit feedback = new ClipperCircuit.Feedback(oneAgainstTwo(), 2200, 100_000, false);
        assertThat(feedback.smallSignalGain())
                .isCloseTo((feedback.outputAt(1e-7) - feedback.outputAt(-1e-7)) / 2e-7, within(1e-3));
    }

    /** The trace ends at 1 mA, so that the clipper runs through the measured curve and beyond it; 12 currents a decade. */
    @Test
    void tracedDevicesClipAsTheirModelsDo() {
        double[] currents =
                DoubleStream.iterate(1e-6, i -> i <= 1e-3, i -> i * 1.05).toArray();
        double[] volts = DoubleStream.of(currents).map(SILICON::voltageAt).toArray();
        ClipperLeg leg = traced(volts, currents);
        ClipperCircuit measured = new ClipperCircuit.Shunt(new ClippingPair(leg, leg), 2200);
        ClipperCircuit exact = ReferenceClipper.named("silicon pair");
        for (double v = -10; v <= 10; v += 0.25) {
            assertThat(measured.outputAt(v)).isCloseTo(exact.outputAt(v), within(2e-5));
        }
    }

    @Test
    void sourceIsFoundAgainFromTheClippedWave() {
        ClipperCircuit shunt = ReferenceClipper.named("silicon pair");
        double[] wave = new double[1000];
        double square = 0;
        for (int i = 0; i < wave.length; i++) {
            wave[i] = shunt.outputAt(1.7 * Math.sin(2 * Math.PI * (i + 0.5) / wave.length));
            square += wave[i] * wave[i] / wave.length;
        }
        double level = 1.7 * shunt.smallSignalGain();
        assertThat(SourceLevel.of(0.5 * level, shunt.smallSignalGain(), 0.5)).isCloseTo(1.7, within(1e-12));
        assertThat(SourceLevel.matching(shunt, shunt.smallSignalGain(), Math.sqrt(square) / level)
                        .orElseThrow())
                .isCloseTo(1.7, within(1e-3));
    }

    /** A sine that is not clipped has an rms of sqrt(1/2), 0.7071, of its peak; no clipping makes it more, and none makes it nothing. */
    @Test
    void noSourceMakesAWaveLargerThanItsSineOrNone() {
        ClipperCircuit shunt = ReferenceClipper.named("silicon pair");
        assertThat(SourceLevel.matching(shunt, shunt.smallSignalGain(), 0.75)).isEmpty();
        assertThat(SourceLevel.matching(shunt, shunt.smallSignalGain(), 1e-9)).isEmpty();
    }

    /**
     * A device that warms while it is traced loses voltage as the current grows, as if its series resistance were below 0: here -3 Ω. A
     * resistance and a passive device between source and ground can only take from the source, more of a higher one.
     */
    @Test
    void aDeviceWhoseVoltageFallsWithTheCurrentClipsAllTheSame() {
        double[] currents =
                DoubleStream.iterate(1e-6, i -> i <= 1e-2, i -> i * 1.05).toArray();
        double[] volts = DoubleStream.of(currents)
                .map(i -> SILICON.voltageAt(i) - 3.6 * i)
                .toArray();
        ClipperLeg leg = traced(volts, currents);
        ClipperCircuit shunt = new ClipperCircuit.Shunt(new ClippingPair(leg, leg), 100);
        double before = 0;
        for (double source = 0.01; source < 20; source *= 1.2) {
            double output = shunt.outputAt(source);
            assertThat(output).isBetween(before, source);
            assertThat(shunt.outputAt(-source)).isCloseTo(-output, within(1e-9));
            before = output;
        }
        assertThat(new ClippingPair(leg, leg).currentAt(40)).isPositive();
    }

    private static ClipperLeg traced(double[] volts, double... currents) {
        return new ClipperLeg(List.of(DeviceLaw.of(JunctionMeasurement.of(
                        Curves.of(Samples.of(volts), Samples.of(currents)), new Temperature(25, 0)))
                .orElseThrow()));
    }
}
