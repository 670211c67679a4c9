package clipwitness.measure.junction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.signal.NonlinearFit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The model's own equation, its slopes as differences, and fits of points that follow it. */
class JunctionModelTest {
    private static final JunctionModel PLAIN = new JunctionModel(2e-9, 0.045, 3, 0);
    private static final JunctionModel LEAKY = new JunctionModel(2e-9, 0.045, 3, 1e-5);

    /** I = Is (exp(Vj / nVt) - 1) + Gp Vj, V = Vj + I Rs. */
    private static double current(JunctionModel m, double across) {
        return m.saturationCurrent() * Math.expm1(across / m.slopeVoltage()) + m.shuntConductance() * across;
    }

    @Test
    void voltageAndCurrentSatisfyTheEquation() {
        for (JunctionModel m : List.of(PLAIN, LEAKY)) {
            for (double across : new double[] {-0.02, -0.001, 0.1, 0.3, 0.5, 0.7}) {
                double amperes = current(m, across);
                double volts = across + 3 * amperes;
                assertThat(m.voltageAt(amperes)).isCloseTo(volts, within(1e-9));
                assertThat(m.junctionVoltageAt(amperes)).isCloseTo(across, within(1e-9));
                assertThat(m.currentAt(volts)).isCloseTo(amperes, withinPercentage(1e-6));
                double slope = (m.voltageAt(amperes * 1.0001) - m.voltageAt(amperes * 0.9999)) / (amperes * 0.0002);
                assertThat(m.resistanceAt(amperes)).isCloseTo(slope, withinPercentage(1e-3));
                assertThat(m.conductance(across))
                        .isCloseTo(
                                (current(m, across + 1e-6) - current(m, across - 1e-6)) / 2e-6, withinPercentage(1e-3));
            }
        }
        assertThat(PLAIN.voltageAt(-3e-9)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(LEAKY.voltageAt(-1e-4)).isCloseTo(-(1e-4 - 2e-9) / 1e-5 - 3e-4, within(1e-6));
        assertThat(new JunctionModel(1e-9, 0.03, 0, 0).currentAt(0.3))
                .isCloseTo(1e-9 * Math.expm1(10), withinPercentage(1e-9));
    }

    @Test
    void aFallingVoltageIsNoResistance() {
        JunctionModel falling = new JunctionModel(2e-9, 0.045, -1, 1e-6);
        assertThat(falling.passive()).isEqualTo(new JunctionModel(2e-9, 0.045, 0, 1e-6));
        assertThat(PLAIN.passive()).isSameAs(PLAIN);
    }

    private static List<TracedPoint> points(JunctionModel m, double... shifts) {
        double[] currents =
                DoubleStream.iterate(1e-5, i -> i < 2e-2, i -> i * 1.5).toArray();
        return IntStream.range(0, currents.length)
                .mapToObj(i -> new TracedPoint(
                        m.voltageAt(currents[i]) + (shifts.length == 0 ? 0 : shifts[i % shifts.length]),
                        currents[i],
                        1e-3,
                        1e-12))
                .toList();
    }

    /** Current far above Is: V = nVt ln(I / Is) on the lower half of the decades, what is left at the top is Rs. */
    @Test
    void theFitStartsFromTheStraightPart() {
        JunctionModel start = ModelStart.of(points(new JunctionModel(2e-9, 0.045, 0.1, 0)));
        assertThat(start.slopeVoltage()).isCloseTo(0.045, within(2e-4));
        assertThat(start.saturationCurrent()).isCloseTo(2e-9, withinPercentage(5));
        assertThat(start.seriesResistance()).isCloseTo(0.1, within(0.07));
        JunctionModel none =
                ModelStart.of(List.of(new TracedPoint(0.5, 1e-3, 0, 0), new TracedPoint(0.52, 1e-3, 0, 0)));
        assertThat(none.slopeVoltage()).isEqualTo(5e-3);
        JunctionModel two =
                ModelStart.of(List.of(new TracedPoint(0.5, 1e-4, 0, 0), new TracedPoint(0.6, Math.E * 1e-4, 0, 0)));
        assertThat(two.slopeVoltage()).isCloseTo(0.1, within(1e-9));
        assertThat(two.saturationCurrent()).isCloseTo(1e-4 * Math.exp(-5), withinPercentage(1e-6));
        assertThat(two.seriesResistance()).isCloseTo(0, within(1.0));
    }

    /** Where the model's dV/dI is ten times, and ten ninths, that at the highest current, found by halving. */
    @Test
    void theKneeIsBetweenTheCurrentsOfTenAndNinetyPercentOfTheSlope() {
        FitAttempt attempt = FitAttempt.once(points(PLAIN), PLAIN).orElseThrow();
        double highest = attempt.points().get(attempt.points().size() - 1).amperes();
        double[] volts = new double[2];
        for (int i = 0; i < 2; i++) {
            double wanted = PLAIN.resistanceAt(highest) / (i == 0 ? 0.1 : 0.9);
            double low = 1e-9;
            double high = 1;
            for (int halving = 0; halving < 80; halving++) {
                double middle = Math.sqrt(low * high);
                boolean steeper = PLAIN.resistanceAt(middle) > wanted;
                low = steeper ? middle : low;
                high = steeper ? high : middle;
            }
            volts[i] = PLAIN.voltageAt(low);
        }
        Measured.Value knee =
                KneeWidth.of(attempt, new Temperature(26.85, 3)).asValue().orElseThrow();
        assertThat(knee.number()).isCloseTo(volts[1] - volts[0], within(1e-6));
        double ofTemperature = knee.budget().stream()
                .filter(c -> c.source() == Source.TEMPERATURE)
                .mapToDouble(c -> c.standardUncertainty())
                .sum();
        assertThat(ofTemperature).isCloseTo(knee.number() * 0.01, within(1e-7));
    }

    /** Residuals of ±2 mV by turns, all points known to 1 mV: 4 each; their neighbours are unlike, all alike, or alike in pairs. */
    @Test
    void residualsCountByTheirUncertaintyAndTheirLikeness() {
        List<TracedPoint> byTurns = points(PLAIN, 2e-3, -2e-3);
        NonlinearFit fit = anyFit();
        FitAttempt turns = new FitAttempt(PLAIN, fit, byTurns);
        assertThat(turns.chiSquare(byTurns)).isCloseTo(4 * byTurns.size(), within(1e-3));
        assertThat(turns.scatter()).isCloseTo(2e-3, within(1e-9));
        assertThat(turns.residuals()).hasSize(byTurns.size()).contains(new double[] {2e-3, -2e-3}, within(1e-9));
        assertThat(turns.alikeness()).isEqualTo(1);
        List<TracedPoint> inPairs = points(PLAIN, 2e-3, 2e-3, -2e-3, -2e-3);
        double correlation = neighbours(inPairs.size()) / inPairs.size();
        assertThat(new FitAttempt(PLAIN, fit, inPairs).alikeness())
                .isCloseTo(Math.sqrt((1 + Math.max(0, correlation)) / (1 - Math.max(0, correlation))), within(1e-3));
        List<TracedPoint> alike = points(PLAIN, 2e-3);
        assertThat(new FitAttempt(PLAIN, fit, alike).alikeness())
                .isCloseTo(Math.sqrt((2.0 * alike.size() - 1) / 1), within(1e-2));
        assertThat(new FitAttempt(PLAIN, fit, points(PLAIN)).alikeness()).isBetween(1.0, 6.3);
    }

    /** Signs ++--++--..: products of neighbours +, -, +, -, .. */
    private static double neighbours(int count) {
        return (count - 1) % 2 == 0 ? 0 : 1;
    }

    /** A current 3 nA beside the model's at -2 V, known to 1 nA, counts 9. */
    @Test
    void reversePointsCountByTheirCurrent() {
        TracedPoint reverse = new TracedPoint(-2, LEAKY.currentAt(-2) + 3e-9, 1, 1e-9);
        FitAttempt attempt = new FitAttempt(LEAKY, anyFit(), points(LEAKY));
        assertThat(attempt.chiSquareOfCurrents(List.of(reverse))).isCloseTo(9, within(1e-6));
        assertThat(attempt.chiSquareOfCurrents(List.of(reverse, reverse))).isCloseTo(18, within(1e-6));
        assertThat(LEAKY.currentAt(-2)).isCloseTo(-2e-5 * (1 - 3e-5) - 2e-9, withinPercentage(1e-2));
    }

    /** One point 50 mV beside the others is left out; the parameters are those of the rest. */
    @Test
    void aPointThatStandsOutDoesNotCount() {
        List<TracedPoint> all = new ArrayList<>(points(PLAIN, 1e-5, -2e-5, 1.5e-5, -1e-5));
        TracedPoint wrong = all.get(7);
        all.set(7, new TracedPoint(wrong.volts() + 0.05, wrong.amperes(), 1e-3, 1e-12));
        FitAttempt attempt = FitAttempt.of(all, PLAIN).orElseThrow();
        assertThat(attempt.points()).hasSize(all.size() - 1);
        assertThat(attempt.model().slopeVoltage()).isCloseTo(0.045, within(1e-4));
        assertThat(attempt.model().seriesResistance()).isCloseTo(3, within(0.02));
        assertThat(attempt.model().saturationCurrent()).isCloseTo(2e-9, withinPercentage(3));
    }

    /** A fit, which what is tested with it does not depend on. */
    private static NonlinearFit anyFit() {
        return FitAttempt.once(points(PLAIN), PLAIN).orElseThrow().fit();
    }
}
