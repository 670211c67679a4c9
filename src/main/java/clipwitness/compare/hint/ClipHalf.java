package clipwitness.compare.hint;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Word;
import java.util.Optional;

/**
 * One half of a wave against its prediction. It deviates where clip level and peak both do, in one direction, each as far as it is known:
 * by more than one and a half times the uncertainty of the difference and by more than 5 %, in itself and against the state before,
 * whose prediction has to hold at that half.
 */
enum ClipHalf {
    /** Where the output goes up. */
    UPPER(Word.UPPER_HALF, WaveformQuantity.CLIP_UP, Word.UPPER_CLIP_LEVEL, WaveformQuantity.PEAK_UP, Word.UPPER_PEAK),
    /** Where it goes down. */
    LOWER(
            Word.LOWER_HALF,
            WaveformQuantity.CLIP_DOWN,
            Word.LOWER_CLIP_LEVEL,
            WaveformQuantity.PEAK_DOWN,
            Word.LOWER_PEAK);

    private static final double BEYOND = 1.5;
    private static final double LEAST = 0.05;

    private final Word half;
    private final WaveformQuantity clip;
    private final Word clipWord;
    private final WaveformQuantity peak;
    private final Word peakWord;

    ClipHalf(Word half, WaveformQuantity clip, Word clipWord, WaveformQuantity peak, Word peakWord) {
        this.half = half;
        this.clip = clip;
        this.clipWord = clipWord;
        this.peak = peak;
        this.peakWord = peakWord;
    }

    /** Its name in a sentence. */
    Argument half() {
        return Argument.word(half);
    }

    /** Whether a clip level or a peak is predicted in volts. */
    boolean isPredicted(StatePrediction prediction) {
        return told(prediction).isPresent();
    }

    /** The figure that is told: the clip level, the peak where there is none. */
    Optional<Prediction> told(StatePrediction prediction) {
        return known(prediction, clip).or(() -> known(prediction, peak));
    }

    /** Name of the figure that is told. */
    Argument level(StatePrediction prediction) {
        return Argument.word(known(prediction, clip).isPresent() ? clipWord : peakWord);
    }

    /**
     * 1 where the half clips higher than predicted and than before, -1 where lower, 0 where the figures do not say. The mean of a wave whose halves
     * move in unlike directions moves along, so that its peaks hardly show it: there the asymmetry of the peaks stands for them.
     */
    int direction(StatePrediction prediction, StatePrediction before) {
        int byClip = direction(prediction, before, clip);
        int byPeak = direction(prediction, before, peak);
        if (known(prediction, clip).isEmpty() || known(prediction, peak).isEmpty()) {
            return byClip + byPeak;
        }
        return byClip == byPeak || (byClip != 0 && leans(prediction, before, byClip)) ? byClip : 0;
    }

    private boolean leans(StatePrediction prediction, StatePrediction before, int direction) {
        ClipHalf other = this == UPPER ? LOWER : UPPER;
        Optional<Prediction> asymmetry = prediction
                .figure(WaveformQuantity.ASYMMETRY.key())
                .filter(f -> f.difference().isPresent());
        double more = asymmetry.map(f -> -f.difference().orElseThrow()).orElse(0.0) * (this == UPPER ? 1 : -1);
        return direction(prediction, before, other.clip) == -direction
                && more * direction
                        > BEYOND
                                * asymmetry
                                        .flatMap(f -> f.expandedUncertainty().stream()
                                                .boxed()
                                                .findFirst())
                                        .orElse(0.0);
    }

    private static int direction(StatePrediction prediction, StatePrediction before, WaveformQuantity quantity) {
        Optional<Prediction> now = known(prediction, quantity);
        Optional<Prediction> then = known(before, quantity);
        if (now.isEmpty() || then.isEmpty() || deviates(then.get()) != 0) {
            return 0;
        }
        int direction = deviates(now.get());
        double more = direction * Math.log(ratio(now.get()) / ratio(then.get()));
        double uncertainty = Math.hypot(relativeUncertainty(now.get()), relativeUncertainty(then.get()));
        return more > LEAST && more > uncertainty ? direction : 0;
    }

    private static Optional<Prediction> known(StatePrediction prediction, WaveformQuantity quantity) {
        return prediction
                .figure(quantity.key())
                .filter(f -> f.difference().isPresent() && value(f.predicted()) > 0 && value(f.measured()) > 0);
    }

    private static int deviates(Prediction figure) {
        double higher = -figure.difference().orElseThrow();
        boolean beyond =
                Math.abs(higher) > BEYOND * figure.expandedUncertainty().orElseThrow()
                        && Math.abs(higher) > LEAST * value(figure.predicted());
        return beyond ? (int) Math.signum(higher) : 0;
    }

    private static double ratio(Prediction figure) {
        return value(figure.measured()) / value(figure.predicted());
    }

    private static double relativeUncertainty(Prediction figure) {
        return figure.expandedUncertainty().orElseThrow() / value(figure.predicted());
    }

    private static double value(Measured measured) {
        return measured.value().orElseThrow();
    }
}
