package clipwitness.signal;

/**
 * Least-squares fit of all harmonics of one channel at a fixed frequency, with what the frequency's own step needs: the column
 * d = (u / N) sum of k (b_k cos k - a_k sin k), the derivative of the model to the phase that the record spans.
 */
final class LinearFit {
    private final Basis basis;
    private final double[] coefficients;
    private final double[] derivative;
    private final double[] coupling;
    private final PhaseSums sums;
    private final double residualEnergy;

    LinearFit(FitSamples series, double cyclesPerSample, int orders) {
        this(series, cyclesPerSample, orders, new Basis(series, cyclesPerSample, orders));
    }

    /** The same with a basis of the same number of samples, the same gaps and the same frequency. */
    LinearFit(FitSamples series, double cyclesPerSample, int orders, Basis basis) {
        this(series, new PhaseSums(series, cyclesPerSample, orders, true), orders, basis);
    }

    private LinearFit(FitSamples series, PhaseSums sums, int orders, Basis basis) {
        this.sums = sums;
        this.basis = basis;
        double[] target = new double[2 * orders + 1];
        target[0] = sums.cosine(0);
        for (int k = 1; k <= orders; k++) {
            target[2 * k - 1] = sums.cosine(k);
            target[2 * k] = sums.sine(k);
        }
        coefficients = basis.solve(target);
        derivative = derivative(coefficients);
        coupling = basis.times(1, derivative);
        residualEnergy = residualEnergy(series, target);
    }

    /** A fit at a frequency that stays as it is: {@link #slope} must not be asked for. */
    static LinearFit settled(FitSamples series, double cyclesPerSample, int orders) {
        PhaseSums sums = new PhaseSums(series, cyclesPerSample, orders, false);
        return new LinearFit(series, sums, orders, new Basis(series, cyclesPerSample, orders));
    }

    private static double[] derivative(double[] coefficients) {
        double[] derivative = new double[coefficients.length];
        for (int k = 1; 2 * k < derivative.length; k++) {
            derivative[2 * k - 1] = k * coefficients[2 * k];
            derivative[2 * k] = -k * coefficients[2 * k - 1];
        }
        return derivative;
    }

    /** Energy about the mean of the fit first, so that a large offset costs no digits. */
    private double residualEnergy(FitSamples series, double[] target) {
        double mean = coefficients[0];
        double explained = dot(coefficients, target) - 2 * mean * target[0] + mean * mean * series.count();
        return Math.max(0, series.energyAbout(mean) - explained);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Mean, then cosine and sine of each harmonic, about the middle of the record. */
    double[] coefficients() {
        return coefficients.clone();
    }

    /** Inner product of the derivative to the spanned phase with the residual. */
    double slope() {
        double sum = 0;
        for (int k = 1; 2 * k < derivative.length; k++) {
            double[] timed = sums.timed(k);
            sum += derivative[2 * k - 1] * timed[0] + derivative[2 * k] * timed[1];
        }
        return sum - dot(coupling, coefficients);
    }

    /** Squared norm of that derivative after the harmonics are projected out of it. */
    double curvature() {
        return dot(basis.times(2, derivative), derivative) - dot(coupling, basis.solve(coupling));
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
        double[][] covariance = basis.inverse(orders);
        double[] pull = basis.solve(coupling);
        for (int i = 0; i < covariance.length; i++) {
            for (int j = 0; j < covariance.length; j++) {
                covariance[i][j] += phaseVariance * pull[i] * pull[j];
            }
        }
        return covariance;
    }
}
