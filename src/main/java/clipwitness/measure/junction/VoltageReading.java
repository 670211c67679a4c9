package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;

/** Voltages read off a measured curve at stated currents, with their uncertainty. */
final class VoltageReading {
    private final Optional<DeviceCurve> curve;
    private final Optional<FitAttempt> fit;
    private final List<TracedPoint> points;
    private final Floor floor;
    private final Optional<Reason> refusal;

    VoltageReading(
            Optional<DeviceCurve> curve,
            Optional<FitAttempt> fit,
            List<TracedPoint> points,
            Floor floor,
            Optional<Reason> refusal) {
        this.curve = curve;
        this.fit = fit;
        this.points = points;
        this.floor = floor;
        this.refusal = refusal;
    }

    /** Voltage at a current, A. */
    Measured at(double current) {
        if (curve.isEmpty()) {
            return Measured.refused(Unit.VOLT, refusal.orElseThrow());
        }
        List<Sweep> reaching = curve.get().reaching(current);
        if (reaching.isEmpty()) {
            return Measured.refused(Unit.VOLT, outside(current));
        }
        double[] volts =
                reaching.stream().mapToDouble(s -> s.voltageAt(current)).toArray();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double open = 0;
        for (int i = 0; i < volts.length; i++) {
            low = Math.min(low, volts[i]);
            high = Math.max(high, volts[i]);
            open = Math.max(open, Math.abs(volts[i] - reaching.get(i).straightAt(current)));
        }
        return Measured.withNoise(curve.get().voltageAt(current), Unit.VOLT, noise(current) / Math.sqrt(volts.length))
                .plus(Source.REPEATABILITY, (high - low) / Math.sqrt(12))
                .plus(Source.METHOD, open / Math.sqrt(3));
    }

    private Reason outside(double current) {
        double lowest = curve.orElseThrow().lowest();
        return current < lowest
                ? Reason.of(DeviceReason.CURVE_BEGINS, Argument.prefixed(lowest, Unit.AMPERE, 2))
                : Reason.of(
                        DeviceReason.CURVE_ENDS, Argument.prefixed(curve.get().highest(), Unit.AMPERE, 2));
    }

    /** Standard uncertainty of one point near a current, V. */
    private double noise(double current) {
        TracedPoint near = points.stream()
                .min((a, b) -> Double.compare(Math.abs(a.amperes() - current), Math.abs(b.amperes() - current)))
                .orElseThrow();
        double ofFloor = Math.hypot(near.amperesSigma(), floor.sigma());
        double resistance = fit.map(f -> f.model().resistanceAt(current)).orElseGet(() -> steepness(current));
        double scale = fit.map(f -> Math.sqrt(f.fit().reducedChiSquare())).orElse(1.0);
        return scale * Math.hypot(near.voltsSigma(), resistance * ofFloor);
    }

    /** dV/dI of the measured curve, Ω. */
    private double steepness(double current) {
        DeviceCurve c = curve.orElseThrow();
        double low = Math.max(c.lowest(), current / 1.5);
        double high = Math.min(c.highest(), current * 1.5);
        return c.reaches(low) && c.reaches(high) && high > low
                ? Math.abs(c.voltageAt(high) - c.voltageAt(low)) / (high - low)
                : 0;
    }

    /** Root mean square of the sweeps up less the sweeps down over their common currents. */
    Measured retraceGap() {
        List<Sweep> sweeps = curve.map(DeviceCurve::sweeps).orElse(List.of());
        List<Sweep> up = sweeps.stream().filter(Sweep::rising).toList();
        List<Sweep> down = sweeps.stream().filter(s -> !s.rising()).toList();
        if (up.isEmpty() || down.isEmpty()) {
            return Measured.refused(Unit.VOLT, DeviceReason.NO_SWEEP_BACK);
        }
        return CurveDistance.of(new DeviceCurve(up), new DeviceCurve(down))
                .orElseGet(() -> Measured.refused(Unit.VOLT, DeviceReason.NO_COMMON_CURRENT));
    }
}
