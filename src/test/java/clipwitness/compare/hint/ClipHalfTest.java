package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A half against its prediction: 1.5 times the uncertainty and 5 %, in itself and against the state before. */
class ClipHalfTest {
    private static final List<Prediction> AS_PREDICTED = List.of(
            figure(WaveformQuantity.CLIP_UP, 1, 0.01),
            figure(WaveformQuantity.PEAK_UP, 1, 0.01),
            figure(WaveformQuantity.CLIP_DOWN, 1, 0.01),
            figure(WaveformQuantity.PEAK_DOWN, 1, 0.01));

    /** Measured so many volts with this expanded uncertainty where 1 V is predicted exactly. */
    private static Prediction figure(WaveformQuantity quantity, double measured, double expanded) {
        return Predicted.figure(quantity, measured, expanded / 2, 1, 0);
    }

    private static StatePrediction at(String state, Prediction... figures) {
        return Predicted.at(state, 50, figures);
    }

    private static StatePrediction before() {
        return at("before", AS_PREDICTED.toArray(Prediction[]::new));
    }

    private static int upper(StatePrediction now, StatePrediction before) {
        return ClipHalf.UPPER.direction(now, before);
    }

    private static StatePrediction now(double clip, double peak, double expanded) {
        return at(
                "old",
                figure(WaveformQuantity.CLIP_UP, clip, expanded),
                figure(WaveformQuantity.PEAK_UP, peak, expanded));
    }

    @ParameterizedTest
    @CsvSource({
        "1.30, 1.30, 0.1, 1",
        "0.70, 0.70, 0.1, -1",
        "1.16, 1.16, 0.1, 1",
        "1.14, 1.14, 0.1, 0",
        "0.84, 0.84, 0.1, -1",
        "0.86, 0.86, 0.1, 0",
        "1.06, 1.06, 0.01, 1",
        "1.04, 1.04, 0.01, 0",
        "1.30, 1.00, 0.1, 0",
        "1.00, 1.30, 0.1, 0",
        "1.30, 0.70, 0.1, 0"
    })
    void clipLevelAndPeakHaveToAgreeBeyondOneAndAHalfTimesTheUncertaintyAndFivePercent(
            double clip, double peak, double expanded, int direction) {
        assertThat(upper(now(clip, peak, expanded), before())).isEqualTo(direction);
    }

    @Test
    void oneOfTheTwoIsEnoughWhereTheOtherIsNotKnown() {
        assertThat(upper(at("old", figure(WaveformQuantity.CLIP_UP, 1.3, 0.1)), before()))
                .isEqualTo(1);
        assertThat(upper(at("old", figure(WaveformQuantity.PEAK_UP, 0.7, 0.1)), before()))
                .isEqualTo(-1);
        assertThat(upper(at("old"), before())).isZero();
        assertThat(upper(now(1.3, 1.3, 0.1), at("before"))).isZero();
    }

    @Test
    void thePredictionOfBeforeHasToHold() {
        StatePrediction off =
                at("before", figure(WaveformQuantity.CLIP_UP, 1.3, 0.1), figure(WaveformQuantity.PEAK_UP, 1.3, 0.1));
        assertThat(upper(now(1.3, 1.3, 0.1), off)).isZero();
    }

    /** 1.16 against 1.12 before is 3.5 %, 1.16 against 1.0 with U of 10 % and 14 % may be none. */
    @Test
    void theChangeFromBeforeHasToBeKnownToo() {
        StatePrediction almost =
                at("before", figure(WaveformQuantity.CLIP_UP, 1.12, 0.1), figure(WaveformQuantity.PEAK_UP, 1.12, 0.1));
        assertThat(upper(now(1.16, 1.16, 0.1), almost)).isZero();
        StatePrediction vague =
                at("before", figure(WaveformQuantity.CLIP_UP, 1, 0.14), figure(WaveformQuantity.PEAK_UP, 1, 0.14));
        assertThat(upper(now(1.16, 1.16, 0.1), vague)).isZero();
        assertThat(upper(now(1.25, 1.25, 0.1), vague)).isEqualTo(1);
    }

