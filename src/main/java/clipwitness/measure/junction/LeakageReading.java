package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads the current at -1 V, -5 V and -10 V where the curve reaches these, straight between the nearest points. */
final class LeakageReading {
    private static final double[] VOLTAGES = {-1, -5, -10};

    private final List<TracedPoint> reverse;
    private final Floor floor;

    LeakageReading(List<TracedPoint> points, Floor floor) {
        this.reverse = points.stream()
                .filter(p -> p.volts() < 0)
                .sorted(Comparator.comparingDouble(TracedPoint::volts))
                .toList();
        this.floor = floor;
    }

    List<Leakage> all() {
        List<Leakage> all = new ArrayList<>();
        for (double voltage : VOLTAGES) {
            if (!reverse.isEmpty() && reverse.get(0).volts() <= voltage * (1 - 1e-6)) {
                all.add(new Leakage(voltage, at(voltage)));
            }
        }
        return all;
    }

    private Measured at(double voltage) {
        int i = 1;
        while (i < reverse.size() - 1 && reverse.get(i).volts() < voltage) {
            i++;
        }
        if (reverse.size() < 2) {
            return value(reverse.get(0).amperes(), reverse.get(0).amperesSigma(), 0);
        }
        TracedPoint a = reverse.get(i - 1);
        TracedPoint b = reverse.get(i);
        double share = b.volts() > a.volts() ? (voltage - a.volts()) / (b.volts() - a.volts()) : 0;
        double current = a.amperes() + share * (b.amperes() - a.amperes());
        return value(current, Math.max(a.amperesSigma(), b.amperesSigma()), Math.abs(b.amperes() - a.amperes()) / 2);
    }

    private Measured value(double current, double sigma, double between) {
        Measured.Value value = Measured.withNoise(current, Unit.AMPERE, Math.hypot(sigma, floor.sigma()))
                .plus(Source.METHOD, between / Math.sqrt(3));
        return -current > value.expanded() ? value : value.asUpperBound();
    }
}
