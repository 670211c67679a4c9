package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hint as printed. Every prediction has U = 6 mV and every measurement U = 8 mV: their differences 10 mV. */
class LegMismatchTest {
    @TempDir
    private Path folder;

    @Test
    void aHalfThatClipsHigherIsNamedWithItsFigures() throws IOException, InputException {
        assertThat(hints(at(100, 0.912, 0.6, 0.6, 0.6), at(75, 0.85, 0.59, 0.59, 0.59)))
                .containsExactly(mismatch(
                        "New pair: the upper half clips higher than the traced devices make it. Look for an open leg, a "
                                + "reversed device, other devices than the traced ones in this leg, or a trace made while warm.",
                        "at full gain the upper clip level is 912\u00A0mV instead of 600\u00A0mV (± 10\u00A0mV on the"
                                + " difference)"));
    }

    @Test
    void aHalfThatClipsLowerIsNamedToo() throws IOException, InputException {
        assertThat(hints(at(100, 0.6, 0.6, 0.02, 0.6)))
                .containsExactly(mismatch(
                        "New pair: the lower half clips lower than the traced devices make it. Look for a shorted device "
                                + "or switch, other devices than the traced ones in this leg, or a trace made while warm.",
                        "at full gain the lower clip level is 20\u00A0mV instead of 600\u00A0mV (± 10\u00A0mV on the"
                                + " difference)"));
    }

    @Test
    void bothHalvesInOneDirectionAreTheWave() throws IOException, InputException {
        assertThat(hints(at(100, 0.3, 0.6, 0.31, 0.6)))
                .extracting(SaidHint::text)
                .containsExactly(
                        "New pair: the wave clips lower than the traced devices make it. Look for other devices than the "
                                + "traced ones, another source resistance, another gain behind the clipper, or a trace made while "
                                + "warm.");
    }

    @Test
    void halvesInUnlikeDirectionsAreAPairTheOtherWayRound() throws IOException, InputException {
        assertThat(hints(at(100, 0.6, 1.2, 1.2, 0.6)))
                .containsExactly(mismatch(
                        "New pair: the upper half clips lower and the lower half clips higher than the traced devices "
                                + "make it. Look for a reversed pair, or legs named in the other order in the sheet.",
                        "at full gain the upper clip level is 600\u00A0mV instead of 1.20\u00A0V (± 10\u00A0mV on the"
                                + " difference) and the lower clip level is 1.20\u00A0V instead of 600\u00A0mV (± 10\u00A0mV"
                                + " on the difference)"));
    }

    /** 14 mV are within one and a half times 10 mV; 25 mV are not, but within 5 % of 600 mV. */
    @Test
    void smallDifferencesAreNone() throws IOException, InputException {
        assertThat(hints(at(100, 0.114, 0.1, 0.1, 0.1))).isEmpty();
        assertThat(hints(at(100, 0.625, 0.6, 0.6, 0.6))).isEmpty();
    }

    @Test
    void aHalfThatIsOffInUnlikeDirectionsAtTwoSettingsIsNone() throws IOException, InputException {
        assertThat(hints(at(100, 0.9, 0.6, 0.6, 0.6), at(75, 0.3, 0.6, 0.6, 0.6)))
                .isEmpty();
    }

    /** What the state before shows too is the circuit's or the sheet's, not a fault of this state. */
    @Test
    void nothingIsSaidWhereTheStateBeforeShowsTheSame() throws IOException, InputException {
        StatePrediction now = at("new", 100, 0.912, 0.6, 0.6, 0.6);
        assertThat(look(at("before", 100, 0.9, 0.6, 0.6, 0.6), now)).isEmpty();
    }

    /** The prediction of the state before at the same setting counts, not that at another. */
    @Test
    void theStateBeforeIsLookedAtUnderTheSameCondition() throws IOException, InputException {
        assertThat(look(
                        at("before", 75, 0.6, 0.6, 0.6, 0.6),
                        at("before", 100, 0.9, 0.6, 0.6, 0.6),
                        at("new", 100, 0.912, 0.6, 0.6, 0.6)))
                .isEmpty();
        assertThat(look(
                        at("before", 75, 0.9, 0.6, 0.6, 0.6),
                        at("before", 100, 0.6, 0.6, 0.6, 0.6),
                        at("new", 100, 0.912, 0.6, 0.6, 0.6)))
                .hasSize(1);
    }

    /** A loop in the transfer curve moves the output at the input's centre: one clip level up, the other down, the peaks where they were. */
    @Test
    void clipLevelsThatThePeaksDoNotConfirmAreNoEvidence() throws IOException, InputException {
        assertThat(look(withPeaks("before", 0.6, 0.6), withPeaks("new", 0.9, 0.6)))
                .isEmpty();
        assertThat(look(withPeaks("before", 0.6, 0.6), withPeaks("new", 0.9, 0.85)))
                .hasSize(1);
    }

