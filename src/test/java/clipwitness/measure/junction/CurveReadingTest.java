package clipwitness.measure.junction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import clipwitness.capture.IvCurve;
import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is read off points of a traced curve, on points whose values are set by hand. */
class CurveReadingTest {
    private static final Floor NONE = new Floor(0, 0, 0);

    private static TracedPoint point(double volts, double amperes) {
        return new TracedPoint(volts, amperes, 1e-4, 1e-9);
    }

    private static List<TracedPoint> points(DoubleUnaryOperator current, double... volts) {
        return DoubleStream.of(volts)
                .mapToObj(v -> point(v, current.applyAsDouble(v)))
                .toList();
    }

    private static double[] steps(int count, double first, double step) {
        return IntStream.range(0, count).mapToDouble(i -> first + step * i).toArray();
    }

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    /** 3 nA and 1 nA by turns up to 0.4 V, then ten times as much every 60 mV: mean 2 nA, rms about it 1 nA. */
    @Test
    void theFloorIsWhatDoesNotGrowWithTheVoltage() {
        List<TracedPoint> points = new ArrayList<>();
        for (int i = -5; i < 60; i++) {
            double ofFloor = i % 2 == 0 ? 3e-9 : 1e-9;
            points.add(point(i * 0.01 + 0.005, i < 40 ? ofFloor : 1e-7 * Math.pow(10, (i - 40) / 6.0)));
        }
        Floor floor = Floor.of(points, 1e-10);
        assertThat(floor.level()).isCloseTo(2e-9, withinPercentage(1));
        assertThat(floor.noise()).isCloseTo(1e-9, withinPercentage(1));
        assertThat(floor.step()).isEqualTo(1e-10);
        assertThat(floor.sigma()).isCloseTo(Math.sqrt(5) * 1e-9, withinPercentage(1));
        assertThat(floor.threshold()).isCloseTo(2e-8, withinPercentage(1));
        assertThat(new Floor(1e-9, 3e-9, 0).threshold()).isCloseTo(1.5e-8, within(1e-20));
        assertThat(new Floor(1e-9, 0, 5e-9).threshold()).isCloseTo(2.5e-8, within(1e-20));
    }

    @Test
    void aCurveThatGrowsFromTheStartHasNoFloor() {
        assertThat(Floor.of(points(v -> 1e-9 * Math.exp(v / 0.05), steps(60, 0.01, 0.01)), 3e-10))
                .isEqualTo(new Floor(0, 0, 3e-10));
        assertThat(Floor.of(points(v -> 1e-9, steps(19, 0.01, 0.01)), 0)).isEqualTo(NONE);
        assertThat(Floor.of(points(v -> 1e-9, steps(21, 0.01, 0.01)), 0).level())
                .isCloseTo(1e-9, within(1e-15));
    }

    /** Exponential up to 10 mA, then held there over 0.3 V by the instrument. */
    @Test
    void pointsAtTheInstrumentsLimitDoNotCount() {
        DoubleUnaryOperator limited = v -> Math.min(0.01, 1e-3 * Math.exp((v - 0.5) / 0.05));
        List<TracedPoint> all = points(limited, steps(41, 0.2, 0.02));
        List<TracedPoint> below = CurrentLimit.without(all);
        assertThat(below)
                .hasSize((int) all.stream().filter(p -> p.amperes() < 0.00995).count());
        assertThat(below.size()).isBetween(15, 25);
        List<TracedPoint> free = points(v -> 1e-3 * Math.exp((v - 0.5) / 0.05), steps(20, 0.2, 0.02));
        assertThat(CurrentLimit.without(free)).isEqualTo(free);
        List<TracedPoint> small =
                all.stream().map(p -> point(p.volts(), p.amperes() * 1e-5)).toList();
        assertThat(CurrentLimit.without(small)).isEqualTo(small);
    }

