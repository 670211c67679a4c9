package clipwitness.measure.clipper;

import clipwitness.signal.Root;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * One leg of a clipping pair: devices in series, all in one direction, or none, which is an open leg. The same current flows through all, so
 * that their voltages add. Its current is looked for as I = Is (exp(s) - 1), Is of the device that saturates first: in s the voltage is neither
 * steep nor flat.
 */
public final class ClipperLeg {
    private static final double MOST_STEEPNESS = 700;

    /** exp(-40) is negligible beside 1. */
    private static final double WHOLE = 40;

    private final List<DeviceLaw> devices;
    private final double saturation;

    /**
     * A leg.
     *
     * @param devices devices, none for an open leg
     */
    public ClipperLeg(List<DeviceLaw> devices) {
        this.devices = List.copyOf(devices);
        this.saturation =
                devices.stream().mapToDouble(DeviceLaw::saturationCurrent).min().orElse(0);
    }

    /** The same leg with all voltages times a factor. */
    ClipperLeg scaled(double factor) {
        return new ClipperLeg(devices.stream().map(d -> d.scaled(factor)).toList());
    }

    /** Whether no device is in it. */
    boolean isOpen() {
        return devices.isEmpty();
    }

    /** Current, A, at a voltage across the leg, V, forward positive. */
    double currentAt(double voltage) {
        if (devices.isEmpty() || voltage == 0) {
            return 0;
        }
        return voltage > 0 ? forward(voltage) : reverse(voltage);
    }

    private double forward(double voltage) {
        double most = 1;
        while (voltageAt(current(most)) < voltage && most < MOST_STEEPNESS) {
            most *= 1.5;
        }
        return current(upTo(s -> voltageAt(current(s)) - voltage, most));
    }

    /** The device that leaks least lets through a share of what it would at the whole voltage, looked for as 1 - exp(-s). */
    private double reverse(double voltage) {
        double most = devices.stream()
                .mapToDouble(d -> d.reverseCurrentAt(voltage))
                .max()
                .orElseThrow();
        return devices.size() == 1
                ? most
                : -most * Math.expm1(-upTo(s -> voltage - voltageAt(-most * Math.expm1(-s)), WHOLE));
    }

    /** The root of a function that is 0 or less at 0 and, but for rounding, 0 or more at the higher end. */
    private static double upTo(DoubleUnaryOperator function, double high) {
        return Root.between(function, 0, high).orElse(high);
    }

    /**
     * Forward voltage, V, at which the leg and what is beside it share a current.
     *
     * @param beside  current beside the leg, A, at a voltage, V; 0 at 0 V and rising
     * @param amperes current that both share, A, 0 or more
     * @param highest voltage at which there would be so much current without the leg, V
     */
    double voltageBeside(DoubleUnaryOperator beside, double amperes, double highest) {
        if (devices.isEmpty()) {
            return upTo(v -> beside.applyAsDouble(v) - amperes, highest);
        }
        double s = upTo(
                x -> current(x) + beside.applyAsDouble(voltageAt(current(x))) - amperes,
                Math.log1p(amperes / saturation));
        return voltageAt(current(s));
    }

    /** Current, A, at a steepness s: I = Is (exp(s) - 1). */
    double current(double s) {
        return saturation * Math.expm1(s);
    }

    /** Voltage across all devices, V, at a current, A. */
    double voltageAt(double current) {
        double sum = 0;
        for (DeviceLaw d : devices) {
            sum += d.voltageAt(current);
        }
        return sum;
    }

    /** Slope dI/dV at 0 V, S. */
    double conductanceAtZero() {
        double ohms =
                devices.stream().mapToDouble(d -> 1 / d.conductanceAtZero()).sum();
        return devices.isEmpty() ? 0 : 1 / ohms;
    }
}
