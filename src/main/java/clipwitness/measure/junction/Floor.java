package clipwitness.measure.junction;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the instrument reads where next to nothing flows. At positive voltages the current of a junction, and of a resistor too, grows at
 * least in proportion to the voltage; where over the upper half of a voltage range of 100 mV or more it does not, it is floor.
 *
 * @param level mean of the magnitude, A; 0 where the curve shows no floor
 * @param noise root mean square about the mean, A
 * @param step  the instrument's step, A
 */
record Floor(double level, double noise, double step) {
    private static final double LEAST_WIDTH = 0.1;
    private static final double GROWTH = 1.25;
    private static final int FEWEST = 3;
    private static final double OVER_LEVEL = 10;
    private static final double OVER_NOISE = 5;
    private static final double OVER_STEP = 5;

    /** The floor of a curve, whose points may be in any order. */
    static Floor of(List<TracedPoint> points, double step) {
        List<TracedPoint> forward = points.stream()
                .filter(p -> p.volts() > 0)
                .sorted(Comparator.comparingDouble(TracedPoint::volts))
                .toList();
        RunningMeans means = new RunningMeans(forward);
        OptionalDouble top = forward.stream()
                .mapToDouble(TracedPoint::volts)
                .filter(v -> v >= 2 * LEAST_WIDTH && flatBelow(means, v))
                .max();
        if (top.isEmpty()) {
            return new Floor(0, 0, step);
        }
        double[] flat = forward.stream()
                .filter(p -> p.volts() <= top.getAsDouble())
                .mapToDouble(TracedPoint::amperes)
                .toArray();
        double mean = Arrays.stream(flat).average().orElse(0);
        double square =
                Arrays.stream(flat).map(a -> (a - mean) * (a - mean)).average().orElse(0);
        return new Floor(Math.abs(mean), Math.sqrt(square), step);
    }

    private static boolean flatBelow(RunningMeans means, double top) {
        double lower = means.between(0.5 * top, 0.7 * top);
        double upper = means.between(0.8 * top, top);
        return upper <= GROWTH * lower; // NaN, where there are too few points, is not flat
    }

    /** Means of the current's magnitude over any range of voltage, found from sums that are made once. */
    private static final class RunningMeans {
        private final double[] volts;
        private final double[] sums;

        /** Of points in the order of their voltage. */
        RunningMeans(List<TracedPoint> points) {
            volts = points.stream().mapToDouble(TracedPoint::volts).toArray();
            sums = new double[volts.length + 1];
            for (int i = 0; i < volts.length; i++) {
                sums[i + 1] = sums[i] + Math.abs(points.get(i).amperes());
            }
        }

        /** Mean, A, of the points from one voltage to another, both included; NaN where they are fewer than three. */
        double between(double from, double to) {
            int first = below(from);
            int end = below(Math.nextUp(to));
            return end - first < FEWEST ? Double.NaN : (sums[end] - sums[first]) / (end - first);
        }

        /** How many points have a smaller voltage. */
        private int below(double voltage) {
            int low = 0;
            int high = volts.length;
            while (low < high) {
                int middle = (low + high) / 2;
                if (volts[middle] < voltage) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    /** Current, A, above which a point says something about the device. */
    double threshold() {
        return Math.max(OVER_LEVEL * level, Math.max(OVER_NOISE * noise, OVER_STEP * step));
    }

    /** Standard uncertainty, A, that the floor puts on a current. */
    double sigma() {
        return Math.hypot(level, noise);
    }
}