    @Test
    void aCurveIsSplitWhereItsVoltageTurns() {
        List<TracedPoint> all = new ArrayList<>(points(v -> v, steps(21, 0, 0.05)));
        all.addAll(points(v -> v, steps(20, 0.95, -0.05)));
        all.addAll(points(v -> v, steps(15, 0.05, 0.05)));
        List<SweepSplit.Run> runs = SweepSplit.of(all);
        assertThat(runs.stream().map(SweepSplit.Run::rising)).containsExactly(true, false, true);
        assertThat(runs.stream().map(r -> r.points().size())).containsExactly(21, 20, 15);
        List<TracedPoint> few = new ArrayList<>(points(v -> v, 0, 0.5, 1, 0.5, 0, 0.5, 1));
        assertThat(SweepSplit.of(few)).hasSize(1);
        List<TracedPoint> noisy = points(v -> v, 0, 0.05, 0.02, 0.1, 0.06, 0.2, 0.15, 0.3, 0.4, 0.6, 0.55, 0.8, 1);
        assertThat(SweepSplit.of(noisy)).hasSize(1);
    }

    private static Sweep sweep(List<TracedPoint> points) {
        return Sweep.of(new SweepSplit.Run(true, points), 1e-7).orElseThrow();
    }

    /** 60 mV a decade, 1 µA at 0.4 V: straight over the logarithm, so that chord and curve agree between the points. */
    @Test
    void aSweepIsReadOverTheLogarithmOfTheCurrent() {
        DoubleUnaryOperator decade = v -> 1e-6 * Math.pow(10, (v - 0.4) / 0.06);
        List<TracedPoint> points = new ArrayList<>(points(decade, 0.3, 0.4, 0.46, 0.55, 0.58));
        points.add(point(0.56, decade.applyAsDouble(0.55)));
        Sweep sweep = sweep(points);
        assertThat(sweep.lowest()).isCloseTo(1e-6, withinPercentage(1e-9));
        assertThat(sweep.highest()).isCloseTo(1e-3, withinPercentage(1e-9));
        assertThat(sweep.voltageAt(1e-5)).isCloseTo(0.46, within(1e-9));
        assertThat(sweep.straightAt(1e-6)).isCloseTo(0.4, within(1e-9));
        assertThat(sweep.straightAt(Math.sqrt(10) * 1e-6)).isCloseTo(0.43, within(1e-9));
        assertThat(sweep.straightAt(decade.applyAsDouble(0.55))).isCloseTo(0.555, within(1e-9));
        assertThat(sweep.reaches(0.9999995e-6)).isTrue();
        assertThat(sweep.reaches(0.999998e-6)).isFalse();
        assertThat(sweep.reaches(1.0000005e-3)).isTrue();
        assertThat(sweep.reaches(1.000002e-3)).isFalse();
        assertThat(Sweep.of(new SweepSplit.Run(true, points), 5e-4)).isEmpty();
    }

    /** Two sweeps 4 mV apart: their mean, 4 mV over root 12 of repeatability; 1 nA of a point at 26 Ω and 0.1 mV of voltage over root 2. */
    @Test
    void aVoltageIsTheMeanOfTheSweepsThatReachIt() {
        DoubleUnaryOperator decade = v -> 1e-6 * Math.pow(10, (v - 0.4) / 0.06);
        List<TracedPoint> one = points(decade, steps(50, 0.4, 0.004));
        List<TracedPoint> two = points(v -> decade.applyAsDouble(v - 0.004), steps(50, 0.404, 0.004));
        DeviceCurve curve = new DeviceCurve(List.of(sweep(one), sweep(two)));
        VoltageReading reading = new VoltageReading(
                Optional.of(curve), Optional.empty(), one, new Floor(3e-6, 4e-6, 0), Optional.empty());
        Measured at = reading.at(1e-4);
        assertThat(at.value().orElseThrow()).isCloseTo(0.522, within(1e-6));
        assertThat(part(at, Source.REPEATABILITY)).isCloseTo(0.004 / Math.sqrt(12), within(1e-7));
        assertThat(part(at, Source.METHOD)).isCloseTo(0, within(1e-7));
        double slope = 0.06 * Math.log10(1.5 * 1.5) / (1.5 - 1 / 1.5) / 1e-4;
        assertThat(part(at, Source.NOISE)).isCloseTo(Math.hypot(1e-4, slope * 5e-6) / Math.sqrt(2), within(1e-6));
        assertThat(reading.at(1e-3).value()).isPresent();
        assertThat(reading.at(1e-7).value()).isEmpty();
        assertThat(reading.at(1).value()).isEmpty();
        assertThat(reading.retraceGap().value()).isEmpty();
        assertThat(curve.lowest()).isCloseTo(1e-6, withinPercentage(1e-9));
    }

