package clipwitness.measure.junction;

import clipwitness.capture.IvCurve;
import clipwitness.capture.Samples;
import clipwitness.signal.CodeStep;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The points of a curve, gaps left out, turned so that the device conducts at positive voltage with positive current. Their
 * uncertainties are the stated ones, else those of the instrument's step (u = step / sqrt 12), and never less than a thousandth of the current
 * and 50 µV: a four-digit instrument has no more.
 *
 * @param points      points in the order taken
 * @param amperesStep the instrument's step of current, A; 0 where the values share none
 */
record TracedPoints(List<TracedPoint> points, double amperesStep) {
    private static final double LEAST_RELATIVE_CURRENT = 1e-3;
    private static final double LEAST_VOLTS = 50e-6;
    private static final double EVEN = 0.02;
    private static final double MOSTLY = 0.8;

    TracedPoints {
        points = List.copyOf(points);
    }

    static TracedPoints of(IvCurve curve) {
        double voltsStep = stepped(curve.volts()) ? 0 : step(curve.volts());
        double amperesStep = step(curve.amperes());
        List<TracedPoint> points = new ArrayList<>();
        for (int i = 0; i < curve.volts().size(); i++) {
            double v = curve.volts().at(i);
            double a = curve.amperes().at(i);
            if (!Double.isNaN(v) && !Double.isNaN(a)) {
                double ofVolts = stated(curve.voltsSigma(), i, voltsStep / Math.sqrt(12));
                double ofAmperes = stated(curve.amperesSigma(), i, amperesStep / Math.sqrt(12));
                points.add(new TracedPoint(
                        v,
                        a,
                        Math.max(LEAST_VOLTS, ofVolts),
                        Math.max(LEAST_RELATIVE_CURRENT * Math.abs(a), ofAmperes)));
            }
        }
        return new TracedPoints(turned(points), amperesStep);
    }

    private static double step(Samples samples) {
        return CodeStep.of(samples).orElse(0);
    }

    private static double stated(Optional<Samples> sigma, int i, double otherwise) {
        double value = sigma.map(s -> s.at(i)).orElse(Double.NaN);
        return value > 0 ? value : otherwise;
    }

    /** Whether the voltages are set, not read: most follow each other by the same step. */
    private static boolean stepped(Samples volts) {
        double[] steps = new double[Math.max(0, volts.size() - 1)];
        Arrays.setAll(steps, i -> Math.abs(volts.at(i + 1) - volts.at(i)));
        double[] sorted = Arrays.stream(steps).filter(s -> s > 0).sorted().toArray();
        if (sorted.length < 2) {
            return false;
        }
        double middle = sorted[sorted.length / 2];
        long even = Arrays.stream(steps)
                .filter(s -> Math.abs(s / middle - 1) < EVEN)
                .count();
        return even >= MOSTLY * steps.length;
    }

    private static List<TracedPoint> turned(List<TracedPoint> points) {
        double power = points.stream().mapToDouble(p -> p.volts() * p.amperes()).sum();
        double amperesSign = power < 0 ? -1 : 1;
        double up = conducted(points, 1);
        double down = conducted(points, -1);
        double voltsSign = down > up ? -1 : 1;
        return points.stream()
                .map(p -> p.turned(voltsSign, voltsSign * amperesSign))
                .toList();
    }

    private static double conducted(List<TracedPoint> points, int sign) {
        return points.stream()
                .filter(p -> sign * p.volts() > 0)
                .mapToDouble(p -> Math.abs(p.amperes()))
                .max()
                .orElse(0);
    }
}
