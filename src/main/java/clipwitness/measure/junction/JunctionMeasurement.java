package clipwitness.measure.junction;

import clipwitness.capture.IvCurve;
import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Measures a traced junction. The curve may hold either polarity or both, sweeps up and down or points in no order, and a floor of either
 * sign; what conducts more is taken as the forward direction.
 */
public final class JunctionMeasurement {
    /** 1 mA, at which devices are compared. */
    static final double ONE_MILLIAMPERE = 1e-3;

    private static final double[] CURRENTS = {1e-5, 1e-4, ONE_MILLIAMPERE, 1e-2};

    private final List<TracedPoint> points;
    private final Floor floor;
    private final Temperature temperature;
    private final Optional<DeviceCurve> curve;
    private final JunctionFitting.Answer answer;

    private JunctionMeasurement(IvCurve traced, Temperature temperature) {
        this.temperature = temperature;
        TracedPoints all = TracedPoints.of(traced);
        this.points = CurrentLimit.without(all.points());
        this.floor = Floor.of(points, all.amperesStep());
        List<Sweep> sweeps = SweepSplit.of(points).stream()
                .flatMap(run -> Sweep.of(run, floor.threshold()).stream())
                .toList();
        this.curve = sweeps.isEmpty() ? Optional.empty() : Optional.of(new DeviceCurve(sweeps));
        this.answer = new JunctionFitting(points, floor).answer();
    }

    /**
     * Measures a curve; what cannot be measured is refused with its reason.
     *
     * @param traced      the curve
     * @param temperature temperature of the device
     */
    public static JunctionResult of(IvCurve traced, Temperature temperature) {
        return new JunctionMeasurement(traced, temperature).measure();
    }

    private JunctionResult measure() {
        Optional<ShuntChoice> choice =
                answer instanceof JunctionFitting.Answer.Fitted f ? Optional.of(f.choice()) : Optional.empty();
        Optional<FitAttempt> attempt = choice.map(ShuntChoice::stands);
        Optional<Reason> refusal =
                answer instanceof JunctionFitting.Answer.Refused r ? Optional.of(r.why()) : Optional.empty();
        VoltageReading reading = new VoltageReading(curve, attempt, points, floor, refusal);
        List<ForwardVoltage> forward = new ArrayList<>();
        for (double current : CURRENTS) {
            forward.add(new ForwardVoltage(current, reading.at(current)));
        }
        return new JunctionResult(
                column(TracedPoint::volts),
                column(TracedPoint::amperes),
                temperature,
                curve,
                forward,
                choice.map(c -> FittedValues.of(c, temperature)),
                refusal,
                decadeSlope(forward),
                attempt.map(a -> KneeWidth.of(a, temperature))
                        .orElseGet(() -> Measured.refused(Unit.VOLT, refusal.orElseThrow())),
                new LeakageReading(points, floor).all(),
                reading.retraceGap());
    }

    private Samples column(ToDoubleFunction<TracedPoint> value) {
        return Samples.of(points.stream().mapToDouble(value).toArray());
    }

    private static DecadeSlope decadeSlope(List<ForwardVoltage> forward) {
        for (int i = 1; i < forward.size(); i++) {
            Optional<Measured.Value> low = forward.get(i - 1).voltage().asValue();
            Optional<Measured.Value> high = forward.get(i).voltage().asValue();
            if (low.isPresent() && high.isPresent()) {
                double u =
                        Math.hypot(low.get().standardUncertainty(), high.get().standardUncertainty());
                return new DecadeSlope(
                        forward.get(i - 1).current(),
                        Measured.withNoise(high.get().number() - low.get().number(), Unit.VOLT, u));
            }
        }
        return new DecadeSlope(forward.get(0).current(), Measured.refused(Unit.VOLT, DeviceReason.NO_WHOLE_DECADE));
    }
}