    /** Curves a constant 10 mV apart: that, and no noise; with 1 mV more and less by turns (31 of 61 less), steps of 2 mV show noise of root 2 mV. */
    @Test
    void theDistanceOfTwoCurvesIsTheirRmsLessTheNoiseOfNeighbours() {
        DoubleUnaryOperator decade = v -> 1e-6 * Math.pow(10, (v - 0.4) / 0.06);
        double[] volts = steps(61, 0.4, 0.003);
        DeviceCurve first = new DeviceCurve(List.of(sweep(points(decade, volts))));
        DeviceCurve second =
                new DeviceCurve(List.of(sweep(points(v -> decade.applyAsDouble(v + 0.01), steps(61, 0.39, 0.003)))));
        Measured.Value apart =
                CurveDistance.of(first, second).orElseThrow().asValue().orElseThrow();
        assertThat(apart.number()).isCloseTo(0.01, within(1e-9));
        assertThat(apart.standardUncertainty()).isCloseTo(0, within(1e-9));
        assertThat(CurveDistance.of(first, second, -0.007).orElseThrow().value().orElseThrow())
                .isCloseTo(0.003, within(1e-9));
        List<TracedPoint> wavy = IntStream.range(0, volts.length)
                .mapToObj(i -> point(volts[i] - 0.01 + (i % 2 == 0 ? 0.001 : -0.001), decade.applyAsDouble(volts[i])))
                .toList();
        Measured.Value noisy = CurveDistance.of(first, new DeviceCurve(List.of(sweep(wavy))))
                .orElseThrow()
                .asValue()
                .orElseThrow();
        assertThat(noisy.number()).isCloseTo(Math.sqrt(101e-6 - 2e-5 / 61 - 2e-6), within(1e-7));
        assertThat(noisy.standardUncertainty()).isCloseTo(Math.sqrt(2e-6 / 61), within(2e-6));
        assertThat(noisy.isUpperBound()).isFalse();
        Measured.Value same =
                CurveDistance.of(first, first).orElseThrow().asValue().orElseThrow();
        assertThat(same.number()).isZero();
        assertThat(same.isUpperBound()).isTrue();
        CurrentRange common = CurveDistance.common(first, second).orElseThrow();
        assertThat(common.lowest()).isCloseTo(1e-6, withinPercentage(1e-6));
        assertThat(common.highest()).isCloseTo(1e-3, withinPercentage(1e-6));
    }

