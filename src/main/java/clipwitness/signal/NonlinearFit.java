package clipwitness.signal;

import java.util.Arrays;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Weighted nonlinear least squares by the method of Levenberg and Marquardt: the parameters p that make the sum of ((y - f(x; p)) / s)²
 * smallest. Their covariance is (J'J)^-1 times the reduced chi-square, J being the weighted derivatives at the solution, found from the
 * triangular factor of J with its columns scaled to one, so that no digits are lost by squaring it.
 */
public final class NonlinearFit {
    /** A curve with parameters, to be fitted to points: y = f(x; p). */
    public interface Regression {
        /**
         * Value of the curve, and its derivatives to the parameters.
         *
         * @param x          abscissa
         * @param parameters p
         * @param gradient   receives df/dp, one element a parameter
         * @return f(x; p)
         */
        double at(double x, double[] parameters, double[] gradient);
    }

    private static final int MOST_ROUNDS = 2_000;
    private static final double COST_TOLERANCE = 1e-14;
    private static final double PARAMETER_TOLERANCE = 1e-13;

    private final double[] parameters;
    private final double[][] covariance;
    private final double chiSquare;
    private final int freedom;

    private NonlinearFit(double[] parameters, double[][] covariance, double chiSquare, int freedom) {
        this.parameters = parameters;
        this.covariance = covariance;
        this.chiSquare = chiSquare;
        this.freedom = freedom;
    }

    /** A fit, or why there is none. */
    public sealed interface Outcome {
        /** The fit succeeded. */
        record Found(NonlinearFit fit) implements Outcome {}

        /** The points do not determine the parameters, or the search did not come to its end. */
        record Failed(String reason) implements Outcome {}
    }

    /**
     * Fits a curve.
     *
     * @param curve curve
     * @param x     abscissae, more than there are parameters
     * @param y     ordinates
     * @param s     standard uncertainty of each ordinate, above 0; only their ratios matter
     * @param start where the search starts
     */
    public static Outcome of(Regression curve, double[] x, double[] y, double[] s, double[] start) {
        if (x.length <= start.length || x.length != y.length || x.length != s.length) {
            throw new IllegalArgumentException("a fit needs more points than parameters, as many x as y and s");
        }
        try {
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(COST_TOLERANCE)
                    .withParameterRelativeTolerance(PARAMETER_TOLERANCE)
                    .optimize(new LeastSquaresBuilder()
                            .model(weighted(curve, x, s))
                            .target(quotients(y, s))
                            .start(start)
                            .maxEvaluations(MOST_ROUNDS)
                            .maxIterations(MOST_ROUNDS)
                            .build());
            return found(optimum);
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
            return new Outcome.Failed("the fit does not settle");
        }
    }

    private static Outcome found(LeastSquaresOptimizer.Optimum optimum) {
        double[] residuals = optimum.getResiduals().toArray();
        double chiSquare = Arrays.stream(residuals).map(r -> r * r).sum();
        int freedom = residuals.length - optimum.getPoint().getDimension();
        try {
            double[][] covariance = covariance(optimum.getJacobian(), chiSquare / freedom);
            return new Outcome.Found(new NonlinearFit(optimum.getPoint().toArray(), covariance, chiSquare, freedom));
        } catch (SingularMatrixException e) {
            return new Outcome.Failed("the points do not determine the curve");
        }
    }

    private static MultivariateJacobianFunction weighted(Regression curve, double[] x, double[] s) {
        return point -> {
            double[] p = point.toArray();
            double[] values = new double[x.length];
            double[][] jacobian = new double[x.length][p.length];
            for (int i = 0; i < x.length; i++) {
                values[i] = curve.at(x[i], p, jacobian[i]) / s[i];
                for (int k = 0; k < p.length; k++) {
                    jacobian[i][k] /= s[i];
                }
            }
            return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(jacobian, false));
        };
    }

    private static double[] quotients(double[] y, double[] s) {
        double[] quotients = new double[y.length];
        Arrays.setAll(quotients, i -> y[i] / s[i]);
        return quotients;
    }

    private static double[][] covariance(RealMatrix jacobian, double variance) {
        int n = jacobian.getColumnDimension();
        double[] scale = new double[n];
        RealMatrix scaled = jacobian.copy();
        for (int k = 0; k < n; k++) {
            scale[k] = jacobian.getColumnVector(k).getNorm();
            if (!(scale[k] > 0)) {
                throw new SingularMatrixException();
            }
            scaled.setColumnVector(k, jacobian.getColumnVector(k).mapDivide(scale[k]));
        }
        RealMatrix triangle = new QRDecomposition(scaled).getR().getSubMatrix(0, n - 1, 0, n - 1);
        RealMatrix inverse = new QRDecomposition(triangle, 1e-14).getSolver().getInverse();
        double[][] covariance = inverse.multiply(inverse.transpose()).getData();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                covariance[i][k] *= variance / scale[i] / scale[k];
            }
        }
        return covariance;
    }

    /** Parameter, from 0. */
    public double parameter(int index) {
        return parameters[index];
    }

    /** Standard uncertainty of a parameter. */
    public double standardUncertainty(int index) {
        return Math.sqrt(covariance[index][index]);
    }

    /** Correlation of two parameters, -1 to 1. */
    public double correlation(int i, int k) {
        return covariance[i][k] / Math.sqrt(covariance[i][i] * covariance[k][k]);
    }

    /** Points less parameters. */
    public int degreesOfFreedom() {
        return freedom;
    }

    /** Chi-square over the degrees of freedom. */
    public double reducedChiSquare() {
        return chiSquare / freedom;
    }
}
