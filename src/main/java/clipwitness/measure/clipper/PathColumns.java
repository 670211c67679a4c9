package clipwitness.measure.clipper;

import clipwitness.measure.TransferCurve;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** The equations of {@link PathFit} at a drive, each over its standard uncertainty: a v + c + b x = y of every point, a G g + b = K where that is known. */
final class PathColumns {
    /** The ends of the curve lie half a bin beyond its last points. */
    private static final double MARGIN = 1.01;

    private final TransferCurve curve;
    private final double amplitude;
    private final DoubleUnaryOperator clipped;
    private final double openGain;
    private final double noise;
    private final double blur;
    private final boolean withClean;
    private final Optional<PathFit.Unclipped> known;

    /**
     * Equations.
     *
     * @param circuit   circuit of the clipped path
     * @param wave      the wave
     * @param withClean whether there is a clean path
     * @param blur      width over which a value of the curve is a mean, in bins; 1 where nothing but the bins blurs it
     * @param mostDrive highest drive that will be asked for, V
     */
    PathColumns(ClipperCircuit circuit, PathFit.Wave wave, boolean withClean, double blur, double mostDrive) {
        this.blur = blur;
        this.curve = wave.curve();
        this.amplitude = curve.input().maximum();
        double turned = wave.sign() * Math.signum(circuit.smallSignalGain() - circuit.passed());
        DoubleUnaryOperator output =
                circuit.clipped(mostDrive * Math.max(1, -curve.input().minimum() / amplitude) * MARGIN);
        this.clipped = u -> wave.sign() * output.applyAsDouble(turned * u);
        this.openGain = Math.abs(circuit.gainWithoutPair() - circuit.passed());
        this.noise = wave.noise();
        this.withClean = withClean;
        this.known = wave.unclipped();
    }

    /** Peak of the input, V. */
    double amplitude() {
        return amplitude;
    }

    /**
     * The clipped part of a point of the curve, V, at a drive, V: the curve's points are means over bins that lie evenly in phase, so it is the
     * mean of the two places of Gauss's rule in the bin.
     */
    private double clippedOver(int point, double drive) {
        int points = curve.input().size();
        double phase = Math.PI * ((point + 0.5) / points - 0.5);
        double half = blur * Math.PI / (2 * points) / Math.sqrt(3);
        double x = curve.input().at(point);
        double below = x + amplitude * (Math.sin(phase - half) - Math.sin(phase));
        double above = x + amplitude * (Math.sin(phase + half) - Math.sin(phase));
        return (clippedAt(below, drive) + clippedAt(above, drive)) / 2;
    }

    /** The clipped part, V, at an input, V, and a drive, V. */
    double clippedAt(double input, double drive) {
        return clipped.applyAsDouble(drive * input / amplitude);
    }

    /** Fundamental of the clipped part over the input's at a drive, V: the points lie evenly in phase. */
    double fundamental(double drive) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < curve.input().size(); i++) {
            double x = curve.input().at(i);
            product += x * clippedOver(i, drive);
            square += x * x;
        }
        return product / square;
    }

    /** The parameters a, c and, where there is a clean path, b at a drive, V. */
    double[] solve(double drive) {
        RealMatrix rows = rows(drive);
        DecompositionSolver solver = new QRDecomposition(rows).getSolver();
        return solver.isNonSingular() ? solver.solve(target()).toArray() : new double[rows.getColumnDimension()];
    }

    /** Sum of the squared weighted remainders. */
    double chiSquare(double drive, double... parameters) {
        RealVector rest = target().subtract(rows(drive).operate(new ArrayRealVector(parameters, false)));
        return rest.dotProduct(rest);
    }

    /** The same for a straight line, y = b x + c. */
    double chiSquareOfLine() {
        RealMatrix line = new Array2DRowRealMatrix(size(), 2);
        for (int i = 0; i < curve.input().size(); i++) {
            line.setEntry(i, 0, curve.input().at(i) / noise);
            line.setEntry(i, 1, 1 / noise);
        }
        known.ifPresent(k -> line.setEntry(size() - 1, 0, 1 / k.standardUncertainty()));
        RealVector rest = target().subtract(
                        line.operate(new QRDecomposition(line).getSolver().solve(target())));
        return rest.dotProduct(rest);
    }

    /** Number of equations. */
    int size() {
        return curve.input().size() + (known.isPresent() ? 1 : 0);
    }

    RealMatrix rows(double drive) {
        int points = curve.input().size();
        double[][] rows = new double[size()][withClean ? 3 : 2];
        for (int i = 0; i < points; i++) {
            double x = curve.input().at(i);
            rows[i][0] = clippedOver(i, drive) / noise;
            rows[i][1] = 1 / noise;
            if (withClean) {
                rows[i][2] = x / noise;
            }
        }
        if (known.isPresent()) {
            double u = known.get().standardUncertainty();
            rows[points][0] = openGain * drive / amplitude / u;
            if (withClean) {
                rows[points][2] = 1 / u;
            }
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private RealVector target() {
        double[] target = new double[size()];
        for (int i = 0; i < curve.output().size(); i++) {
            target[i] = curve.output().at(i) / noise;
        }
        known.ifPresent(k -> target[target.length - 1] = k.gain() / k.standardUncertainty());
        return new ArrayRealVector(target, false);
    }
}