    /** 5 % beside the state before: 0.64 V of 0.6 V are 6.7 % more, beside 0.612 V 4.6 %. Uncertainties of 10 % each are 14 %. */
    @Test
    void aHalfDeviatesFromBeforeAsWell() throws IOException, InputException {
        assertThat(look(at("before", 100, 0.6, 0.6, 0.6, 0.6), at("new", 100, 0.64, 0.6, 0.6, 0.6)))
                .hasSize(1);
        assertThat(look(at("before", 100, 0.612, 0.6, 0.6, 0.6), at("new", 100, 0.64, 0.6, 0.6, 0.6)))
                .isEmpty();
        assertThat(look(at("before", 100, 0.112, 0.1, 0.1, 0.1), at("new", 100, 0.13, 0.1, 0.1, 0.1)))
                .hasSize(1);
        assertThat(look(at("before", 100, 0.113, 0.1, 0.1, 0.1), at("new", 100, 0.13, 0.1, 0.1, 0.1)))
                .isEmpty();
    }

    @Test
    void whereNoClipLevelIsKnownThePeakIsTold() throws IOException, InputException {
        assertThat(look(
                        Predicted.at("before", 100, figure(WaveformQuantity.PEAK_DOWN, 0.6, 0.6)),
                        Predicted.at("new", 100, figure(WaveformQuantity.PEAK_DOWN, 0.9, 0.6))))
                .extracting(SaidHint::evidence)
                .singleElement()
                .asString()
                .startsWith("at full gain the lower peak is 900\u00A0mV instead of 600\u00A0mV");
    }

    /**
     * One half higher and one lower move the mean, so that the peaks stay where they were: there the asymmetry of the peaks stands for them, in the
     * same direction, beyond one and a half times its uncertainty of 2 %.
     */
    @Test
    void halvesInUnlikeDirectionsAreConfirmedByTheAsymmetryOfThePeaks() throws IOException, InputException {
        assertThat(look(leaning("before", 0.6, 0.6, 0), leaning("new", 0.75, 0.45, 3.1)))
                .hasSize(1);
        assertThat(look(leaning("before", 0.6, 0.6, 0), leaning("new", 0.75, 0.45, 2.9)))
                .isEmpty();
        assertThat(look(leaning("before", 0.6, 0.6, 0), leaning("new", 0.75, 0.45, -9)))
                .isEmpty();
        assertThat(look(leaning("before", 0.6, 0.6, 0), leaning("new", 0.45, 0.75, -9)))
                .hasSize(1);
        assertThat(look(leaning("before", 0.6, 0.6, 0), leaning("new", 0.75, 0.6, 9)))
                .isEmpty();
    }

    private static StatePrediction leaning(String state, double up, double down, double asymmetry) {
        return Predicted.at(
                state,
                100,
                figure(WaveformQuantity.CLIP_UP, up, 0.6),
                figure(WaveformQuantity.CLIP_DOWN, down, 0.6),
                figure(WaveformQuantity.PEAK_UP, 0.6, 0.6),
                figure(WaveformQuantity.PEAK_DOWN, 0.6, 0.6),
                Predicted.figure(WaveformQuantity.ASYMMETRY, asymmetry, 0.8, 0, 0.6));
    }

    /** Clip level and peak of the upper half, both predicted to be 0.6 V. */
    private static StatePrediction withPeaks(String state, double clip, double peak) {
        return new StatePrediction(
                state,
                MadeUpCapture.ordinary(state, 100).condition(),
                Optional.of(Remark.of(SourceRemark.SMALL_SIGNAL_GAIN)),
                List.of(
                        figure(WaveformQuantity.CLIP_UP, clip, 0.6),
                        figure(WaveformQuantity.CLIP_DOWN, 0.6, 0.6),
                        figure(WaveformQuantity.PEAK_UP, peak, 0.6),
                        figure(WaveformQuantity.PEAK_DOWN, 0.6, 0.6)),
                Optional.empty(),
                true);
    }

    private static SaidHint mismatch(String text, String evidence) {
        return new SaidHint(
                "leg-mismatch", Optional.of("new"), text, evidence + "; source from the gain for small signals");
    }

    /** Clip levels at a gain: upper measured and predicted, lower measured and predicted, V. */
    private static StatePrediction at(double gain, double up, double upPredicted, double down, double downPredicted) {
        return at("new", gain, up, upPredicted, down, downPredicted);
    }

    private static StatePrediction at(
            String state, double gain, double up, double upPredicted, double down, double downPredicted) {
        return new StatePrediction(
                state,
                MadeUpCapture.ordinary(state, gain).condition(),
                Optional.of(Remark.of(SourceRemark.SMALL_SIGNAL_GAIN)),
                List.of(
                        figure(WaveformQuantity.CLIP_UP, up, upPredicted),
                        figure(WaveformQuantity.CLIP_DOWN, down, downPredicted)),
                Optional.empty(),
                true);
    }

    private static Prediction figure(WaveformQuantity quantity, double measured, double predicted) {
        return new Prediction(
                quantity.key(),
                OptionalInt.empty(),
                Measured.withNoise(predicted, Unit.VOLT, 0.003),
                Measured.withNoise(measured, Unit.VOLT, 0.004));
    }

    /** Beside a state before whose prediction holds. */
    private List<SaidHint> hints(StatePrediction... predictions) throws IOException, InputException {
        List<StatePrediction> all = new ArrayList<>(List.of(predictions));
        for (StatePrediction p : predictions) {
            all.add(at("before", p.condition().gainPercent().orElseThrow(), 0.6, 0.6, 0.6, 0.6));
        }
        return look(all.toArray(StatePrediction[]::new));
    }

    private List<SaidHint> look(StatePrediction... predictions) throws IOException, InputException {
        return Predicted.hints(new LegMismatch(), folder, predictions);
    }
}
