package clipwitness.measure.wave;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;
import java.util.Optional;

/**
 * A stretch of the folded samples around an extreme with two polynomials: a plainer one that fits it, and one that is two degrees higher, so
 * that what the test of the fit cannot see does not bias the height.
 */
record Arc(WeightedPoints points, double margin, PolynomialFit plainer, PolynomialFit fit) {
    static final int HIGHEST_DEGREE = 6;
    static final int SPARE_DEGREES = 2;
    private static final int REFERENCE_DEGREE = 10;
    private static final int POINTS_PER_DEGREE = 4;

    private Arc(WeightedPoints points, double margin, int degree) {
        this(points, margin, new PolynomialFit(points, degree), new PolynomialFit(points, degree + SPARE_DEGREES));
    }

    /**
     * The arc with polynomials of the lowest degree that fits, where one fits.
     *
     * @param margin     by how much the arc is longer than its points at either end
     * @param scatter    standard deviation of one sample
     * @param deviations how many standard deviations of chi-squared are allowed
     */
    static Optional<Arc> fitting(WeightedPoints points, double margin, double scatter, double deviations) {
        int highest = highestDegree(points);
        Optional<PolynomialFit> reference = points.holds(POINTS_PER_DEGREE * REFERENCE_DEGREE)
                ? Optional.of(new PolynomialFit(points, REFERENCE_DEGREE)).filter(r -> r.fits(scatter, deviations))
                : Optional.empty();
        for (int degree = 0; degree <= highest; degree += SPARE_DEGREES) {
            Arc arc = new Arc(points, margin, degree);
            if (arc.fits(reference, scatter, deviations)) {
                return Optional.of(arc);
            }
        }
        return Optional.empty();
    }

    /** The arc with polynomials of the highest degree that its points allow, where they allow one. */
    static Optional<Arc> ofHighestDegree(WeightedPoints points, double margin) {
        int degree = highestDegree(points);
        return degree < 0 ? Optional.empty() : Optional.of(new Arc(points, margin, degree));
    }

    /** Highest degree of the plainer polynomial, negative where the points allow none. */
    private static int highestDegree(WeightedPoints points) {
        int enough = POINTS_PER_DEGREE * (HIGHEST_DEGREE + SPARE_DEGREES);
        return points.placesUpTo(enough) / POINTS_PER_DEGREE - SPARE_DEGREES;
    }

    private boolean fits(Optional<PolynomialFit> reference, double scatter, double deviations) {
        return plainer.fitsAsWellAs(fit, scatter, deviations)
                && reference
                        .map(r -> plainer.fitsAsWellAs(r, scatter, deviations))
                        .orElse(plainer.fits(scatter, deviations));
    }

    /** Variance in the middle of the arc for samples of unit variance. */
    double variance() {
        return fit.varianceAt((low() + high()) / 2);
    }

    /** Where the arc begins. */
    double low() {
        return points.x(0) - margin;
    }

    /** Where the arc ends. */
    double high() {
        return points.x(points.size() - 1) + margin;
    }
}