    /** U of 0.2 V of 2 V is 10 %, of 1 V it is 20 %. */
    @Test
    void uncertaintiesAreTakenRelativeToThePrediction() {
        StatePrediction before = at(
                "before",
                Predicted.figure(WaveformQuantity.CLIP_UP, 2, 0.1, 2, 0),
                Predicted.figure(WaveformQuantity.PEAK_UP, 2, 0.1, 2, 0));
        StatePrediction now = at(
                "old",
                Predicted.figure(WaveformQuantity.CLIP_UP, 2.4, 0.1, 2, 0),
                Predicted.figure(WaveformQuantity.PEAK_UP, 2.4, 0.1, 2, 0));
        assertThat(upper(now, before)).isEqualTo(1); // ln 1.2 = 18 % against 14 %
        StatePrediction small = at(
                "old",
                Predicted.figure(WaveformQuantity.CLIP_UP, 0.6, 0.03, 0.5, 0),
                Predicted.figure(WaveformQuantity.PEAK_UP, 0.6, 0.03, 0.5, 0));
        assertThat(upper(small, before)).isEqualTo(1); // 18 % against 15.6 %
        StatePrediction vague = at(
                "old",
                Predicted.figure(WaveformQuantity.CLIP_UP, 0.6, 0.033, 0.5, 0),
                Predicted.figure(WaveformQuantity.PEAK_UP, 0.6, 0.033, 0.5, 0));
        StatePrediction rough = at(
                "before",
                Predicted.figure(WaveformQuantity.CLIP_UP, 2, 0.15, 2, 0),
                Predicted.figure(WaveformQuantity.PEAK_UP, 2, 0.15, 2, 0));
        assertThat(upper(vague, rough)).isZero(); // 18 % against 20 %
    }

    /** Halves that move apart shift the mean; then the asymmetry of the peaks, 12 % and 0 % predicted, stands for the peaks. */
    @Test
    void whereTheHalvesMoveApartTheAsymmetryStandsForThePeaks() {
        assertThat(apart(12, 1.3, 0.7, ClipHalf.UPPER)).isEqualTo(1);
        assertThat(apart(12, 1.3, 0.7, ClipHalf.LOWER)).isEqualTo(-1);
        assertThat(apart(-12, 0.7, 1.3, ClipHalf.UPPER)).isEqualTo(-1);
        assertThat(apart(-12, 0.7, 1.3, ClipHalf.LOWER)).isEqualTo(1);
        assertThat(apart(-12, 1.3, 0.7, ClipHalf.UPPER)).isZero();
        assertThat(apart(12, 1.3, 1.3, ClipHalf.UPPER)).isZero();
        assertThat(apart(12, 1.3, 1, ClipHalf.UPPER)).isZero();
        assertThat(apart(5.9, 1.3, 0.7, ClipHalf.UPPER)).isZero(); // less than 1.5 times 4
        assertThat(apart(6.1, 1.3, 0.7, ClipHalf.UPPER)).isEqualTo(1);
        assertThat(apart(12, 1, 0.7, ClipHalf.UPPER)).isZero();
    }

    private static int apart(double asymmetry, double up, double down, ClipHalf half) {
        StatePrediction now = at(
                "old",
                figure(WaveformQuantity.CLIP_UP, up, 0.1),
                figure(WaveformQuantity.PEAK_UP, 1, 0.1),
                figure(WaveformQuantity.CLIP_DOWN, down, 0.1),
                figure(WaveformQuantity.PEAK_DOWN, 1, 0.1),
                Predicted.figure(WaveformQuantity.ASYMMETRY, asymmetry, 2, 0, 0));
        return half.direction(now, before());
    }

    @Test
    void withoutAnAsymmetryThePeaksHaveToShowIt() {
        StatePrediction now = at(
                "old",
                figure(WaveformQuantity.CLIP_UP, 1.3, 0.1),
                figure(WaveformQuantity.PEAK_UP, 1, 0.1),
                figure(WaveformQuantity.CLIP_DOWN, 0.7, 0.1),
                figure(WaveformQuantity.PEAK_DOWN, 1, 0.1));
        assertThat(upper(now, before())).isZero();
    }

    @Test
    void theClipLevelIsToldAndThePeakWhereThereIsNone() {
        Prediction clip = figure(WaveformQuantity.CLIP_UP, 1.3, 0.1);
        Prediction peak = figure(WaveformQuantity.PEAK_UP, 1.2, 0.1);
        assertThat(ClipHalf.UPPER.told(at("old", peak, clip))).hasValue(clip);
        assertThat(ClipHalf.UPPER.told(at("old", peak))).hasValue(peak);
        assertThat(ClipHalf.UPPER.isPredicted(at("old", peak))).isTrue();
        assertThat(ClipHalf.LOWER.isPredicted(at("old", peak))).isFalse();
        assertThat(ClipHalf.UPPER.level(at("old", peak, clip)))
                .isNotEqualTo(ClipHalf.UPPER.level(at("old", peak)))
                .isNotNull();
        assertThat(ClipHalf.UPPER.half()).isNotNull().isNotEqualTo(ClipHalf.LOWER.half());
        Prediction nothing = figure(WaveformQuantity.CLIP_UP, 0, 0.1);
        assertThat(ClipHalf.UPPER.isPredicted(at("old", nothing))).isFalse();
        Prediction ofNothing = Predicted.figure(WaveformQuantity.CLIP_UP, 1, 0.1, 0, 0);
        assertThat(ClipHalf.UPPER.isPredicted(at("old", ofNothing))).isFalse();
    }
}
