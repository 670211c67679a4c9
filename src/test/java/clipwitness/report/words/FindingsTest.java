package clipwitness.report.words;

import static clipwitness.report.words.Sentences.comparison;
import static clipwitness.report.words.Sentences.item;
import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.compare.CaptureResult;
import clipwitness.compare.Decision;
import clipwitness.compare.Intent;
import clipwitness.compare.ItemQuantity;
import clipwitness.compare.JobResults;
import clipwitness.compare.OnsetGain;
import clipwitness.compare.Series;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.report.ExampleJob;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsTest {
    private static final Measured BELOW = Measured.refused(Unit.PERCENT, "below the lowest setting");
    private static final Measured NEVER = Measured.refused(Unit.PERCENT, "not reached");

    private static List<String> findings(JobResults results) {
        return new Findings(Sentences.wording(results), results)
                .all().stream().map(Sentences::plain).toList();
    }

    /** Both states' setting of 3 % distortion, and what the report says of it. */
    private static String onset(Measured from, Measured to) {
        Series before = new Series(
                "received",
                ExampleJob.condition(0).withoutGain(),
                List.of(),
                List.of(new OnsetGain(3, from)),
                List.of());
        Series after = new Series(
                "new", ExampleJob.condition(0).withoutGain(), List.of(), List.of(new OnsetGain(3, to)), List.of());
        return findings(Sentences.with(List.of(before, after))).get(0);
    }

    private static Measured gain(double percent) {
        return ExampleJob.value(percent, Unit.PERCENT, 1.2);
    }

    @Test
    void theGoodExampleHasFiveFindings() {
        assertThat(findings(ExampleJob.good().results()))
                .containsExactly(
                        "“After, new clippers” distorts earlier: 3 % distortion at 22 % of gain instead of 41 %.",
                        "Of the 5.93 dB by which “After, new clippers” is quieter at full gain, none is left when both are set "
                                + "equally loud; the harmonics above the seventh are then 4.3 dB lower, so it is also rounder.",
                        "The two halves of the wave of “After, new clippers” are clipped at different heights: asymmetry "
                                + "of the clip levels −33.1 % at full gain, 0.4 % before. Its even harmonics are 39 dB higher.",
                        "Laid over one another, the waves of “After, original clippers” and “As received” differ by at most "
                                + "1.3 % of their size (null depth −37.9 dB at full gain; limit −32.00 dB).",
                        "The distortion of “After, original clippers” moved by at most 0.21 dB at all five gain settings "
                                + "(limit 1.00 dB).");
    }

    @Test
    void distortionThatBeginsLaterIsLater() {
        assertThat(onset(gain(20), gain(35)))
                .isEqualTo("“After, new clippers” distorts later: 3 % distortion at 35 % of gain instead of 20 %.");
    }

    @Test
    void aDifferenceWithinTheUncertaintyIsNone() {
        assertThat(onset(gain(20), gain(21)))
                .isEqualTo(
                        "“After, new clippers” begins to distort where “As received” does: 3 % distortion at 21 % and 20 % of "
                                + "gain, the same within their uncertainty.");
    }

    @Test
    void distortionBelowTheLowestSettingIsNotGivenAPlace() {
        assertThat(onset(gain(20), BELOW))
                .isEqualTo(
                        "“After, new clippers” is already beyond 3 % distortion at the lowest setting captured; “As received” "
                                + "reaches it at 20 % of gain.");
        assertThat(onset(BELOW, gain(20)))
                .isEqualTo(
                        "“After, new clippers” reaches 3 % distortion at 20 % of gain; “As received” is beyond it already at "
                                + "the lowest setting captured.");
    }

    @Test
    void distortionThatIsNotReachedIsNot() {
        assertThat(onset(gain(20), NEVER))
                .isEqualTo(
                        "“After, new clippers” does not reach 3 % distortion at any setting captured; “As received” does at "
                                + "20 % of gain.");
        assertThat(onset(NEVER, gain(20)))
                .isEqualTo(
                        "“After, new clippers” reaches 3 % distortion at 20 % of gain; “As received” does not at any setting "
                                + "captured.");
    }

    @Test
    void whereNeitherReachesTheMarkNothingIsSaidOfIt() {
        assertThat(onset(NEVER, BELOW)).doesNotContain("3 % distortion");
    }

    @Test
    void aCaptureThatWasRefusedComesFirst() {
        JobResults good = ExampleJob.good().results();
        List<CaptureResult> captures = new ArrayList<>(good.captures());
        CaptureResult first = captures.get(0);
        captures.set(
                0,
                new CaptureResult(
                        first.row(),
                        first.sha256(),
                        first.inputSha256(),
                        first.output(),
                        first.input(),
                        first.samples(),
                        first.sampleRate(),
                        first.channels(),
                        first.evidence(),
                        List.of(new Doubt(DoubtCode.OVER_RANGE, Severity.REFUSAL, "The top of the wave is cut off.")),
                        first.waveform()));
        JobResults results =
                new JobResults(good.job(), good.inputsDigest(), captures, good.series(), good.comparisons(), List.of());
        assertThat(findings(results))
                .hasSize(5)
                .first()
                .isEqualTo("No figures from captures/received-g0.csv: The top of the wave is cut off.");
    }

    @Test
    void aRepairSpeaksOfShapeDistortionAndAsymmetry() {
        JobResults repair = Sentences.with(comparison(
                "original",
                Intent.UNCHANGED,
                Decision.PASS,
                item(ItemQuantity.NULL_DEPTH, 100, -46.2, 0.8, Decision.PASS),
                item(ItemQuantity.THD, 100, -0.112, 0.05, Decision.PASS),
                item(ItemQuantity.ASYMMETRY, 100, 0.3, 0.1, Decision.PASS)));
        assertThat(findings(repair))
                .containsExactly(
                        "Laid over one another, the waves of “After, original clippers” and “As received” differ by at most "
                                + "0.5 % of their size (null depth −46.2 dB at full gain; limit −32.00 dB).",
                        "The distortion of “After, original clippers” moved by at most 0.12 dB at the one gain setting (limit "
                                + "1.00 dB).",
                        "The asymmetry of “After, original clippers” moved by at most 0.30 points at the one gain setting "
                                + "(limit 2.00 points).");
    }
}
