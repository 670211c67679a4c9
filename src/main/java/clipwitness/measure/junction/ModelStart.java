package clipwitness.measure.junction;

import java.util.List;

/** Where the fit of a junction starts: a straight line of voltage over ln I through the lower half of the decades, the rest is Rs. */
final class ModelStart {
    private static final double LEAST_SLOPE = 5e-3;

    private ModelStart() {}

    /**
     * A model near the points.
     *
     * @param points in forward direction, ascending in current, above 0
     */
    static JunctionModel of(List<TracedPoint> points) {
        TracedPoint top = points.get(points.size() - 1);
        double middle = Math.sqrt(points.get(0).amperes() * top.amperes());
        List<TracedPoint> lower =
                points.stream().filter(p -> p.amperes() <= middle).toList();
        List<TracedPoint> some = lower.size() < 3 ? points : lower;
        double meanLog =
                some.stream().mapToDouble(p -> Math.log(p.amperes())).average().orElseThrow();
        double meanVolts =
                some.stream().mapToDouble(TracedPoint::volts).average().orElseThrow();
        double square = 0;
        double product = 0;
        for (TracedPoint p : some) {
            double log = Math.log(p.amperes()) - meanLog;
            square += log * log;
            product += log * (p.volts() - meanVolts);
        }
        double slope = square > 0 ? Math.max(LEAST_SLOPE, product / square) : LEAST_SLOPE;
        double saturation = Math.exp(meanLog - meanVolts / slope);
        double rest = top.volts() - slope * Math.log1p(top.amperes() / saturation);
        return new JunctionModel(saturation, slope, Math.max(0, rest / top.amperes()), 0);
    }
}
