package clipwitness.measure.junction;

import java.util.List;

/**
 * Points at the source's current limit are no points of the device: three or more within half a percent of the highest current, over
 * more than 100 mV, above currents that still grew.
 */
final class CurrentLimit {
    private static final double NEAR = 0.005;
    private static final double LEAST_WIDTH = 0.1;
    private static final double LEAST_CURRENT = 1e-6;
    private static final int FEWEST = 3;

    private CurrentLimit() {}

    /** The points below the limit, or all where there is none. */
    static List<TracedPoint> without(List<TracedPoint> points) {
        double top = points.stream().mapToDouble(TracedPoint::amperes).max().orElse(0);
        List<TracedPoint> limited =
                points.stream().filter(p -> p.amperes() > (1 - NEAR) * top).toList();
        double low = limited.stream().mapToDouble(TracedPoint::volts).min().orElse(0);
        double high = limited.stream().mapToDouble(TracedPoint::volts).max().orElse(0);
        long growing = points.stream()
                .filter(p -> p.amperes() > top / 100 && p.amperes() < top / 2)
                .count();
        boolean limit =
                top > LEAST_CURRENT && limited.size() >= FEWEST && growing >= FEWEST && high - low > LEAST_WIDTH;
        return limit
                ? points.stream().filter(p -> p.amperes() <= (1 - NEAR) * top).toList()
                : points;
    }
}
