package clipwitness.measure.clipper;

import java.util.List;

/**
 * One leg of a clipping pair: devices in series, all in one direction, or none, which is an open leg. The same current flows through all, so
 * that their voltages add.
 *
 * @param devices devices
 */
public record ClipperLeg(List<DeviceLaw> devices) {
    private static final double MOST_STEEPNESS = 700;

    /** Copies what it is given. */
    public ClipperLeg {
        devices = List.copyOf(devices);
    }

    /** A leg in which nothing conducts. */
    public static ClipperLeg open() {
        return new ClipperLeg(List.of());
    }

    /** The same leg with all voltages times a factor. */
    ClipperLeg scaled(double factor) {
        return new ClipperLeg(devices.stream().map(d -> d.scaled(factor)).toList());
    }

    /** Current, A, at a voltage across the leg, V, forward positive. */
    double currentAt(double voltage) {
        if (devices.isEmpty() || voltage == 0) {
            return 0;
        }
        return voltage > 0 ? forward(voltage) : reverse(voltage);
    }

    /** Looked for as I = Is (exp(s) - 1), Is of the device that saturates first: in s the voltage is neither steep nor flat. */
    private double forward(double voltage) {
        double saturation =
                devices.stream().mapToDouble(DeviceLaw::saturationCurrent).min().orElseThrow();
        double most = 1;
        while (voltageAt(saturation * Math.expm1(most)) < voltage && most < MOST_STEEPNESS) {
            most *= 1.5;
        }
        return saturation * Math.expm1(Root.of(s -> voltageAt(saturation * Math.expm1(s)) - voltage, 0, most));
    }

    private double reverse(double voltage) {
        double most = devices.stream()
                .mapToDouble(d -> d.reverseCurrentAt(voltage))
                .max()
                .orElseThrow();
        return devices.size() == 1 ? most : Root.of(i -> Math.max(-Double.MAX_VALUE, voltageAt(i)) - voltage, most, 0);
    }

    private double voltageAt(double current) {
        return devices.stream().mapToDouble(d -> d.voltageAt(current)).sum();
    }

    /** Slope dI/dV at 0 V, S. */
    double conductanceAtZero() {
        double ohms =
                devices.stream().mapToDouble(d -> 1 / d.conductanceAtZero()).sum();
        return devices.isEmpty() ? 0 : 1 / ohms;
    }
}
