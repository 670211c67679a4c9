package clipwitness.report.words;

import static clipwitness.report.words.Sentences.comparison;
import static clipwitness.report.words.Sentences.item;
import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FindingsTest {
    private static final Measured BELOW = Measured.refused(Unit.PERCENT, FigureReason.BELOW_LOWEST_SETTING);
    private static final Doubt STIMULUS =
            Doubt.of(Severity.WARNING, DoubtReason.STIMULUS_CHANGED_SHEET, Argument.count(120), Argument.count(100));

    private static final String EQUAL =
            " The same distortion: new clippers at 31.0 ± 1.5 % of gain, as received at 50 % gain.";
    /** How the answer begins, the first of all findings. */
    private static final String ANSWER = "Quieter, harsher. New clippers: 5.9 dB quieter";

    private static final Measured NEVER = Measured.refused(Unit.PERCENT, FigureReason.NOT_REACHED);

    private static List<String> findings(JobResults results) {
        return Sentences.told(results);
    }

    /** What is found of an unchanged state that passes with these items. */
    private static List<String> findingsOf(Item... items) {
        return findings(Sentences.with(comparison("original", Intent.UNCHANGED, Decision.PASS, items)));
    }

    /** Both states' setting of 3 % distortion, and what the report says of it. */
    private static String onset(Measured from, Measured to) {
        return onset(from, to, List.of());
    }

    private static String onset(Measured from, Measured to, List<SeriesPoint> points) {
        return findings(Sentences.with(List.of(series("received", points, from), series("new", points, to)))).stream()
                .filter(f -> !f.startsWith(ANSWER))
                .findFirst()
                .orElseThrow();
    }

    private static Series series(String state, List<SeriesPoint> points, Measured gain) {
        return new Series(
                state, ExampleJob.condition(0).withoutGain(), points, List.of(new OnsetGain(3, gain)), List.of());
    }

    /** Settings at which a half of the wave begins to clip at the same input in both states. */
    private static List<SeriesPoint> alike() {
        return ExampleJob.GAINS.stream()
                .map(gain -> new SeriesPoint(
                        gain, Map.of(WaveformQuantity.ONSET_UP, ExampleJob.value(0.044, Unit.VOLT, 0.001))))
                .toList();
    }

    private static Measured gain(double percent) {
        return ExampleJob.value(percent, Unit.PERCENT, 1.2);
    }

    @Test
    void theGoodExampleHasFiveFindings() {
        assertThat(findings(ExampleJob.good().results()))
                .containsExactly(
                        "Quieter, harsher. New clippers: 5.9 dB quieter than as received at full gain. Turned up to the "
                                + "same level, 15.8 % of the wave still differs. Its distortion is 3.1 dB higher (9.1 dB at 0 % "
                                + "gain). Against original clippers the answer is the same.",
                        "Distorts earlier. New clippers: 3 % distortion at 22 % of gain instead of 41 %. The same "
                                + "distortion: new clippers at 31.0 ± 1.5 % of gain, as received at 50 % gain.",
                        "Less edge. New clippers, set equally loud at full gain: harmonics above the seventh (the "
                                + "edge) 4.3 dB lower. But harmonics 8, 10 and 12 of these are up to 6.0 dB higher.",
                        "Clips unevenly. New clippers: its two halves are clipped at different heights. Asymmetry of the "
                                + "clip levels: −33.1 % at full gain (below 0.8 % before). Its even harmonics are 39 dB higher.",
                        "The same wave. Original clippers and as received: laid over one another, their waves differ by "
                                + "at most 1.5 % at all five gain settings (limit 2.5 %).");
    }

    @Test
    void distortionThatBeginsLaterIsLater() {
        assertThat(onset(gain(20), gain(35)))
                .isEqualTo("Distorts later. New clippers: 3 % distortion at 35 % of gain instead of 20 %." + EQUAL);
    }

    @Test
    void aDifferenceWithinTheUncertaintyIsNone() {
        assertThat(onset(gain(20), gain(21), alike()))
                .isEqualTo(
                        "Distorts where it did. New clippers and as received reach 3 % distortion at 21 % and 20 % of gain, "
                                + "the same within their uncertainty."
                                + EQUAL);
        assertThat(onset(gain(15.1), gain(15.4), alike()))
                .isEqualTo(
                        "Distorts where it did. New clippers and as received both reach 3 % distortion at 15 % of gain."
                                + EQUAL);
    }

    /** At a quarter of the gain the halves begin four times as far out as at full gain: 4 * 21 mV = 84 mV, 4 * 44 mV = 176 mV. */
    @Test
    void aHalfThatBeginsElsewhereIsSaidThoughTheDistortionIsTheSame() {
        assertThat(onset(gain(20), gain(21)))
                .isEqualTo(
                        "One half clips elsewhere. New clippers: 3 % distortion where as received has it (at 21 % and 20 % of "
                                + "gain). But at 25 % gain the upper half of its wave begins to clip earlier, at 84 mV of input "
                                + "instead of 180 mV." + EQUAL);
    }

    /** 7.9 ± 7.8 and 17.4 ± 7.0 are the same within their uncertainty, and may as well lie 20 points apart. */
    @Test
    void placesThatAreHardlyKnownAreNotSaidToBeOne() {
        assertThat(onset(ExampleJob.value(7.9, Unit.PERCENT, 7.8), ExampleJob.value(17.4, Unit.PERCENT, 7.0)))
                .isEqualTo(
                        "One half clips elsewhere. New clippers: at 25 % gain the upper half of its wave begins to clip earlier, "
                                + "at 84 mV of input instead of 180 mV. Where it reaches 3 % distortion is known too roughly "
                                + "to compare with as received." + EQUAL);
    }

    @Test
    void distortionBelowTheLowestSettingIsNotGivenAPlace() {
        assertThat(onset(gain(20), BELOW))
                .isEqualTo(
                        "Distorts from the start. New clippers: beyond 3 % distortion already at the lowest setting captured; "
                                + "as received: from 20 % of gain on." + EQUAL);
        assertThat(onset(BELOW, gain(20)))
                .isEqualTo(
                        "Distorts later. New clippers: 3 % distortion from 20 % of gain on; as received: beyond it already at "
                                + "the lowest setting captured." + EQUAL);
    }

    @Test
    void distortionThatIsNotReachedIsNot() {
        assertThat(onset(gain(20), NEVER))
                .isEqualTo(
                        "Hardly distorts now. New clippers: less than 3 % distortion at every setting captured; as received: "
                                + "more from 20 % of gain on." + EQUAL);
        assertThat(onset(NEVER, gain(20)))
                .isEqualTo(
                        "Distorts now. New clippers: 3 % distortion from 20 % of gain on; as received: less at every "
                                + "setting captured." + EQUAL);
    }

    @Test
    void whereNeitherReachesTheMarkNothingIsSaidOfIt() {
        assertThat(onset(NEVER, BELOW)).doesNotContain("3 % distortion");
    }

    @Test
    void aCaptureThatWasRefusedComesBehindTheAnswer() {
        JobResults results = refused(1);
        assertThat(findings(results))
                .hasSize(5)
                .element(1)
                .isEqualTo(
                        "A capture is unusable. No figures from captures/received-g0.csv: runs of up to 7 samples lie on "
                                + "the upper end of the converter's range.");
    }

    /** One cause is told once: eight captures with both channels' files in two rows each would fill the page. */
    @Test
    void capturesThatOneCauseMakesUnusableAreToldTogether() {
        assertThat(findings(refused(3)))
                .filteredOn(f -> f.contains("No figures"))
                .containsExactly(
                        "Captures are unusable. No figures from captures/received-g0.csv and two more. Of the first: runs of "
                                + "up to 7 samples lie on the upper end of the converter's range.");
    }

    private static JobResults refused(int some) {
        JobResults good = ExampleJob.good().results();
        List<CaptureResult> captures = new ArrayList<>(good.captures());
        for (int i = 0; i < some; i++) {
            Doubt doubt = Doubt.of(
                    Severity.REFUSAL, DoubtReason.OVER_RANGE, Argument.count(7 + i), Argument.word(Word.UPPER_HALF));
            captures.set(i, Sentences.with(captures.get(i), doubt));
        }
        return new JobResults(good.job(), good.inputsDigest(), captures, good.series(), good.comparisons(), List.of());
    }

    @Test
    void aRepairSpeaksOfShapeDistortionAndAsymmetry() {
        assertThat(findingsOf(
                        item(ItemQuantity.NULL_DEPTH, 100, -46.2, 0.8, Decision.PASS),
                        item(ItemQuantity.THD, 100, -0.112, 0.05, Decision.PASS),
                        item(ItemQuantity.ASYMMETRY, 100, 0.3, 0.1, Decision.PASS)))
                .containsExactly(
                        "The same wave. Original clippers and as received: laid over one another, their waves differ by "
                                + "at most 0.6 % at the one gain setting captured (limit 2.5 %).",
                        "The same distortion. Original clippers: its distortion moved by at most 0.17 dB at the one gain "
                                + "setting captured (limit 1 dB).",
                        "The same symmetry. Original clippers: the asymmetry of its peaks moved by at most 0.40 points "
                                + "at the one gain setting captured (limit 2 points).");
    }

    /** 10^((-58.33 + 11.72) / 20) = 0.467 %; the setting with the larger value but the smaller sum does not count. */
    @Test
    void aNullThatNoiseBoundsIsGivenAsItsBound() {
        assertThat(findingsOf(
                        item(ItemQuantity.NULL_DEPTH, 0, Sentences.bound(-58.33, Unit.DECIBEL, 11.72), Decision.PASS),
                        item(ItemQuantity.NULL_DEPTH, 100, Sentences.bound(-55, Unit.DECIBEL, 2), Decision.PASS)))
                .containsExactly(
                        "The same wave. Original clippers and as received: laid over one another, their waves differ by "
                                + "less than 0.5 % at both gain settings (limit 2.5 %).");
    }

    @Test
    void aMoveIsNeverNothingAndDistortionUnderOnePercentIsNotJudged() {
        assertThat(findingsOf(
                        item(ItemQuantity.THD, 0, 1.2, 3, Decision.DESCRIBED),
                        item(ItemQuantity.THD, 50, 0, 0.74, Decision.PASS),
                        item(ItemQuantity.THD, 100, 0.0001, 0.0012, Decision.PASS)))
                .containsExactly(
                        "The same distortion. Original clippers: its distortion moved by at most 0.74 dB at both gain "
                                + "settings where it is judged (limit 1 dB). It is not judged where it is under 1 % in both states.");
        assertThat(findingsOf(item(ItemQuantity.THD, 100, 0.0001, 0.0012, Decision.PASS)))
                .first()
                .asString()
                .contains("moved by at most 0.01 dB at the one gain setting captured");
    }

    /** Halves that differ by 9.9 % then and by 10.0 % now have not moved by more than 2 points, but are no even halves. */
    @Test
    void halvesThatWereUnequalBeforeAreSaidToHaveBeen() {
        JobResults uneven = Sentences.with(comparison(
                "original",
                Intent.UNCHANGED,
                Decision.PASS,
                item(ItemQuantity.ASYMMETRY, 100, 0.1, 0.2, Decision.PASS)));
        JobResults before = Sentences.withFigure(
                uneven, "received", 100, WaveformQuantity.ASYMMETRY, Measured.withNoise(9.9, Unit.PERCENT, 0.05));
        assertThat(findings(Sentences.withFigure(
                        before,
                        "original",
                        100,
                        WaveformQuantity.ASYMMETRY,
                        Measured.withNoise(10, Unit.PERCENT, 0.05))))
                .anyMatch(f -> f.endsWith("Its halves were unequal before, too: 9.9 %, now 10.0 %."));
    }

    @Test
    void whereSomeSettingsFailOnlyTheseAreCounted() {
        assertThat(findings(Sentences.with(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.FAIL,
                        item(ItemQuantity.ASYMMETRY, 0, 0.1, 0.3, Decision.PASS),
                        item(ItemQuantity.ASYMMETRY, 50, 6.8, 0.2, Decision.FAIL),
                        item(ItemQuantity.ASYMMETRY, 100, 21.4, 0.2, Decision.FAIL),
                        item(ItemQuantity.LEVEL, 100, 9, 0.2, Decision.FAIL)))))
                .anyMatch(f -> f.contains("two of three gain settings") && f.contains("21.4"));
    }

    /** The bound of the figure before is −70 + 7 = −63 dBc: −22.4 − 0.2 lies 40.4 dB above it. */
    @Test
    void beyondABoundOnlyTheLeastChangeIsClaimed() {
        JobResults results = Sentences.withFigure(
                ExampleJob.good().results(),
                "received",
                100,
                WaveformQuantity.EVEN_HARMONICS,
                Sentences.bound(-70, Unit.DBC, 7));
        assertThat(findings(results)).anyMatch(f -> f.endsWith("Its even harmonics are at least 40 dB higher."));
    }

    @Test
    void nothingIsClaimedBetweenTwoBounds() {
        JobResults before = Sentences.withFigure(
                ExampleJob.good().results(),
                "received",
                100,
                WaveformQuantity.HIGH_HARMONICS,
                Sentences.bound(-70, Unit.DBC, 7));
        JobResults both = Sentences.withFigure(
                before, "new", 100, WaveformQuantity.HIGH_HARMONICS, Sentences.bound(-60, Unit.DBC, 7));
        assertThat(findings(both))
                .anyMatch(f -> f.endsWith(
                        "full gain: noise hides whether harmonics above the seventh (the edge) changed, but 4.3 dB "
                                + "lower at 50 % gain."));
    }

    @Test
    void rounderAtOneSettingAndHarsherAtAnotherIsNeither() {
        JobResults results = Sentences.withFigure(
                ExampleJob.good().results(),
                "new",
                75,
                WaveformQuantity.HIGH_HARMONICS,
                ExampleJob.value(-31, Unit.DBC, 0.4));
        assertThat(findings(results))
                .anyMatch(f -> f.endsWith(
                        "harmonics above the seventh (the edge) 4.3 dB lower, but 7.6 dB higher at " + "75 % gain."));
    }

    /** A sum falls while a part of it rises: an ear may hear the part. */
    @Test
    void singleHighHarmonicsThatGoAgainstTheSumAreSaid() {
        assertThat(matched(-4, -5)).endsWith("(the edge) 4.3 dB lower.");
        assertThat(matched(-4, 0.9)).endsWith("(the edge) 4.3 dB lower.");
        assertThat(matched(-4, 2)).endsWith("4.3 dB lower. But harmonic 9 of these is 2.0 dB higher.");
        assertThat(matched(2, 5)).endsWith("4.3 dB lower. But harmonics 8 and 9 of these are up to 5.0 dB higher.");
        assertThat(matched(2, 5, 3, 2, 2)).endsWith("4.3 dB lower. But five of these are up to 5.0 dB higher.");
    }

    /** What another drive moves is not said of the unit. */
    @Test
    void amidAnotherDriveNothingIsSaidOfHighHarmonics() {
        JobResults driven = Sentences.withFigure(
                withHarmonics(-4, -5),
                "new",
                100,
                WaveformQuantity.INPUT_FUNDAMENTAL,
                ExampleJob.value(0.1482, Unit.VOLT, 0.001));
        JobResults doubted = Sentences.withDoubt(driven, "new", STIMULUS);
        assertThat(findings(doubted)).noneMatch(f -> f.contains("above the seventh"));
    }

    /** What is said of the high harmonics, both states set equally loud, when those from the eighth on change so, dB. */
    private static String matched(double... changes) {
        return findings(withHarmonics(changes)).stream()
                .filter(f -> f.contains("above the seventh"))
                .findFirst()
                .orElseThrow();
    }

    private static JobResults withHarmonics(double... changes) {
        JobResults good = ExampleJob.good().results();
        Comparison changed = good.comparisons().get(1);
        List<LevelMatchedHarmonic> harmonics = new ArrayList<>();
        harmonics.add(harmonic(1, 0.04));
        for (int i = 0; i < changes.length; i++) {
            harmonics.add(harmonic(8 + i, changes[i]));
        }
        return Sentences.with(withMatched(changed, harmonics));
    }

    private static LevelMatchedHarmonic harmonic(int order, double change) {
        return new LevelMatchedHarmonic(ExampleJob.condition(100), order, ExampleJob.value(change, Unit.DECIBEL, 0.1));
    }

    private static Comparison withMatched(Comparison comparison, List<LevelMatchedHarmonic> harmonics) {
        return new Comparison(
                comparison.from(),
                comparison.to(),
                comparison.intent(),
                comparison.verdict(),
                comparison.reason(),
                comparison.judged(),
                comparison.notExamined(),
                comparison.items(),
                harmonics,
                List.of());
    }

    /** 20 lg(0.1482 / 0.1002) = 3.4 dB. */
    @Test
    void anotherDriveIsSaidBesideWhatItMayExplain() {
        JobResults driven = Sentences.withFigure(
                ExampleJob.good().results(),
                "new",
                100,
                WaveformQuantity.INPUT_FUNDAMENTAL,
                ExampleJob.value(0.1482, Unit.VOLT, 0.001));
        JobResults results = Sentences.withDoubt(driven, "new", STIMULUS);
        String doubt = "The input was 3.4 dB stronger at full gain, so the drive may explain the difference.";
        assertThat(findings(results).get(0)).contains(" at 75 % gain. ").containsOnlyOnce(doubt);
        assertThat(Sentences.plain(new VerdictText(Sentences.wording(results))
                        .sentence(results.comparisons().get(1))))
                .containsOnlyOnce(doubt);
    }

    @Test
    void theSameWaveSixDecibelsLouderIsNoChangeButLevel() {
        assertThat(findings(Sentences.with(louder(Intent.CHANGED, 0.3))))
                .containsExactly(
                        "Only louder. New clippers: 6.0 dB louder than as received at full gain. Turned down to the same "
                                + "level, at most 0.3 % of the wave differs. Its distortion is the same within 0.3 dB.");
        assertThat(findings(Sentences.with(louder(Intent.UNCHANGED, 0.3))))
                .first()
                .isEqualTo(
                        "Only louder. New clippers: at full gain 6.0 dB louder than as received. Set equally loud, their "
                                + "waves differ by less than 0.3 % of their size, and no harmonic has moved.");
    }

    @Test
    void aHarmonicThatMovedIsAChangeBesideLevel() {
        assertThat(findings(Sentences.with(louder(Intent.UNCHANGED, 4)))).noneMatch(f -> f.contains("but level"));
    }

    private static Comparison louder(Intent intent, double fifthHarmonic) {
        Decision decision = intent == Intent.CHANGED ? Decision.DESCRIBED : Decision.FAIL;
        Comparison plain = comparison(
                "new",
                intent,
                decision,
                item(ItemQuantity.LEVEL, 100, 6.02, 0.02, decision),
                item(ItemQuantity.THD, 100, 0.1, 0.18, Decision.DESCRIBED),
                item(ItemQuantity.NULL_DEPTH, 100, Sentences.bound(-60, Unit.DECIBEL, 8), Decision.DESCRIBED));
        return withMatched(plain, List.of(harmonic(5, fifthHarmonic)));
    }
}
