package clipwitness.compare.device;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperPrediction;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The figures of a predicted wave beside the measured ones. */
final class PredictedValues {
    /** In the order of the results; those in volts of the output need the gain behind the clipper. */
    private static final List<WaveformQuantity> FIGURES = List.of(
            WaveformQuantity.CLIP_UP,
            WaveformQuantity.CLIP_DOWN,
            WaveformQuantity.CLIP_ASYMMETRY,
            WaveformQuantity.PEAK_UP,
            WaveformQuantity.PEAK_DOWN,
            WaveformQuantity.ASYMMETRY,
            WaveformQuantity.RMS,
            WaveformQuantity.CREST_FACTOR,
            WaveformQuantity.THD,
            WaveformQuantity.ONSET_UP,
            WaveformQuantity.ONSET_DOWN);

    private static final List<WaveformQuantity> OF_THE_INPUT =
            List.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN);

    private PredictedValues() {}

    /**
     * All that the setting has.
     *
     * @param toScale whether the prediction's volts are those of the captured output
     */
    static List<Prediction> of(StateAtCondition setting, ClipperPrediction prediction, boolean toScale) {
        List<Prediction> figures = new ArrayList<>();
        for (WaveformQuantity q : FIGURES) {
            boolean hasInput = setting.first().values().containsKey(q);
            if (hasInput && (toScale || q.unit() != Unit.VOLT || OF_THE_INPUT.contains(q))) {
                figures.add(new Prediction(q.key(), OptionalInt.empty(), prediction.get(q), setting.figure(q)));
            }
        }
        Map<Integer, Measured> levels = prediction.harmonics();
        for (Harmonic h : setting.first().harmonics()) {
            if (levels.containsKey(h.order())) {
                figures.add(new Prediction("harmonic", OptionalInt.of(h.order()), levels.get(h.order()), h.level()));
            }
        }
        return figures;
    }

    /** Nothing is predicted, and why. */
    static StatePrediction refused(StateAtCondition setting, Reason reason) {
        WaveformQuantity up = WaveformQuantity.CLIP_UP;
        Prediction none =
                new Prediction(up.key(), OptionalInt.empty(), Measured.refused(up.unit(), reason), setting.figure(up));
        return new StatePrediction(
                setting.state(), setting.condition(), Optional.empty(), List.of(none), Optional.empty(), false);
    }
}
