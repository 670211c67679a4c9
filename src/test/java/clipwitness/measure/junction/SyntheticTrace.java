package clipwitness.measure.junction;

import clipwitness.capture.IvCurve;
import clipwitness.capture.Samples;
import clipwitness.fixture.Curves;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Traces of invented devices, point by point: voltage at a set current, with the noise and the steps of an instrument. */
final class SyntheticTrace {
    private final Random random;
    private final List<double[]> points = new ArrayList<>();

    SyntheticTrace(long seed) {
        random = new Random(seed);
    }

    /** A silicon-like diode at 25 °C: 1.75 · 25.6926 mV (thermal-voltage.csv) ln(1 + I / 2.5 nA) + 0.6 Ω I. */
    static double silicon(double current) {
        return 1.75 * 0.025692579121085846 * Math.log1p(current / 2.5e-9) + 0.6 * current;
    }

    /** Currents from low to high in equal ratios, with noise of the voltage, V rms. */
    SyntheticTrace sweep(DoubleUnaryOperator device, double low, double high, int count, double noise) {
        for (int i = 0; i < count; i++) {
            double current = low * Math.pow(high / low, i / (count - 1.0));
            points.add(new double[] {device.applyAsDouble(current) + noise * random.nextGaussian(), current});
        }
        return this;
    }

    /** Floor: noise of the current about a level, A, at voltages from low to high. */
    SyntheticTrace floor(double low, double high, int count, double level, double noise) {
        for (int i = 0; i < count; i++) {
            points.add(new double[] {low + (high - low) * i / (count - 1), level + noise * random.nextGaussian()});
        }
        return this;
    }

    /** Currents of a device at reverse voltages in equal steps, with noise of the current, A rms. */
    SyntheticTrace reverse(DoubleUnaryOperator device, double low, double high, int count, double noise) {
        for (int i = 0; i < count; i++) {
            double volts = low + (high - low) * i / (count - 1);
            points.add(new double[] {volts, device.applyAsDouble(volts) + noise * random.nextGaussian()});
        }
        return this;
    }

    SyntheticTrace shuffled() {
        Collections.shuffle(points, random);
        return this;
    }

    /** The same points back in the opposite order, the voltage changed by so much. */
    SyntheticTrace back(double gap) {
        for (int i = points.size() - 1; i >= 0; i--) {
            points.add(new double[] {points.get(i)[0] + gap, points.get(i)[1]});
        }
        return this;
    }

    /** Voltage and current times factors. */
    IvCurve curve(double volts, double amperes) {
        return Curves.of(
                Samples.of(points.stream().mapToDouble(p -> volts * p[0]).toArray()),
                Samples.of(points.stream().mapToDouble(p -> amperes * p[1]).toArray()));
    }

    /** Measured at 25 °C, known exactly. */
    JunctionResult measured() {
        return JunctionMeasurement.of(curve(1, 1), new Temperature(25, 0));
    }
}
