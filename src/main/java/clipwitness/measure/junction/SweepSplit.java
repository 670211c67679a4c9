package clipwitness.measure.junction;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits points into sweeps where the voltage turns back by more than a tenth of its span. Points that turn so often that fewer than
 * eight lie between are in no order: they are one sweep.
 */
final class SweepSplit {
    private static final double TURN = 0.1;
    private static final int FEWEST = 8;

    private SweepSplit() {}

    /**
     * Points of one direction.
     *
     * @param rising whether the voltage rose
     * @param points in the order taken
     */
    record Run(boolean rising, List<TracedPoint> points) {
        Run {
            points = List.copyOf(points);
        }
    }

    static List<Run> of(List<TracedPoint> points) {
        double low = points.stream().mapToDouble(TracedPoint::volts).min().orElse(0);
        double high = points.stream().mapToDouble(TracedPoint::volts).max().orElse(0);
        List<Integer> turns = turns(points, TURN * (high - low));
        List<Run> runs = new ArrayList<>();
        if (points.size() < FEWEST * (turns.size() - 1)) {
            runs.add(new Run(true, points));
            return runs;
        }
        for (int t = 1; t < turns.size(); t++) {
            List<TracedPoint> part = points.subList(turns.get(t - 1), turns.get(t));
            runs.add(new Run(part.get(part.size() - 1).volts() >= part.get(0).volts(), part));
        }
        return runs;
    }

    /** First point of each run, and behind the last point. */
    private static List<Integer> turns(List<TracedPoint> points, double threshold) {
        List<Integer> turns = new ArrayList<>(List.of(0));
        int highest = 0;
        int lowest = 0;
        int direction = 0;
        for (int i = 1; i < points.size(); i++) {
            double v = points.get(i).volts();
            highest = v > points.get(highest).volts() ? i : highest;
            lowest = v < points.get(lowest).volts() ? i : lowest;
            if (direction >= 0 && points.get(highest).volts() - v > threshold) {
                turnAt(turns, highest, direction);
                direction = -1;
                lowest = i;
            } else if (direction <= 0 && v - points.get(lowest).volts() > threshold) {
                turnAt(turns, lowest, direction);
                direction = 1;
                highest = i;
            }
        }
        turns.add(points.size());
        return turns;
    }

    private static void turnAt(List<Integer> turns, int extreme, int direction) {
        if (direction != 0 && extreme + 1 > turns.get(turns.size() - 1)) {
            turns.add(extreme + 1);
        }
    }
}
