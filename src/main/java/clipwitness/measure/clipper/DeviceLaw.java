package clipwitness.measure.clipper;

import clipwitness.measure.junction.DeviceCurve;
import clipwitness.measure.junction.JunctionModel;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.signal.ShapePreservingInterpolation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Voltage of a device over its current: the measured curve, interpolated in log I, where there is one; the fitted model below and above it,
 * brought to the curve's ends, and for reverse currents.
 */
public final class DeviceLaw {
    private static final double RATIO = Math.pow(10, 1.0 / 12);

    private final JunctionModel model;
    private final Optional<DoubleUnaryOperator> measured;
    private final double lowest;
    private final double highest;
    private final double scale;

    private DeviceLaw(
            JunctionModel model, Optional<DoubleUnaryOperator> measured, double lowest, double highest, double scale) {
        this.model = model;
        this.measured = measured;
        this.lowest = lowest;
        this.highest = highest;
        this.scale = scale;
    }

    /** A device that is exactly its model. */
    public static DeviceLaw of(JunctionModel model) {
        return new DeviceLaw(model, Optional.empty(), 0, 0, 1);
    }

    /** A traced device; nothing where no model fits its curve. */
    public static Optional<DeviceLaw> of(JunctionResult traced) {
        return traced.fit().flatMap(fit -> traced.curve().map(curve -> through(curve, fit.model())));
    }

    private static DeviceLaw through(DeviceCurve curve, JunctionModel model) {
        List<Double> logs = new ArrayList<>();
        List<Double> volts = new ArrayList<>();
        double highest = curve.lowest();
        for (double c = curve.lowest(); c <= curve.highest(); c *= RATIO) {
            if (!curve.reaches(c)) {
                continue;
            }
            double v = model.voltageAt(c) + smoothed(curve, model, c);
            if (v > (volts.isEmpty() ? 0 : volts.get(volts.size() - 1))) { // noise must not turn the curve back
                logs.add(Math.log(c));
                volts.add(v);
                highest = c;
            }
        }
        return logs.size() < 2
                ? of(model)
                : new DeviceLaw(
                        model,
                        Optional.of(new ShapePreservingInterpolation(plain(logs), plain(volts))::value),
                        Math.exp(logs.get(0)),
                        highest,
                        1);
    }

    /** Distance of the measured curve from the model, V, the mean of nine currents around one. */
    private static double smoothed(DeviceCurve curve, JunctionModel model, double current) {
        double sum = 0;
        int count = 0;
        for (int i = -4; i <= 4; i++) {
            double c = current * Math.pow(RATIO, i / 8.0);
            if (curve.reaches(c)) {
                sum += curve.voltageAt(c) - model.voltageAt(c);
                count++;
            }
        }
        return sum / count;
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same device with its voltages at steady forward currents raised by so much, V: a saturation current that is lower accordingly. */
    public DeviceLaw shifted(double volts) {
        JunctionModel colder = new JunctionModel(
                model.saturationCurrent() * Math.exp(-volts / model.slopeVoltage()),
                model.slopeVoltage(),
                model.seriesResistance(),
                model.shuntConductance());
        return new DeviceLaw(colder, measured.map(m -> shifted(m, model, colder)), lowest, highest, scale);
    }

    /** A measured curve over ln I, moved as far as the model moves. */
    private static DoubleUnaryOperator shifted(DoubleUnaryOperator curve, JunctionModel from, JunctionModel to) {
        return log -> {
            double current = Math.exp(log);
            return curve.applyAsDouble(log) + to.voltageAt(current) - from.voltageAt(current);
        };
    }

    /** The same device with all voltages times a factor, as a change of temperature makes it nearly. */
    DeviceLaw scaled(double factor) {
        return new DeviceLaw(model, measured, lowest, highest, scale * factor);
    }

    /** Saturation current, A. */
    double saturationCurrent() {
        return model.saturationCurrent();
    }

    /** Slope dI/dV at 0 V, S. */
    double conductanceAtZero() {
        return 1 / (model.resistanceAt(0) * scale);
    }

    /** Reverse current, A, 0 or less, at a voltage of 0 or less, V. */
    double reverseCurrentAt(double voltage) {
        return model.currentAt(voltage / scale);
    }

    /** Voltage, V, at a current, A; negative infinity where the device blocks so much. */
    double voltageAt(double current) {
        return scale * unscaled(current);
    }

    private double unscaled(double current) {
        if (measured.isEmpty() || current <= 0) {
            return model.voltageAt(current);
        }
        double log = Math.log(current);
        if (current < lowest) {
            double end = measured.get().applyAsDouble(Math.log(lowest));
            return model.voltageAt(current) * end / model.voltageAt(lowest);
        }
        if (current > highest) {
            double end = measured.get().applyAsDouble(Math.log(highest));
            return model.voltageAt(current) + end - model.voltageAt(highest);
        }
        return measured.get().applyAsDouble(log);
    }
}
