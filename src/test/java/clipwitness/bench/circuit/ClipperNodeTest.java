package clipwitness.bench.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.bench.Cycle;
import clipwitness.bench.LegPair;
import clipwitness.bench.ShuntClipper;
import org.junit.jupiter.api.Test;

/** The stepped node against alternating-current arithmetic, the static clipper, the balance of charge, and a circuit simulator. */
class ClipperNodeTest {
    private static final double WIRE = Double.POSITIVE_INFINITY;
    private static final LegPair ONE_AND_TWO = Device.pair("D1|D2+D3");

    /** 1 kΩ and 0.1 µF in series into 0.1 µF beside 10 kΩ at 1 kHz: H = 0.453553 - 0.101329 j. */
    @Test
    void withoutLegsItIsTheDividerOfItsImpedances() {
        ClipperNode node = new ClipperNode(1_000, 1e-7, 1e-7, 10_000, Device.pair("|"));
        Cycle out = node.of(Cycle.sine(1_000, 1));
        assertThat(cosine(out, 1)).isCloseTo(-0.101329, within(1e-5));
        assertThat(sine(out, 1)).isCloseTo(0.453553, within(1e-5));
    }

    @Test
    void withoutCapacitorsItIsTheStaticClipper() {
        Cycle drive = Cycle.sine(1_000, 3);
        Cycle out = new ClipperNode(2_200, WIRE, 0, WIRE, ONE_AND_TWO).of(drive);
        Cycle exact = new ShuntClipper(2_200, ONE_AND_TWO).of(drive);
        for (int i = 0; i < out.points().size(); i++) {
            assertThat(out.points().at(i)).isCloseTo(exact.points().at(i), within(1e-6));
        }
    }

    /** A coupling capacitor carries no steady current: what legs and load take comes to nothing over a period. */
    @Test
    void behindACouplingCapacitorNoSteadyCurrentFlows() {
        Cycle out = new ClipperNode(1_000, 1e-6, 0, 220_000, Device.pair("D1|")).of(Cycle.sine(1_000, 2));
        double mean = 0;
        double size = 0;
        for (int i = 0; i < out.points().size(); i++) {
            double volts = out.points().at(i);
            double current = Device.pair("D1|").up().currentAt(volts) + volts / 220_000;
            mean += current;
            size += Math.abs(current);
        }
        assertThat(mean / size).isCloseTo(0, within(1e-3));
    }

    /**
     * A general circuit simulator (ngspice 39, .tran 0.2u, 23 °C) on the same circuit: 2 V at 1 kHz through 2.2 kΩ and 0.1 µF into one
     * junction against two in series, 10 nF and 220 kΩ. It lists amplitudes 0.956, 0.0161982, 0.188587, 0.0531948 of harmonics 1, 2, 3, 5,
     * the mean -0.25412, extremes 0.54210 and -1.08146; its own step leaves some 0.2 %.
     */
    @Test
    void oneAgainstTwoBehindACapacitorIsAsACircuitSimulatorHasIt() {
        Cycle out = new ClipperNode(2_200, 1e-7, 1e-8, 220_000, ONE_AND_TWO).of(Cycle.sine(1_000, 2));
        assertThat(amplitude(out, 1)).isCloseTo(0.956, within(2e-3));
        assertThat(amplitude(out, 2)).isCloseTo(0.0161982, within(4e-4));
        assertThat(amplitude(out, 3)).isCloseTo(0.188587, within(4e-4));
        assertThat(amplitude(out, 5)).isCloseTo(0.0531948, within(2e-4));
        assertThat(out.points().maximum()).isCloseTo(0.54210, within(1e-3));
        assertThat(out.points().minimum()).isCloseTo(-1.08146, within(2e-3));
    }

    private static double amplitude(Cycle cycle, int order) {
        return Math.hypot(cosine(cycle, order), sine(cycle, order));
    }

    private static double cosine(Cycle cycle, int order) {
        return part(cycle, order, 0.25);
    }

    private static double sine(Cycle cycle, int order) {
        return part(cycle, order, 0);
    }

    private static double part(Cycle cycle, int order, double turn) {
        int count = cycle.points().size();
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += cycle.points().at(i) * Math.sin(2 * Math.PI * ((double) order * i / count + turn));
        }
        return 2 * sum / count;
    }
}
