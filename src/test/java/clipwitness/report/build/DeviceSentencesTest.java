package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fixture.ExampleDevices;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The sentences as printed. Predictions have U = 6 mV and measurements 8 mV in the upper half, 30 mV and 40 mV in the lower one. */
class DeviceSentencesTest {
    private static final DeviceSentences SENTENCES = new DeviceSentences(ExampleDevices.wording());

    @Test
    void clipLevelsThatAgreeAreSaidWithTheUncertaintyOfEachHalf() {
        assertThat(said(at("original", 100, 0.6, 0.605, 0.7, 0.72)))
                .containsExactly(
                        "Original clippers: at full gain the traced devices predict clip levels of 605 mV up and 720 "
                                + "mV down (source from the gain for small signals). Measured: 600 mV and 700 mV, alike within "
                                + "± 10 mV and ± 50 mV, the uncertainties of the differences.");
        assertThat(summary(at("original", 100, 0.6, 0.605, 0.7, 0.72)))
                .isEqualTo("Original clippers: at the highest gain the clip levels are as the "
                        + "traced devices predict, within the uncertainty of the difference.");
    }

    @Test
    void theHalfThatDiffersIsNamed() {
        assertThat(said(at("original", 100, 0.6, 0.65, 0.7, 0.72)))
                .containsExactly(
                        "Original clippers: at full gain the traced devices predict clip levels of 650 mV up and 720 "
                                + "mV down (source from the gain for small signals). Measured: 600 mV and 700 mV. The upper one "
                                + "differs by more than the uncertainty of the difference, ± 10 mV. The lower one is alike within ± "
                                + "50 mV.");
        assertThat(said(at("original", 100, 0.6, 0.605, 0.7, 0.9)))
                .containsExactly("Original clippers: at full gain the traced devices predict clip levels of 605 mV up "
                        + "and 900 mV down (source from the gain for small signals). Measured: 600 mV and 700 mV. The upper "
                        + "one is alike within the uncertainty of the difference, ± 10 mV. The lower one differs by more "
                        + "than ± 50 mV.");
    }

    @Test
    void bothHalvesMayDiffer() {
        assertThat(said(at("original", 100, 0.6, 0.65, 0.7, 0.9)))
                .containsExactly(
                        "Original clippers: at full gain the traced devices predict clip levels of 650 mV up and 900 "
                                + "mV down (source from the gain for small signals). Measured: 600 mV and 700 mV. Both differ by "
                                + "more than the uncertainties of the differences, ± 10 mV and ± 50 mV.");
    }

    /** The setting below, where they do not agree, is not spoken of. */
    @Test
    void eachStateIsSpokenOfAtItsHighestGainAndByItself() {
        StatePrediction[] predictions = {
            at("received", 50, 0.6, 0.9, 0.7, 0.9),
            at("received", 100, 0.6, 0.605, 0.7, 0.72),
            at("original", 100, 0.6, 0.65, 0.7, 0.72)
        };
        assertThat(said(predictions)).hasSize(2);
        assertThat(summary(predictions))
                .isEqualTo("As received: at the highest gain the clip levels are as the traced "
                        + "devices predict, within the uncertainty of the difference. Original clippers: at the highest gain "
                        + "the clip levels are not as the traced devices predict. One or both "
                        + "differ by more than the uncertainty of the difference.");
    }

    @Test
    void withoutAPredictionTheReasonIsSaidAndNothingIsClaimed() {
        StatePrediction none = new StatePrediction(
                "original",
                ExampleJob.condition(100),
                Optional.empty(),
                List.of(new Prediction(
                        "clipUp",
                        OptionalInt.empty(),
                        Measured.refused(Unit.VOLT, Reason.of(DeviceReason.NOT_TRACED, Argument.name("D2"))),
                        ExampleJob.value(0.6, Unit.VOLT, 0.01))),
                Optional.empty(),
                false);
        assertThat(said(none)).containsExactly("Nothing is predicted for original clippers: D2 was not traced.");
        assertThat(summary(none)).isEmpty();
    }

    @Test
    void whatIsNoJunctionIsSaidWithItsReason() {
        assertThat(SENTENCES.of(ExampleDevices.of(List.of(ExampleDevices.resistor("R1")), List.of())))
                .map(ExampleDevices::plain)
                .containsExactly(
                        "R1 shows no junction: the current is proportional to the voltage: a resistor of 470 Ω, no junction.");
    }

    private static List<String> said(StatePrediction... predictions) {
        return SENTENCES.of(ExampleDevices.of(List.of(), List.of(predictions))).stream()
                .map(ExampleDevices::plain)
                .toList();
    }

    private static String summary(StatePrediction... predictions) {
        return ExampleDevices.plain(SENTENCES.summary(ExampleDevices.of(List.of(), List.of(predictions))));
    }

    private static StatePrediction at(
            String state, double gain, double up, double upPredicted, double down, double downPredicted) {
        return new StatePrediction(
                state,
                ExampleJob.condition(gain),
                Optional.of(Remark.of(SourceRemark.SMALL_SIGNAL_GAIN)),
                List.of(
                        new Prediction(
                                WaveformQuantity.CLIP_UP.key(),
                                OptionalInt.empty(),
                                ExampleJob.value(upPredicted, Unit.VOLT, 0.006),
                                ExampleJob.value(up, Unit.VOLT, 0.008)),
                        new Prediction(
                                WaveformQuantity.CLIP_DOWN.key(),
                                OptionalInt.empty(),
                                ExampleJob.value(downPredicted, Unit.VOLT, 0.03),
                                ExampleJob.value(down, Unit.VOLT, 0.04))),
                Optional.empty(),
                true);
    }
}
