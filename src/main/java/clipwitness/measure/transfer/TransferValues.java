package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.OutputValues;
import clipwitness.measure.wave.TotalHarmonicDistortion;
import clipwitness.reason.Reason;
import java.util.Map;

/** The figures that need an input channel. */
public final class TransferValues {
    private TransferValues() {}

    /**
     * Writes the figures of output against input.
     *
     * @param up        upper extreme of the output
     * @param down      lower extreme of the output
     * @param frequency of the fundamental, Hz
     * @return what was measured of the transfer curve
     */
    public static TransferMeasurement write(
            Map<WaveformQuantity, Measured> values,
            FittedWave output,
            FittedWave input,
            Extreme up,
            Extreme down,
            double frequency) {
        values.put(WaveformQuantity.INPUT_FUNDAMENTAL, OutputValues.fundamental(input));
        values.put(WaveformQuantity.INPUT_THD, TotalHarmonicDistortion.of(input));
        values.put(WaveformQuantity.GAIN, LinearResponse.gain(output, input));
        values.put(WaveformQuantity.PHASE, LinearResponse.phase(output, input));
        TransferMeasurement transfer = new TransferMeasurement(output, input, up, down, frequency);
        values.putAll(transfer.values());
        return transfer;
    }

    /** Refuses all figures that need an input. */
    public static void refuse(Map<WaveformQuantity, Measured> values, Reason reason) {
        for (WaveformQuantity q : WaveformQuantity.values()) {
            if (q.needsInput()) {
                values.put(q, Measured.refused(q.unit(), reason));
            }
        }
    }
}
