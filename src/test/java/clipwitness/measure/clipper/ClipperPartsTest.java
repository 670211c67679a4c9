package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import clipwitness.capture.Samples;
import clipwitness.fixture.Curves;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.JunctionModel;
import clipwitness.measure.junction.Temperature;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Parts of clipping circuits against Kirchhoff's laws and the equations of amplifiers. */
class ClipperPartsTest {
    private static final JunctionModel SILICON = new JunctionModel(2.5e-9, 0.045, 0.6, 0);
    private static final ClippingPair PAIR = new ClippingPair(leg(1), leg(2));

    private static ClipperLeg leg(int devices) {
        return new ClipperLeg(Collections.nCopies(devices, DeviceLaw.of(SILICON)));
    }

    private static List<ClipperCircuit> circuits() {
        return List.of(
                new ClipperCircuit.Shunt(PAIR, 2200),
                new ClipperCircuit.Feedback(PAIR, 2200, 100_000, false),
                new ClipperCircuit.Feedback(PAIR, 2200, 100_000, true),
                new ClipperCircuit.Shunt(new ClippingPair(leg(1), leg(0)), 2200));
    }

    @Test
    void theOutputIsWhatPassesAndWhatIsClipped() {
        for (ClipperCircuit c : circuits()) {
            DoubleUnaryOperator clipped = c.clipped(2);
            for (double u = -2; u <= 2; u += 0.13) {
                assertThat(c.passed() * u + clipped.applyAsDouble(u)).isCloseTo(c.outputAt(u), within(2e-5));
            }
            assertThat(c.smallSignalGain()).isCloseTo((c.outputAt(1e-6) - c.outputAt(-1e-6)) / 2e-6, within(1e-3));
        }
    }

    /** 100 kΩ over 2.2 kΩ is 45.45; half of all resistances leave that, and the pair takes half as much off. */
    @Test
    void gainsAreThoseOfTheResistances() {
        ClipperCircuit.Feedback stage = new ClipperCircuit.Feedback(PAIR, 2200, 100_000, false);
        assertThat(stage.gainWithoutPair()).isCloseTo(1 + 45.4545, within(1e-3));
        assertThat(new ClipperCircuit.Feedback(PAIR, 2200, 100_000, true).gainWithoutPair())
                .isCloseTo(-45.4545, within(1e-3));
        assertThat(new ClipperCircuit.Shunt(PAIR, 2200).gainWithoutPair()).isEqualTo(1);
        assertThat(stage.withResistances(0.5)).isEqualTo(new ClipperCircuit.Feedback(PAIR, 1100, 50_000, false));
        assertThat(new ClipperCircuit.Shunt(PAIR, 2200).withResistances(2))
                .isEqualTo(new ClipperCircuit.Shunt(PAIR, 4400));
        ClippingPair other = new ClippingPair(leg(3), leg(1));
        assertThat(stage.with(other)).isEqualTo(new ClipperCircuit.Feedback(other, 2200, 100_000, false));
        assertThat(new ClipperCircuit.Shunt(PAIR, 2200).with(other)).isEqualTo(new ClipperCircuit.Shunt(other, 2200));
    }

