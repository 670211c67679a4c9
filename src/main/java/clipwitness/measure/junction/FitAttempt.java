package clipwitness.measure.junction;

import clipwitness.signal.NonlinearFit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One fit of the model to points, repeated with the weights of the model found, points that stand out left out: those more than five
 * times the median distance times 1.48 away, one in ten at most.
 *
 * @param model  model
 * @param fit    fit
 * @param points points that count
 */
record FitAttempt(JunctionModel model, NonlinearFit fit, List<TracedPoint> points) {
    private static final int ROUNDS = 4;
    private static final double SETTLED = 1e-9;
    private static final double OUTLIER = 5 * 1.4826;
    private static final double MOST_OUTLIERS = 0.1;

    /** The fit after its last round, or nothing where one does not settle. */
    static Optional<FitAttempt> of(List<TracedPoint> all, JunctionModel start) {
        List<TracedPoint> points = all;
        JunctionModel model = start;
        Optional<FitAttempt> attempt = Optional.empty();
        for (int round = 0; round < ROUNDS; round++) {
            attempt = once(points, model);
            if (attempt.isEmpty()) {
                return attempt;
            }
            boolean settled =
                    round > 0 && Math.abs(attempt.get().model.slopeVoltage() / model.slopeVoltage() - 1) < SETTLED;
            if (settled) {
                return attempt;
            }
            model = attempt.get().model;
            List<TracedPoint> kept = attempt.get().withoutOutliers(all);
            points = kept.size() < (1 - MOST_OUTLIERS) * all.size() ? all : kept;
        }
        return attempt;
    }

    /** One round: weights of a model, no point left out. */
    static Optional<FitAttempt> once(List<TracedPoint> points, JunctionModel weights) {
        double[] x = points.stream().mapToDouble(TracedPoint::amperes).toArray();
        double[] y = points.stream().mapToDouble(TracedPoint::volts).toArray();
        double[] s = points.stream().mapToDouble(p -> sigma(p, weights)).toArray();
        double[] start = ModelRegression.parameters(weights);
        return NonlinearFit.of(new ModelRegression(), x, y, s, start) instanceof NonlinearFit.Outcome.Found found
                ? Optional.of(new FitAttempt(ModelRegression.model(found.fit(), start.length), found.fit(), points))
                : Optional.empty();
    }

    private static double sigma(TracedPoint point, JunctionModel model) {
        return point.sigma(model.resistanceAt(point.amperes()));
    }

    private List<TracedPoint> withoutOutliers(List<TracedPoint> all) {
        double[] distances = all.stream().mapToDouble(this::distance).sorted().toArray();
        double most = OUTLIER * distances[distances.length / 2];
        return all.stream().filter(p -> distance(p) <= most).toList();
    }

    private double distance(TracedPoint point) {
        return Math.abs(residual(point)) / sigma(point, model);
    }

    private double residual(TracedPoint point) {
        return point.volts() - model.voltageAt(point.amperes());
    }

    /** The same with a model whose series resistance is 0 where the fit gave less. */
    FitAttempt passive() {
        return new FitAttempt(model.passive(), fit, points);
    }

    /** Voltage of each point less the model's, V. */
    double[] residuals() {
        return points.stream().mapToDouble(this::residual).toArray();
    }

    /** Root mean square of the residuals, V. */
    double scatter() {
        return Math.sqrt(Arrays.stream(residuals()).map(r -> r * r).average().orElse(0));
    }

    /** Sum of the squared weighted residuals of some points. */
    double chiSquare(List<TracedPoint> some) {
        return some.stream().mapToDouble(p -> distance(p) * distance(p)).sum();
    }

    /** The same of some points by their current at their voltage: for reverse ones, whose voltage hardly depends on the current. */
    double chiSquareOfCurrents(List<TracedPoint> some) {
        return some.stream()
                .mapToDouble(p -> (p.amperes() - model.currentAt(p.volts())) / p.amperesSigma())
                .map(r -> r * r)
                .sum();
    }

    /**
     * Factor by which uncertainties grow because neighbours' residuals are alike, as where the device is no exact exponential:
     * sqrt((1 + r) / (1 - r)), r the correlation of residuals that are next to each other in current; 1 for independent ones.
     */
    double alikeness() {
        double[] r = points.stream()
                .sorted((a, b) -> Double.compare(a.amperes(), b.amperes()))
                .mapToDouble(p -> residual(p) / sigma(p, model))
                .toArray();
        double own = Arrays.stream(r).map(v -> v * v).sum();
        double next = 0;
        for (int i = 1; i < r.length; i++) {
            next += r[i] * r[i - 1];
        }
        double correlation = own > 0 ? Math.max(0, Math.min(0.95, next / own)) : 0;
        return Math.sqrt((1 + correlation) / (1 - correlation));
    }
}
