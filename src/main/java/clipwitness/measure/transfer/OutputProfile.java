package clipwitness.measure.transfer;

import java.util.Arrays;

/** The upper side of a transfer curve averaged over short stretches. */
final class OutputProfile {
    private final Transfer transfer;
    private final double[] inputs;
    private final double[] outputs;

    OutputProfile(Transfer transfer) {
        this.transfer = transfer;
        Averages averages = transfer.stretches().averages();
        inputs = averages.inputs();
        outputs = averages.outputs(transfer.points());
    }

    Transfer transfer() {
        return transfer;
    }

    int places() {
        return inputs.length;
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
        int i = Math.max(0, Math.min(found >= 0 ? found : -found - 2, inputs.length - 2));
        double share = (input - inputs[i]) / (inputs[i + 1] - inputs[i]);
        return outputs[i] + share * (outputs[i + 1] - outputs[i]);
    }
}
