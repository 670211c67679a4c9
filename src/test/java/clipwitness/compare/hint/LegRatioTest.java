package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fault.InputException;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measurement book, section 9: where volts are not predicted, the ratio of the halves tells. All asymmetries are predicted to be 2 %; measured and
 * predicted have U = 1.6 % and 1.2 %, their difference 2 %, where nothing else is said.
 */
class LegRatioTest {
    private static final double PREDICTED = 2;

    @TempDir
    private Path folder;

    private static StatePrediction at(String state, double gain, double ofClip, double ofPeak) {
        return at(state, gain, ofClip, ofPeak, 0.8);
    }

    /** Asymmetries of clip levels and of peaks as measured, percent, and the standard uncertainty of the former. */
    private static StatePrediction at(String state, double gain, double ofClip, double ofPeak, double uncertainty) {
        return Predicted.at(
                state,
                gain,
                Predicted.figure(WaveformQuantity.CLIP_ASYMMETRY, ofClip, uncertainty, PREDICTED, 0.6),
                Predicted.figure(WaveformQuantity.ASYMMETRY, ofPeak, 0.8, PREDICTED, 0.6));
    }

    private List<SaidHint> beside(StatePrediction before, StatePrediction now) throws IOException, InputException {
        return Predicted.hints(new LegMismatch(), folder, before, now);
    }

    private List<SaidHint> hints(StatePrediction now) throws IOException, InputException {
        return beside(at("before", 100, PREDICTED, PREDICTED), now);
    }

    @Test
    void halvesAtAnotherRatioAreNamedWithTheAsymmetryOfTheirClipLevels() throws IOException, InputException {
        assertThat(hints(at("new", 100, 12, 9)))
                .containsExactly(new SaidHint(
                        "leg-mismatch",
                        Optional.of("new"),
                        "New pair: the two halves of the wave clip at another ratio than the traced devices make it. "
                                + "Look for a shorted device or switch, other devices than the traced ones in one leg, or a trace "
                                + "made while warm.",
                        "at full gain the asymmetry of the clip levels is +12.0 % instead of +2.0 % (± 2.0 % on the"
                                + " difference)"));
        assertThat(hints(at("new", 100, -8, -5))).hasSize(1);
    }

    /** Five points of the clip levels; 4 % expanded of the measured and 1.2 % of the predicted are 4.176 %, 6.26 % with the half again. */
    @Test
    void aRatioCountsBeyondFivePointsAndItsUncertainty() throws IOException, InputException {
        assertThat(hints(at("new", 100, 6.9, 9))).isEmpty();
        assertThat(hints(at("new", 100, 7.1, 9))).hasSize(1);
        assertThat(hints(at("new", 100, 8.2, 9, 2))).isEmpty();
        assertThat(hints(at("new", 100, 8.3, 9, 2))).hasSize(1);
    }

    /** One and a half times 2 %: the peaks have to deviate by 3 points, in the same direction. */
    @Test
    void aRatioThatThePeaksDoNotConfirmIsNone() throws IOException, InputException {
        assertThat(hints(at("new", 100, 12, 4.9))).isEmpty();
        assertThat(hints(at("new", 100, 12, 5.1))).hasSize(1);
        assertThat(hints(at("new", 100, 12, -5))).isEmpty();
    }

    @Test
    void aRatioThatTheStateBeforeDoesNotKeepSaysNothing() throws IOException, InputException {
        StatePrediction now = at("new", 100, 12, 9);
        assertThat(beside(at("before", 100, 5.1, PREDICTED), now)).isEmpty();
        assertThat(beside(at("before", 100, PREDICTED, -1.1), now)).isEmpty();
        assertThat(beside(at("before", 100, 4.9, -0.9), now)).hasSize(1);
        assertThat(beside(
                        Predicted.at(
                                "before",
                                100,
                                Predicted.figure(WaveformQuantity.ASYMMETRY, PREDICTED, 0.8, PREDICTED, 0.6)),
                        now))
                .isEmpty();
    }

    @Test
    void aRatioOffInUnlikeDirectionsAtTwoSettingsIsNone() throws IOException, InputException {
        assertThat(Predicted.hints(
                        new LegMismatch(),
                        folder,
                        at("before", 75, PREDICTED, PREDICTED),
                        at("before", 100, PREDICTED, PREDICTED),
                        at("new", 75, -8, -8),
                        at("new", 100, 12, 12)))
                .isEmpty();
    }
}
