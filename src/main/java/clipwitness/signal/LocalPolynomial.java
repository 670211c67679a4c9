package clipwitness.signal;

import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Frequency response at one frequency by the local polynomial method: over some neighbouring bins the output is H X + T plus noise, H and the transient T
 * each a polynomial of second order in frequency, fitted by least squares. A window is not needed, for T holds what leaks from the ends of the record, and
 * a response that bends or turns over the bins causes no bias (R. Pintelon, J. Schoukens, System Identification: A Frequency Domain Approach, 2nd ed.,
 * Wiley 2012, chapter 7).
 *
 * @param real        real part of the response
 * @param imaginary   imaginary part of it
 * @param uncertainty standard uncertainty of each part
 * @param freedom     degrees of freedom of that uncertainty
 * @param coherence   share of the output's power that the input explains, 0 to 1
 */
public record LocalPolynomial(double real, double imaginary, double uncertainty, double freedom, double coherence) {
    private static final int ORDER = 2;
    private static final int COEFFICIENTS = 2 * (ORDER + 1);

    /** Bins that leave seven for the noise. */
    public static final int FEWEST_BINS = 13;

    private static final double SINGULAR = 1e-10;

    /**
     * The response at a frequency.
     *
     * @param input  spectrum of the input
     * @param output spectrum of the output
     * @param from   first bin
     * @param to     last bin; at least {@link #FEWEST_BINS} in all
     * @param centre the frequency in bins
     * @return empty where the input does not part H from T
     */
    public static Optional<LocalPolynomial> at(
            DiscreteSpectrum input, DiscreteSpectrum output, int from, int to, double centre) {
        int bins = to - from + 1;
        double scale = Math.sqrt(power(input, from, to) / bins);
        double power = power(output, from, to);
        if (!(scale > 0) || !(power > 0)) {
            return Optional.empty();
        }
        RealMatrix rows = new Array2DRowRealMatrix(2 * bins, 2 * COEFFICIENTS);
        RealVector values = new ArrayRealVector(2 * bins);
        for (int i = 0; i < bins; i++) {
            double d = 2 * (from + i - centre) / (bins - 1);
            for (int j = 0; j <= ORDER; j++) {
                double weight = Math.pow(d, j);
                set(rows, i, j, input.real(from + i) / scale * weight, input.imaginary(from + i) / scale * weight);
                set(rows, i, ORDER + 1 + j, weight, 0);
            }
            values.setEntry(2 * i, output.real(from + i));
            values.setEntry(2 * i + 1, output.imaginary(from + i));
        }
        return solved(rows, values, scale, power);
    }

    /** A complex coefficient of a complex row, as two real rows and columns. */
    private static void set(RealMatrix rows, int row, int column, double re, double im) {
        rows.setEntry(2 * row, 2 * column, re);
        rows.setEntry(2 * row, 2 * column + 1, -im);
        rows.setEntry(2 * row + 1, 2 * column, im);
        rows.setEntry(2 * row + 1, 2 * column + 1, re);
    }

    private static Optional<LocalPolynomial> solved(RealMatrix rows, RealVector values, double scale, double power) {
        QRDecomposition qr = new QRDecomposition(rows, SINGULAR);
        DecompositionSolver solver = qr.getSolver();
        if (!solver.isNonSingular()) {
            return Optional.empty();
        }
        RealVector found = solver.solve(values);
        double freedom = rows.getRowDimension() - rows.getColumnDimension();
        RealVector rest = values.subtract(rows.operate(found));
        double variance = rest.dotProduct(rest) / freedom;
        double share = variance * rows.getRowDimension() / power;
        return Optional.of(new LocalPolynomial(
                found.getEntry(0) / scale,
                found.getEntry(1) / scale,
                Math.sqrt(variance * firstOfInverse(qr)) / scale,
                freedom,
                Math.max(0, 1 - share)));
    }

    /** First entry of (A' A)^-1, the squared length of the first row of R^-1. */
    private static double firstOfInverse(QRDecomposition qr) {
        int n = 2 * COEFFICIENTS;
        RealMatrix r = qr.getR().getSubMatrix(0, n - 1, 0, n - 1);
        RealVector unit = new ArrayRealVector(n);
        unit.setEntry(0, 1);
        RealVector row = solveTransposed(r, unit);
        return row.dotProduct(row);
    }

    /** Solves R' y = b for an upper triangular R. */
    private static RealVector solveTransposed(RealMatrix r, RealVector b) {
        RealVector y = new ArrayRealVector(b.getDimension());
        for (int i = 0; i < b.getDimension(); i++) {
            double sum = b.getEntry(i);
            for (int j = 0; j < i; j++) {
                sum -= r.getEntry(j, i) * y.getEntry(j);
            }
            y.setEntry(i, sum / r.getEntry(i, i));
        }
        return y;
    }

    private static double power(DiscreteSpectrum spectrum, int from, int to) {
        double sum = 0;
        for (int k = from; k <= to; k++) {
            sum += spectrum.power(k);
        }
        return sum;
    }

    /** Magnitude of the response. */
    public double magnitude() {
        return Math.hypot(real, imaginary);
    }

    /** Phase of the response, radians, -pi to pi. */
    public double phase() {
        return Math.atan2(imaginary, real);
    }
}