    /** Between -4 V and -6 V, -4 µA and -10 µA, -5 V has -7 µA; half their distance of 6 µA is a bound. */
    @Test
    void aLeakageIsReadStraightBetweenThePoints() {
        List<TracedPoint> reverse =
                List.of(point(0.5, 1e-3), point(-1, -1e-6), new TracedPoint(-4, -4e-6, 1e-4, 3e-8), point(-6, -1e-5));
        List<Leakage> all = new LeakageReading(reverse, new Floor(3e-8, 0, 0)).all();
        assertThat(all.stream().map(Leakage::voltage)).containsExactly(-1.0, -5.0);
        Measured five = all.get(1).current();
        assertThat(five.value().orElseThrow()).isCloseTo(-7e-6, within(1e-18));
        assertThat(part(five, Source.METHOD)).isCloseTo(3e-6 / Math.sqrt(3), within(1e-15));
        assertThat(part(five, Source.NOISE)).isCloseTo(3e-8 * Math.sqrt(2), within(1e-15));
        assertThat(five.asValue().orElseThrow().isUpperBound()).isFalse();
        assertThat(all.get(0).current().value().orElseThrow()).isCloseTo(-1e-6, within(1e-18));
        assertThat(all.get(0).current().asValue().orElseThrow().isUpperBound()).isTrue();
    }

    @Test
    void aSingleReversePointIsReadAsItIs() {
        List<Leakage> all = new LeakageReading(List.of(point(-5, -2e-6)), NONE).all();
        assertThat(all).hasSize(2);
        assertThat(all.get(1).current().value().orElseThrow()).isEqualTo(-2e-6);
        assertThat(part(all.get(1).current(), Source.NOISE)).isCloseTo(1e-9, within(1e-18));
        assertThat(new LeakageReading(List.of(point(5, 1)), NONE).all()).isEmpty();
    }

    private static TracedPoints traced(double[] volts, double... amperes) {
        return TracedPoints.of(new IvCurve(Samples.of(volts), Samples.of(amperes), Optional.empty(), Optional.empty()));
    }

    /** Steps of 10 mV, read at odd places: 10 mV over root 12. Steps of 1 µA: 0.29 µA, or a thousandth of the current. */
    @Test
    void theInstrumentsStepsMakeTheUncertainties() {
        double[] volts = {0.01, 0.05, 0.08, 0.17, 0.22, 0.31, 0.33, 0.44, 0.58, 0.7};
        double[] amperes = {0, 1e-6, 2e-6, 4e-6, 7e-6, 9e-6, 2e-5, 5.3e-5, 1e-4, 1e-3};
        TracedPoints points = traced(volts, amperes);
        assertThat(points.amperesStep()).isCloseTo(1e-6, withinPercentage(1e-6));
        assertThat(points.points().get(2).voltsSigma()).isCloseTo(0.01 / Math.sqrt(12), within(1e-8));
        assertThat(points.points().get(2).amperesSigma()).isCloseTo(1e-6 / Math.sqrt(12), within(1e-12));
        assertThat(points.points().get(9).amperesSigma()).isCloseTo(1e-6, within(1e-15));
    }

    /** Voltages set in even steps are no readings: 50 µV remain. Whichever way it is connected, the device conducts at positive voltage. */
    @Test
    void theDeviceIsTurnedForward() {
        double[] volts = steps(9, -0.8, 0.1);
        double[] amperes = {-1e-3, -1e-5, -1e-7, -1e-9, 0, 0, 0, 0, 0};
        TracedPoint first = traced(volts, amperes).points().get(0);
        assertThat(first.volts()).isCloseTo(0.8, within(1e-12));
        assertThat(first.amperes()).isEqualTo(1e-3);
        assertThat(first.voltsSigma()).isEqualTo(50e-6);
        double[] crossed = {1e-3, 1e-5, 1e-7, 1e-9, 0, 0, 0, 0, 0};
        assertThat(traced(volts, crossed).points().get(0).amperes()).isEqualTo(1e-3);
        double[] gap = {Double.NaN, 1e-5, 1e-7, 1e-9, 0, 0, 0, 0, 0};
        assertThat(traced(volts, gap).points()).hasSize(8);
    }

    @Test
    void theUncertaintyOfAPointIsTheLargerWhereTheCurveIsSteep() {
        assertThat(new TracedPoint(1, 1e-3, 3e-4, 4e-6).sigma(100)).isCloseTo(5e-4, within(1e-12));
    }
}
