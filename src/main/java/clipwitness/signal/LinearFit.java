package clipwitness.signal;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least-squares fit of all harmonics of one channel at a fixed frequency, with what the frequency's own step needs: the column
 * d = (u / N) sum of k (b_k cos k - a_k sin k), the derivative of the model to the phase that the record spans.
 */
final class LinearFit {
    private final DecompositionSolver solver;
    private final RealVector coefficients;
    private final RealVector coupling;
    private final double slope;
    private final double curvature;
    private final double residualEnergy;

    LinearFit(Series series, double cyclesPerSample, int orders) {
        this(series, cyclesPerSample, orders, new Basis(series, cyclesPerSample, orders));
    }

    LinearFit(Series series, double cyclesPerSample, int orders, Basis basis) {
        PhaseSums sums = new PhaseSums(series, cyclesPerSample, orders);
        double[] right = new double[2 * orders + 1];
        double[] timed = new double[2 * orders + 1];
        right[0] = sums.cosine(0);
        for (int k = 1; k <= orders; k++) {
            right[2 * k - 1] = sums.cosine(k);
            right[2 * k] = sums.sine(k);
            timed[2 * k - 1] = sums.timedCosine(k);
            timed[2 * k] = sums.timedSine(k);
        }
        solver = basis.solver();
        RealVector target = new ArrayRealVector(right, false);
        coefficients = solver.solve(target);
        RealVector derivative = derivative(coefficients, orders);
        coupling = basis.timed().operate(derivative);
        double own = basis.timedTwice().operate(derivative).dotProduct(derivative);
        slope = derivative.dotProduct(new ArrayRealVector(timed, false)) - coupling.dotProduct(coefficients);
        curvature = own - coupling.dotProduct(solver.solve(coupling));
        residualEnergy = residualEnergy(series, target);
    }

    private static RealVector derivative(RealVector coefficients, int orders) {
        RealVector derivative = new ArrayRealVector(2 * orders + 1);
        for (int k = 1; k <= orders; k++) {
            derivative.setEntry(2 * k - 1, k * coefficients.getEntry(2 * k));
            derivative.setEntry(2 * k, -k * coefficients.getEntry(2 * k - 1));
        }
        return derivative;
    }

    /** Energy about the mean of the fit first, so that a large offset costs no digits. */
    private double residualEnergy(Series series, RealVector target) {
        double mean = coefficients.getEntry(0);
        double explained =
                coefficients.dotProduct(target) - 2 * mean * target.getEntry(0) + mean * mean * series.count();
        return Math.max(0, series.energyAbout(mean) - explained);
    }

    /** Mean, then cosine and sine of each harmonic, about the middle of the record. */
    double[] coefficients() {
        return coefficients.toArray();
    }

    /** Inner product of the derivative to the spanned phase with the residual. */
    double slope() {
        return slope;
    }

    /** Squared norm of that derivative after the harmonics are projected out of it. */
    double curvature() {
        return curvature;
    }

    /** Sum of the squared residuals. */
    double residualEnergy() {
        return residualEnergy;
    }

    /**
     * Covariance of the coefficients for noise of unit variance.
     *
     * @param phaseVariance variance of the spanned phase for that noise
     */
    double[][] covariance(double phaseVariance) {
        double[][] covariance = solver.getInverse().getData();
        double[] pull = solver.solve(coupling).toArray();
        for (int i = 0; i < pull.length; i++) {
            for (int j = 0; j < pull.length; j++) {
                covariance[i][j] += phaseVariance * pull[i] * pull[j];
            }
        }
        return covariance;
    }
}
