package clipwitness.measure.transfer;

import java.util.Arrays;

/**
 * The upper side of a transfer curve averaged over short stretches, at places whose distances from the input's mean ascend by a constant
 * ratio up to near its peak.
 */
final class OutputProfile {
    private static final int PLACES = 96;
    private static final double INNERMOST = 0.01;
    private static final double OUTERMOST = 0.99;

    private final Transfer transfer;
    private final double[] inputs = new double[PLACES];
    private final double[] outputs = new double[PLACES];

    OutputProfile(Transfer transfer) {
        this.transfer = transfer;
        double outermost = transfer.amplitude() * OUTERMOST;
        for (int i = 0; i < PLACES; i++) {
            double input = outermost * Math.pow(INNERMOST, 1 - i / (PLACES - 1.0));
            inputs[i] = input;
            outputs[i] = OuterStretch.averaged(transfer.points(), input);
        }
    }

    Transfer transfer() {
        return transfer;
    }

    int places() {
        return PLACES;
    }

    /** Distance of the input from its mean, V. */
    double input(int place) {
        return inputs[place];
    }

    /** Averaged output, V. */
    double output(int place) {
        return outputs[place];
    }

    /** Averaged output between the places, V. */
    double at(double input) {
        int found = Arrays.binarySearch(inputs, input);
        int i = Math.max(0, Math.min(found >= 0 ? found : -found - 2, PLACES - 2));
        double share = (input - inputs[i]) / (inputs[i + 1] - inputs[i]);
        return outputs[i] + share * (outputs[i + 1] - outputs[i]);
    }
}
