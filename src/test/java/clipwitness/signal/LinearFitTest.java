package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The fit of all harmonics against least squares on the written-out design matrix, a row a sample, by QR decomposition. The frequency's column is the derivative
 * of the fitted wave to the phase that the record spans.
 */
class LinearFitTest {
    private static final int SIZE = 157;
    private static final int ORDERS = 3;
    private static final double PER_SAMPLE = 0.0371;

    /** A wave of four harmonics that the fit of three cannot follow, with noise and an offset. */
    private static double[] record() {
        Random random = new Random(5);
        double[] values = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            double w = 2 * Math.PI * 0.0368 * (i - 78);
            values[i] = 2.5
                    + Math.cos(w)
                    + 0.4 * Math.sin(w)
                    - 0.3 * Math.cos(2 * w)
                    + 0.2 * Math.sin(3 * w + 1)
                    + 0.1 * Math.cos(4 * w)
                    + 0.05 * random.nextGaussian();
        }
        return values;
    }

    private static double[] withGaps() {
        double[] values = record();
        values[0] = Double.NaN;
        values[40] = Double.NaN;
        values[41] = Double.NaN;
        values[156] = Double.NaN;
        return values;
    }

    private static final class Written {
        final RealMatrix design;
        final RealVector target;
        final RealVector solution;
        final RealVector moved;

        Written(double... values) {
            int count = Samples.of(values).size() - Samples.of(values).gaps();
            double[][] rows = new double[count][2 * ORDERS + 1];
            double[] known = new double[count];
            double[] timeOfRow = new double[count];
            int row = 0;
            for (int i = 0; i < values.length; i++) {
                if (!Double.isNaN(values[i])) {
                    double time = i - (values.length - 1) / 2.0;
                    rows[row][0] = 1;
                    for (int k = 1; k <= ORDERS; k++) {
                        rows[row][2 * k - 1] = Math.cos(2 * Math.PI * PER_SAMPLE * k * time);
                        rows[row][2 * k] = Math.sin(2 * Math.PI * PER_SAMPLE * k * time);
                    }
                    timeOfRow[row] = time / values.length;
                    known[row++] = values[i];
                }
            }
            design = new Array2DRowRealMatrix(rows, false);
            target = new ArrayRealVector(known, false);
            solution = new QRDecomposition(design).getSolver().solve(target);
            moved = new ArrayRealVector(count);
            for (int r = 0; r < count; r++) {
                double sum = 0;
                for (int k = 1; k <= ORDERS; k++) {
                    sum += k
                            * (solution.getEntry(2 * k) * rows[r][2 * k - 1]
                                    - solution.getEntry(2 * k - 1) * rows[r][2 * k]);
                }
                moved.setEntry(r, sum * timeOfRow[r]);
            }
        }

        RealVector residual() {
            return target.subtract(design.operate(solution));
        }

        /** The frequency's column with what the harmonics explain of it taken off. */
        RealVector alone() {
            RealVector pull = new QRDecomposition(design).getSolver().solve(moved);
            return moved.subtract(design.operate(pull));
        }

        /** Covariances of all parameters, the frequency's last. */
        RealMatrix covariance() {
            RealMatrix all = new Array2DRowRealMatrix(design.getRowDimension(), 2 * ORDERS + 2);
            all.setSubMatrix(design.getData(), 0, 0);
            all.setColumnVector(2 * ORDERS + 1, moved);
            RealMatrix normal = all.transpose().multiply(all);
            return new QRDecomposition(normal).getSolver().getInverse();
        }
    }

    private static void agree(double... values) {
        Written written = new Written(values);
        LinearFit fit = new LinearFit(FitSamples.of(Samples.of(values)), PER_SAMPLE, ORDERS);
        double[] coefficients = fit.coefficients();
        assertThat(coefficients).hasSize(2 * ORDERS + 1);
        for (int i = 0; i < coefficients.length; i++) {
            assertThat(coefficients[i]).isCloseTo(written.solution.getEntry(i), within(1e-9));
        }
        RealVector residual = written.residual();
        assertThat(fit.residualEnergy()).isCloseTo(residual.dotProduct(residual), within(1e-9));
        assertThat(fit.slope()).isCloseTo(written.moved.dotProduct(residual), within(1e-8));
        RealVector alone = written.alone();
        assertThat(fit.curvature()).isCloseTo(alone.dotProduct(alone), within(1e-8));
        RealMatrix covariance = written.covariance();
        double[][] own = fit.covariance(1 / alone.dotProduct(alone), ORDERS);
        for (int i = 0; i < own.length; i++) {
            for (int j = 0; j < own.length; j++) {
                assertThat(own[i][j]).isCloseTo(covariance.getEntry(i, j), within(1e-9));
            }
        }
        assertThat(fit.covariance(0, 1)).hasDimensions(3, 3);
    }

    @Test
    void theFitIsThatOfTheWrittenOutMatrix() {
        agree(record());
    }

    @Test
    void aRecordWithGapsIsFittedBySamplesThatAreThere() {
        agree(withGaps());
    }
}
