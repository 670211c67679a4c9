package clipwitness.signal;

import java.util.Arrays;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least-squares fit of all harmonics of one channel at a fixed frequency, with what the frequency's own step needs: the column
 * d = (u / N) sum of k (b_k cos k - a_k sin k), the derivative of the model to the phase that the record spans.
 */
final class LinearFit {
    private final SmallCholesky solver;
    private final RealVector coefficients;
    private final RealVector coupling;
    private final RealVector derivative;
    private final PhaseSums sums;
    private final double derivativeEnergy;
    private final double residualEnergy;

    LinearFit(FitSamples series, double cyclesPerSample, int orders) {
        this(series, cyclesPerSample, orders, new Basis(series, cyclesPerSample, orders));
    }

    LinearFit(FitSamples series, double cyclesPerSample, int orders, Basis basis) {
        sums = new PhaseSums(series, cyclesPerSample, orders);
        double[] right = new double[2 * orders + 1];
        right[0] = sums.cosine(0);
        for (int k = 1; k <= orders; k++) {
            right[2 * k - 1] = sums.cosine(k);
            right[2 * k] = sums.sine(k);
        }
        solver = basis.solver();
        RealVector target = new ArrayRealVector(right, false);
        coefficients = new ArrayRealVector(solver.solve(right), false);
        derivative = derivative(coefficients, orders);
        coupling = basis.timed().operate(derivative);
        derivativeEnergy = basis.timedTwice().operate(derivative).dotProduct(derivative);
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
    private double residualEnergy(FitSamples series, RealVector target) {
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
        double sum = 0;
        for (int k = 1; 2 * k < derivative.getDimension(); k++) {
            double[] timed = sums.timed(k);
            sum += derivative.getEntry(2 * k - 1) * timed[0] + derivative.getEntry(2 * k) * timed[1];
        }
        return sum - coupling.dotProduct(coefficients);
    }

    /** Squared norm of that derivative after the harmonics are projected out of it. */
    double curvature() {
        return derivativeEnergy - coupling.dotProduct(new ArrayRealVector(solver.solve(coupling.toArray()), false));
    }

    /** Sum of the squared residuals. */
    double residualEnergy() {
        return residualEnergy;
    }

    /**
     * Covariance of the mean and the first harmonics for noise of unit variance.
     *
     * @param phaseVariance variance of the spanned phase for that noise
     * @param orders        how many harmonics
     */
    double[][] covariance(double phaseVariance, int orders) {
        int size = 2 * orders + 1;
        double[] pull = solver.solve(coupling.toArray());
        double[][] covariance = new double[size][];
        for (int i = 0; i < size; i++) {
            covariance[i] = Arrays.copyOf(solver.column(i), size);
            for (int j = 0; j < size; j++) {
                covariance[i][j] += phaseVariance * pull[i] * pull[j];
            }
        }
        return covariance;
    }
}
