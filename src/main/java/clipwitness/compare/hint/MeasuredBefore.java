package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A state before whose devices the sheet does not name, as what stands beside a prediction: its own figures are the prediction. A half that
 * deviates has to deviate from them too.
 */
final class MeasuredBefore {
    private static final List<WaveformQuantity> FIGURES = List.of(
            WaveformQuantity.CLIP_UP,
            WaveformQuantity.CLIP_DOWN,
            WaveformQuantity.PEAK_UP,
            WaveformQuantity.PEAK_DOWN,
            WaveformQuantity.ASYMMETRY);

    private MeasuredBefore() {}

    /** The state before, its figures predicted by themselves. */
    static StatePrediction of(StateAtCondition before) {
        return against(before, before);
    }

    /** A state's figures, predicted by those of the state before. */
    static StatePrediction against(StateAtCondition before, StateAtCondition now) {
        List<Prediction> figures = FIGURES.stream()
                .map(q -> new Prediction(q.key(), OptionalInt.empty(), before.figure(q), now.figure(q)))
                .toList();
        return new StatePrediction(
                now.state(),
                now.condition(),
                Optional.of(Remark.of(SourceRemark.STATE_BEFORE)),
                figures,
                Optional.empty(),
                true);
    }
}
