package clipwitness.measure.transfer;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * What an output averaged over short stretches holds of each output, at places whose distances from the input's mean ascend by a constant ratio up to near its
 * peak. It depends on the inputs alone, so that all curves over the same inputs share it.
 */
final class Averages {
    private static final int PLACES = 96;
    private static final double INNERMOST = 0.01;
    private static final double OUTERMOST = 0.99;

    private final double[] inputs = new double[PLACES];
    private final int[] firsts = new int[PLACES];
    private final double[][] shares = new double[PLACES][];

    /**
     * Averages.
     *
     * @param points    points of one of the curves
     * @param amplitude of the input, V
     */
    Averages(WeightedPoints points, double amplitude) {
        double outermost = amplitude * OUTERMOST;
        for (int i = 0; i < PLACES; i++) {
            inputs[i] = outermost * Math.pow(INNERMOST, 1 - i / (PLACES - 1.0));
            PolynomialFit line = OuterStretch.averaging(points, inputs[i]);
            firsts[i] = line.first();
            shares[i] = line.valueShares(inputs[i]);
        }
    }

    /** Distances of the places from the input's mean, V. */
    double[] inputs() {
        return inputs.clone();
    }

    /** Averaged outputs of a curve over these inputs, V. */
    double[] outputs(WeightedPoints curve) {
        double[] outputs = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            outputs[i] = curve.sum(shares[i], firsts[i]);
        }
        return outputs;
    }
}
