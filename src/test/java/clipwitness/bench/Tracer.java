package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * A curve tracer: steps the voltage, reads the current on ranges of four digits, and stops at its limit.
 *
 * @param folder where the exports go
 * @param layout how it writes voltage in V and current in A
 */
public record Tracer(JobFiles folder, Function<List<Column>, String> layout) {
    private static final double LIMIT = 12e-3;
    private static final double FINEST_RANGE = 10e-6;
    private static final double DIGITS = 1e4;
    private static final double GAIN_NOISE = 5e-4;

    /** Traces a device and saves its curve. */
    public void trace(String name, Junction device) {
        folder.add(
                Map.of("file", "tracer/" + name + ".csv", "kind", "junction", "device", name, "instrument", "tracer"),
                layout.apply(curve(new Random(name.hashCode()), device)));
    }

    /** The same curve in mV and mA. */
    static List<Column> inMillis(List<Column> curve) {
        return List.of(curve.get(0).in("mV", 1e3, 0), curve.get(1).in("mA", 1e3, 6));
    }

    /** Voltage in V and current in A: -1 V to 0 in tenths of a volt, then 200 mV and up in steps of 5 mV. */
    private static List<Column> curve(Random random, Junction device) {
        DoubleStream reverse = DoubleStream.iterate(-10, tenths -> tenths <= 0, tenths -> tenths + 1)
                .map(tenths -> tenths / 10);
        DoubleStream forward = DoubleStream.iterate(200, millivolts -> millivolts + 5)
                .map(millivolts -> millivolts / 1000)
                .takeWhile(volts -> device.currentAt(volts) <= LIMIT);
        double[] voltages = DoubleStream.concat(reverse, forward).toArray();
        double[] currents = DoubleStream.of(voltages)
                .map(volts -> reading(random, device.currentAt(volts)))
                .toArray();
        return List.of(
                new Column("voltage", "V", 3, Samples.of(voltages)),
                new Column("current", "A", 9, Samples.of(currents)));
    }

    private static double reading(Random random, double current) {
        double range = FINEST_RANGE;
        while (Math.abs(current) > range) {
            range *= 10;
        }
        double digit = range / DIGITS;
        double seen = current * (1 + GAIN_NOISE * random.nextGaussian()) / digit + random.nextGaussian() / 2;
        return Math.round(seen) * digit;
    }
}