    @Test
    void aStageIsFoundForItsGain() {
        for (boolean inverting : new boolean[] {true, false}) {
            ClipperCircuit.Feedback stage = new ClipperCircuit.Feedback(PAIR, 2200, 100_000, inverting);
            double pair = PAIR.conductanceAtZero();
            double small = Math.abs(stage.smallSignalGain());
            double open = Math.abs(stage.gainWithoutPair());
            assertThat(stage.withFeedbackFor(small, pair).orElseThrow().feedback())
                    .isCloseTo(100_000, withinPercentage(1e-6));
            assertThat(stage.withFeedbackFor(open, 0).orElseThrow().feedback())
                    .isCloseTo(100_000, withinPercentage(1e-6));
            assertThat(stage.withInputFor(small, pair).orElseThrow().input()).isCloseTo(2200, withinPercentage(1e-6));
            assertThat(stage.withInputFor(open, 0).orElseThrow().input()).isCloseTo(2200, withinPercentage(1e-6));
            assertThat(stage.withFeedbackFor(1e9, pair)).isEmpty();
        }
        ClipperCircuit.Feedback plain = new ClipperCircuit.Feedback(PAIR, 2200, 100_000, false);
        assertThat(plain.withFeedbackFor(1, 0)).isEmpty();
        assertThat(plain.withInputFor(1, 0)).isEmpty();
        assertThat(plain.withInputFor(0.5, 0)).isEmpty();
        assertThatThrownBy(() -> new ClipperCircuit.Shunt(PAIR, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ClipperCircuit.Feedback(PAIR, 1, Double.POSITIVE_INFINITY, true))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Conductance of a junction at 0 V: Is / nVt in series with Rs; two in series have half of it, the other leg beside it. */
    @Test
    void thePairConductsAtZeroAsItsJunctions() {
        double ohms = 0.045 / 2.5e-9 + 0.6;
        assertThat(leg(1).conductanceAtZero()).isCloseTo(1 / ohms, withinPercentage(1e-6));
        assertThat(PAIR.conductanceAtZero()).isCloseTo(1.5 / ohms, withinPercentage(1e-6));
        assertThat(leg(0).conductanceAtZero()).isZero();
        assertThat(leg(0).isOpen()).isTrue();
        assertThat(leg(1).isOpen()).isFalse();
    }

    /** Through each leg flows what its devices' voltages add up to. */
    @Test
    void theCurrentOfALegIsThatOfItsDevices() {
        for (double amperes = 1e-9; amperes < 0.1; amperes *= 7) {
            double volts = 2 * SILICON.voltageAt(amperes);
            assertThat(leg(2).currentAt(volts)).isCloseTo(amperes, withinPercentage(1e-4));
            assertThat(leg(2).voltageAt(amperes)).isCloseTo(volts, within(1e-12));
            assertThat(PAIR.unbalanced(1.1).currentAt(1.1 * volts / 2))
                    .isCloseTo(amperes, within(6e-9 + 1e-5 * amperes));
            assertThat(PAIR.scaled(1.1).currentAt(-1.1 * volts)).isCloseTo(-amperes, within(6e-9 + 1e-5 * amperes));
        }
        assertThat(leg(2).currentAt(0)).isZero();
        assertThat(leg(0).currentAt(1)).isZero();
    }

    @Test
    void aShiftedDeviceHasItsVoltagesRaised() {
        double[] currents =
                DoubleStream.iterate(1e-6, i -> i <= 1e-3, i -> i * 1.05).toArray();
        double[] volts = DoubleStream.of(currents)
                .map(i -> SILICON.voltageAt(i) + 0.002 * Math.log10(i / 1e-5))
                .toArray();
        DeviceLaw traced = DeviceLaw.of(JunctionMeasurement.of(
                        Curves.of(Samples.of(volts), Samples.of(currents)), new Temperature(25, 0)))
                .orElseThrow();
        for (DeviceLaw device : List.of(DeviceLaw.of(SILICON), traced)) {
            for (double amperes : new double[] {2e-6, 1e-4, 9e-4, 5e-3}) {
                assertThat(device.shifted(0.018).voltageAt(amperes) - device.voltageAt(amperes))
                        .isCloseTo(0.018, within(1e-4));
                assertThat(device.scaled(1.02).voltageAt(amperes))
                        .isCloseTo(1.02 * device.voltageAt(amperes), within(1e-9));
            }
        }
        for (double amperes : new double[] {2e-6, 1e-4, 9e-4}) {
            assertThat(traced.voltageAt(amperes))
                    .isCloseTo(SILICON.voltageAt(amperes) + 0.002 * Math.log10(amperes / 1e-5), within(2e-4));
        }
        assertThat(traced.voltageAt(1.05e-3)).isGreaterThan(traced.voltageAt(9e-4));
        assertThat(traced.voltageAt(0.9e-6)).isLessThan(traced.voltageAt(1.1e-6));
        assertThat(DeviceLaw.of(SILICON).reverseCurrentAt(-1)).isCloseTo(-2.5e-9, withinPercentage(1e-3));
    }

    @Test
    void theTableOfANodeIsItsRoot() {
        NodeTable table = new NodeTable(PAIR, 1 / 2200.0, 0.01);
        for (double amperes = -0.01; amperes < 0.01; amperes += 0.00037) {
            double volts = table.at(amperes);
            assertThat(volts / 2200 + PAIR.currentAt(volts)).isCloseTo(amperes, withinPercentage(0.02));
        }
    }

    @Test
    void theLeastIsFoundOverTheLogarithm() {
        assertThat(LogSearch.least(x -> Math.pow(Math.log(x / 3.7), 2), 0.01, 1000))
                .isCloseTo(3.7, within(1e-4));
        assertThat(LogSearch.least(x -> x, 0.01, 1000)).isCloseTo(0.01, within(1e-4));
        assertThat(LogSearch.least(x -> -x, 0.01, 1000)).isCloseTo(1000, within(0.1));
        assertThat(LogSearch.least(x -> Math.abs(x - 20) < 3 ? -1 - x / 100 : x / 1e4, 0.01, 1000))
                .isCloseTo(23, within(3.0));
    }
}
