package clipwitness.measure.junction;

import clipwitness.signal.ShapePreservingInterpolation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One sweep's voltage over the logarithm of its current, through the points above the floor; points of equal current are averaged. Never
 * extrapolated.
 */
final class Sweep {
    private final boolean rising;
    private final double[] logs;
    private final double[] volts;
    private final ShapePreservingInterpolation curve;
    private final double lowest;
    private final double highest;

    private Sweep(boolean rising, double[] logs, double[] volts) {
        this.rising = rising;
        this.logs = logs;
        this.volts = volts;
        this.curve = new ShapePreservingInterpolation(logs, volts);
        this.lowest = Math.exp(logs[0]);
        this.highest = Math.exp(logs[logs.length - 1]);
    }

    /** The sweep, where it has two points above the floor. */
    static Optional<Sweep> of(SweepSplit.Run run, double threshold) {
        List<TracedPoint> sorted = run.points().stream()
                .filter(p -> p.amperes() > threshold && p.volts() > 0)
                .sorted(Comparator.comparingDouble(TracedPoint::amperes))
                .toList();
        List<Double> logs = new ArrayList<>();
        List<Double> volts = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            double sum = 0;
            int from = i;
            for (;
                    i < sorted.size()
                            && sorted.get(i).amperes() == sorted.get(from).amperes();
                    i++) {
                sum += sorted.get(i).volts();
            }
            logs.add(Math.log(sorted.get(from).amperes()));
            volts.add(sum / (i - from));
        }
        return logs.size() < 2 ? Optional.empty() : Optional.of(new Sweep(run.rising(), plain(logs), plain(volts)));
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    boolean rising() {
        return rising;
    }

    /** Lowest current, A. */
    double lowest() {
        return lowest;
    }

    /** Highest current, A. */
    double highest() {
        return highest;
    }

    /** Whether the sweep reaches a current, a millionth of it to spare. */
    boolean reaches(double current) {
        return current >= lowest * (1 - 1e-6) && current <= highest * (1 + 1e-6);
    }

    /** Voltage, V, at a current that the sweep reaches, A. */
    double voltageAt(double current) {
        return curve.value(inside(current));
    }

    /** The same along straight lines from point to point: how far the points leave the curve open. */
    double straightAt(double current) {
        double at = inside(current);
        int i = 1;
        while (i < logs.length - 1 && logs[i] < at) {
            i++;
        }
        double share = (at - logs[i - 1]) / (logs[i] - logs[i - 1]);
        return volts[i - 1] + share * (volts[i] - volts[i - 1]);
    }

    private double inside(double current) {
        return Math.max(logs[0], Math.min(logs[logs.length - 1], Math.log(current)));
    }
}
