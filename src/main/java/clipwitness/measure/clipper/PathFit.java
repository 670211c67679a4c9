package clipwitness.measure.clipper;

import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.quantity.Unit;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * A wave as the sum of a clipped and a clean path: y = a v(G x) + b x + c, v the clipped part of a circuit's output, x the input. At a
 * drive, which is the peak of G x, the rest is a linear fit by least squares; the drive is looked for over its logarithm. A level without
 * clippers is one more equation, a G g + b = K, g the gain of the clipped part without the pair. Covariance: (J'J)^-1, times the reduced chi-square
 * where that exceeds 1.
 */
public final class PathFit {
    /** Drives, V, between which the search goes: below, no junction bends; above, no clipping stage reaches. */
    private static final double LEAST_DRIVE = 0.01;

    private static final double MOST_DRIVE = 1000;

    /** Steps by which slopes are found: of the drive a ratio, of the parameters in standard uncertainties. */
    private static final double STEP = 0.005;

    private static final int PLACES = 40;
    private static final double BEYOND_DOUBT = 25;
    private static final double UNKNOWN = 1e9;

    /** Columns as {@link PathColumns} has them, the logarithm of the drive last. */
    private static final int CLIPPED = 0;

    private static final int CLEAN = 2;

    private final PathColumns columns;
    private final boolean withClean;
    private final double drive;
    private final double[] parameters;
    private final double chiSquare;

    private PathFit(PathColumns columns, boolean withClean) {
        this.columns = columns;
        this.withClean = withClean;
        this.drive = LogSearch.least(d -> columns.chiSquare(d, columns.solve(d)), LEAST_DRIVE, MOST_DRIVE / (1 + STEP));
        this.parameters = columns.solve(drive);
        this.chiSquare = columns.chiSquare(drive, parameters);
    }

    /**
     * A level of the output without clippers.
     *
     * @param gain                captured peak over the input's, a ratio, above 0
     * @param standardUncertainty of it, above 0
     */
    public record Unclipped(double gain, double standardUncertainty) {}

    /**
     * The wave that is to be explained.
     *
     * @param curve     output over input, the two branches averaged, the unit's inversion taken out of the input
     * @param noise     standard uncertainty of one value of the output, V, above 0
     * @param sign      1, or -1 where the unit inverts behind the clipper
     * @param unclipped the level without clippers at the same setting, where there is one
     */
    public record Wave(TransferCurve curve, double noise, int sign, Optional<Unclipped> unclipped) {
        /** Checks the noise. */
        public Wave {
            Objects.requireNonNull(curve, "curve");
            if (!(noise > 0)) {
                throw new IllegalArgumentException("noise must be above 0 V but is " + noise);
            }
        }
    }

    /** The fit with a clean path beside the clipped one. */
    public static PathFit withCleanPath(ClipperCircuit circuit, Wave wave) {
        return withCleanPath(circuit, wave, 1);
    }

    /** The same to a curve whose values are means over so many of its bins. */
    static PathFit withCleanPath(ClipperCircuit circuit, Wave wave, double blur) {
        return new PathFit(new PathColumns(circuit, wave, true, blur, MOST_DRIVE), true);
    }

    /** The fit of a clipped path alone. */
    public static PathFit withoutCleanPath(ClipperCircuit circuit, Wave wave) {
        return new PathFit(new PathColumns(circuit, wave, false, 1, MOST_DRIVE), false);
    }

    /** The fitted output, V, over the input, V. */
    DoubleUnaryOperator wave() {
        return x -> at(x, drive, parameters);
    }

    private double at(double x, double atDrive, double... p) {
        return p[CLIPPED] * columns.clippedAt(x, atDrive) + p[1] + (withClean ? p[CLEAN] * x : 0);
    }

    /** Root mean square of what the fit leaves, over the noise of one value. */
    public double remainderOverNoise() {
        return Math.sqrt(chiSquare / columns.size());
    }

    /** Whether the wave is bent beyond doubt: a straight line leaves a chi-square that is higher by more than 25 times its scatter. */
    boolean isBent() {
        return columns.chiSquareOfLine() - chiSquare > BEYOND_DOUBT * scatter();
    }

    /** G, the gain between input and clipper, a ratio. */
    Measured.Value gain() {
        double gain = drive / columns.amplitude();
        return Measured.withNoise(gain, Unit.ONE, gain * uncertainty(parameters.length));
    }

    /** a, the captured output over the clipped part. */
    Measured.Value clipped() {
        return Measured.withNoise(parameters[CLIPPED], Unit.ONE, uncertainty(CLIPPED));
    }

    /** b, the captured output of the clean path over the input. */
    Measured.Value clean() {
        return withClean
                ? Measured.withNoise(parameters[CLEAN], Unit.ONE, uncertainty(CLEAN))
                : Measured.of(0, Unit.ONE);
    }

    /** Slope of the clipped part at the input's peaks, the steeper end, over its slope at the centre, a ratio. */
    double slopeAtEnds() {
        double centre = slope(0);
        return Math.max(slope(columns.amplitude() * (1 - STEP)), slope(-columns.amplitude() * (1 - STEP))) / centre;
    }

    private double slope(double x) {
        double h = STEP * Math.min(columns.amplitude(), columns.amplitude() / drive);
        return (columns.clippedAt(x + h, drive) - columns.clippedAt(x - h, drive)) / (2 * h);
    }

    /**
     * The share of the output's fundamental that comes by the clean path, b / (b + a k), k the fundamental of the clipped part over the
     * input's: 0 without clean path, 1 where nothing comes through the clipper.
     * Where drives far from the best explain the wave as well, by a chi-square that is higher by no more than 4 times its scatter, all of their
     * shares lie within the expanded uncertainty.
     */
    Measured.Value cleanShare() {
        double share = share(drive, parameters);
        double uncertainty = Math.sqrt(shareVariance(share, covariance()));
        return Measured.withNoise(share, Unit.ONE, bounded(Math.max(uncertainty, farthest(share) / 2)));
    }

    private double farthest(double share) {
        double most = chiSquare + 4 * scatter();
        double farthest = 0;
        for (int i = 0; i <= PLACES; i++) {
            double other = LEAST_DRIVE * Math.pow(MOST_DRIVE / LEAST_DRIVE / (1 + STEP), (double) i / PLACES);
            double[] p = columns.solve(other);
            if (columns.chiSquare(other, p) <= most) {
                farthest = Math.max(farthest, Math.abs(share(other, p) - share));
            }
        }
        return farthest;
    }

    /** Reduced chi-square, 1 at least. */
    private double scatter() {
        return Math.max(1, chiSquare / Math.max(1, columns.size() - parameters.length - 1));
    }

    /** An uncertainty without bounds is a very large one. */
    private static double bounded(double uncertainty) {
        return uncertainty < UNKNOWN ? uncertainty : UNKNOWN; // NaN lands here too
    }

    private double shareVariance(double share, double[][] covariance) {
        double[] slopes = new double[covariance.length];
        for (int i = 0; i < slopes.length; i++) {
            double step = STEP * Math.sqrt(covariance[i][i]);
            double[] other = parameters.clone();
            if (i < other.length) {
                other[i] += step;
            }
            double atDrive = i < other.length ? drive : drive * Math.exp(step);
            slopes[i] = step > 0 ? (share(atDrive, other) - share) / step : 0;
        }
        double variance = 0;
        for (int i = 0; i < slopes.length; i++) {
            for (int k = 0; k < slopes.length; k++) {
                variance += slopes[i] * slopes[k] * covariance[i][k];
            }
        }
        return Math.max(0, variance);
    }

    private double share(double atDrive, double... p) {
        double clean = withClean ? p[CLEAN] : 0;
        return clean / (clean + p[CLIPPED] * columns.fundamental(atDrive));
    }

    private double uncertainty(int parameter) {
        return bounded(Math.sqrt(covariance()[parameter][parameter]));
    }

    /** Of the linear parameters and the logarithm of the drive; where the wave does not tell one of them, very large. */
    private double[][] covariance() {
        RealMatrix linear = columns.rows(drive);
        int last = linear.getColumnDimension();
        RealMatrix jacobian = new Array2DRowRealMatrix(linear.getRowDimension(), last + 1);
        jacobian.setSubMatrix(linear.getData(), 0, 0);
        jacobian.setColumnVector(
                last,
                columns.rows(drive * (1 + STEP))
                        .subtract(columns.rows(drive / (1 + STEP)))
                        .getColumnVector(CLIPPED)
                        .mapMultiply(parameters[CLIPPED] / (2 * Math.log1p(STEP))));
        return new SingularValueDecomposition(jacobian)
                .getCovariance(0)
                .scalarMultiply(scatter())
                .getData();
    }
}
