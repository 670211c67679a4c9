package clipwitness.measure.junction;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What was measured on one traced device.
 *
 * @param volts           voltages, V, forward positive, in the order taken
 * @param amperes         currents, A
 * @param temperature     temperature of the trace
 * @param curve           the measured curve above the floor, where there is one
 * @param forwardVoltages at 10 µA, 100 µA, 1 mA and 10 mA
 * @param fit             the fitted model
 * @param refusal         why no model was fitted, where none was
 * @param decadeSlope     voltage a decade, of the lowest decade measured
 * @param kneeWidth       voltage between 10 % and 90 % of the slope at the highest current, V
 * @param leakages        current at reverse voltages
 * @param retraceGap      voltage of sweeps up against sweeps down at equal current, root mean square, V
 */
public record JunctionResult(
        Samples volts,
        Samples amperes,
        Temperature temperature,
        Optional<DeviceCurve> curve,
        List<ForwardVoltage> forwardVoltages,
        Optional<JunctionFit> fit,
        Optional<Reason> refusal,
        DecadeSlope decadeSlope,
        Measured kneeWidth,
        List<Leakage> leakages,
        Measured retraceGap) {
    /** Copies what it is given. */
    public JunctionResult {
        Objects.requireNonNull(temperature, "temperature");
        forwardVoltages = List.copyOf(forwardVoltages);
        leakages = List.copyOf(leakages);
    }

    /** A figure of the fit, refused where no model was fitted. */
    public Measured fitted(Function<JunctionFit, Measured> figure, Unit unit) {
        return fit.map(figure).orElseGet(() -> Measured.refused(unit, refusal.orElseThrow()));
    }

    /** Forward voltage at 1 mA. */
    public Measured atOneMilliampere() {
        return forwardVoltages.stream()
                .filter(f -> f.current() == JunctionMeasurement.ONE_MILLIAMPERE)
                .findFirst()
                .orElseThrow()
                .voltage();
    }
}
