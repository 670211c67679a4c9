package clipwitness.report.words;

import static clipwitness.report.words.Sentences.comparison;
import static clipwitness.report.words.Sentences.item;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.FindingValue;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.rule.Findings;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What became of the sound: each word and its borders, on changes stated outright. The state "new" clips at each setting of the example. */
class AnswerTest {
    private static final Doubt STIMULUS =
            Doubt.of(Severity.WARNING, DoubtReason.STIMULUS_CHANGED_SHEET, Argument.count(120), Argument.count(100));

    /** Level, null depth and distortion at a setting with the uncertainties of a good bench, dB. */
    private static List<Item> at(double gain, double level, double nullDepth, double thd) {
        return at(gain, level, nullDepth, 0.5, thd, 0.1);
    }

    private static List<Item> at(double gain, double level, double depth, double depthU, double thd, double thdU) {
        return List.of(
                item(ItemQuantity.LEVEL, gain, level, 0.1, Decision.DESCRIBED),
                item(ItemQuantity.THD, gain, thd, thdU, Decision.DESCRIBED),
                item(ItemQuantity.NULL_DEPTH, gain, depth, depthU, Decision.DESCRIBED));
    }

    @SafeVarargs
    private static JobResults job(List<Item>... settings) {
        return Sentences.with(changed(settings));
    }

    @SafeVarargs
    private static Comparison changed(List<Item>... settings) {
        List<Item> items = new ArrayList<>();
        for (List<Item> setting : settings) {
            items.addAll(setting);
        }
        return comparison("new", Intent.CHANGED, Decision.DESCRIBED, items.toArray(new Item[0]));
    }

    private static Answer answer(JobResults results) {
        return (Answer) Findings.of(results).all().get(0);
    }

    private static String text(JobResults results) {
        return Sentences.plain(
                new FindingText(Sentences.wording(results)).of(answer(results)).orElseThrow());
    }

    private static JobResults with(JobResults results, String state, double gain, WaveformQuantity q, double value) {
        return Sentences.withFigure(results, state, gain, q, ExampleJob.value(value, q.unit(), 0.01 * Math.abs(value)));
    }

    /** Its distortion stays at this at each setting, percent. */
    private static JobResults distorting(JobResults results, String state, double percent) {
        JobResults all = results;
        for (double gain : ExampleJob.GAINS) {
            all = with(all, state, gain, WaveformQuantity.THD, percent);
        }
        return all;
    }

    @Test
    void theSameWaveAtAnotherLevelIsOnlyQuieter() {
        JobResults results = job(at(50, -2.1, -40, 0.4), at(100, -2.3, -38, -0.3));
        assertThat(answer(results).word()).isEqualTo("only-level");
        assertThat(text(results))
                .isEqualTo(
                        "Only quieter. New clippers: 2.3 dB quieter than as received at full gain. Turned up to the same "
                                + "level, 1.3 % of the wave still differs. Its distortion is 0.3 dB lower.");
    }

    /** The limits of the measurement book: under 1 dB of distortion, and a null depth under -32 dB with its whole uncertainty. */
    @Test
    void onlyLevelEndsAtOneDecibelOfDistortionAndAtTheLimitOfTheNullDepth() {
        assertThat(answer(job(at(100, 3, -38, 0.99))).word()).isEqualTo("only-level");
        assertThat(answer(job(at(100, 3, -38, 1.01))).word()).isEqualTo("harsher");
        assertThat(answer(job(at(100, 3, -32.51, -0.3))).word()).isEqualTo("only-level");
        assertThat(answer(job(at(100, 3, -32.49, -0.3))).word()).isEqualTo("gentler");
        assertThat(answer(job(at(50, 3, -30, -0.3), at(100, 3, -40, -0.3))).word())
                .isEqualTo("gentler");
    }

    /** A knob that is set by eye hides much at a low setting: where the others agree, the answer stands. */
    @Test
    void aSettingThatTellsNothingLeavesTheAnswer() {
        assertThat(answer(job(at(25, -2, -31, 4, 1.1, 2), at(100, -2.3, -40, 0.2)))
                        .word())
                .isEqualTo("only-level");
        assertThat(answer(job(at(25, -2, -31, 0.5, 0.3, 2), at(100, -2.3, -40, 0.2)))
                        .word())
                .as("another shape there, whatever the distortion")
                .isNotEqualTo("only-level");
    }

    @Test
    void whereTheLevelStaysToNothingHasChanged() {
        JobResults results = job(at(100, 0.05, -40, 0.05));
        assertThat(answer(results).word()).isEqualTo("same");
        assertThat(text(results))
                .isEqualTo(
                        "No audible change. New clippers and as received: as loud at full gain within 0.2 dB. Set equally "
                                + "loud, 1.0 % of the wave differs. Its distortion is the same within 0.2 dB.");
    }

    @Test
    void levelsThatGoBothWaysAreNotCalledOneOfThem() {
        assertThat(text(job(at(50, 3, -40, 0.1), at(100, -3, -40, 0.1))))
                .endsWith(": only its level changed, up at some settings, down at others.");
    }

    /** 2 % of the wave: -34 dB. */
    @Test
    void aLittleLessDistortionBehindALevelThatIsHeardIsMostlyQuieter() {
        JobResults results = job(at(50, -2.2, -25, -1.9), at(100, -2.3, -34, -0.3));
        assertThat(answer(results).word()).isEqualTo("gentler");
        assertThat(text(results))
                .isEqualTo(
                        "Mostly quieter, a little gentler. New clippers: 2.3 dB quieter than as received at full gain. "
                                + "Turned up to the same level, 2.0 % of the wave still differs. Its distortion is 0.3 dB lower "
                                + "(1.9 dB at 50 % gain).");
    }

    @Test
    void aLittleEndsAtTwoDecibels() {
        assertThat(text(job(at(100, 0, -20, -1.9))))
                .startsWith("About as loud, a little gentler. ")
                .endsWith("1.9 dB lower.");
        assertThat(text(job(at(100, 0, -20, -2.1))))
                .startsWith("About as loud, gentler. ")
                .endsWith("2.1 dB lower.");
        assertThat(text(job(at(100, 4, -20, 1.9))))
                .startsWith("Louder, a little harsher. ")
                .endsWith("1.9 dB higher.");
        assertThat(text(job(at(50, 4, -20, 6), at(100, 4, -20, 1.9))))
                .startsWith("Louder, harsher. ")
                .endsWith("1.9 dB higher (6.0 dB at 50 % gain).");
    }

    @Test
    void aTurnTheOtherWayWithinItsUncertaintyIsNone() {
        assertThat(answer(job(at(50, 0, -20, 0.5, 0.2, 0.25), at(100, 0, -20, -3)))
                        .word())
                .isEqualTo("gentler");
    }

    @Test
    void lowerAtOneSettingAndHigherAtAnotherIsDifferent() {
        JobResults results = job(at(50, 0, -20, 2), at(100, 0, -20, -3));
        assertThat(answer(results).word()).isEqualTo("different");
        assertThat(text(results))
                .startsWith("Gentler here, harsher there. ")
                .endsWith("Its distortion is 3.0 dB lower (2.0 dB higher at 50 % gain).");
        assertThat(text(job(at(0, 0, -20, 1.5), at(50, 0, -20, -2), at(100, 0, -20, 0))))
                .endsWith("Its distortion is 2.0 dB lower at 50 % gain and 1.5 dB higher at 0 % gain.");
    }

    /** Where the distortion stays at the setting that is spoken of, the sentence says that it is meant there and not everywhere. */
    @Test
    void theSameAtOneSettingIsNotSaidOfAll() {
        assertThat(text(job(at(50, 3, -17, -0.7), at(100, 3, -21, 0.01))))
                .endsWith("Its distortion is the same within 0.2 dB at full gain, but 0.7 dB lower at 50 % gain.");
    }

    /** 23 % to 0.14 % is 44.3 dB, but nobody who plays knows what that is; the wave that clips at full gain alone is told by where and how much it clips. */
    @Test
    void aWaveThatHardlyClipsAnyMoreIsToldByWhereItDoesNotAndByItsDistortions() {
        JobResults results =
                job(at(50, 10, -17, 0.5, -44.3, 4.3), at(75, 15, -17, 0.5, -50, 20), at(100, 20, -16, -2.4));
        results = Sentences.withFigure(
                results, "received", 50, WaveformQuantity.THD, ExampleJob.value(23.4, Unit.PERCENT, 0.3));
        results = Sentences.withFigure(
                results, "received", 75, WaveformQuantity.THD, ExampleJob.value(30.1, Unit.PERCENT, 0.3));
        JobResults known = Sentences.withFigure(
                results, "new", 50, WaveformQuantity.THD, ExampleJob.value(0.14, Unit.PERCENT, 0.09));
        JobResults freed = Sentences.withFigure(
                known, "new", 75, WaveformQuantity.THD, Sentences.bound(0.061, Unit.PERCENT, 0.666));
        assertThat(text(freed))
                .startsWith(
                        "Louder, clips much later. New clippers: up to 75 % gain it hardly clips: 0.14 % distortion at "
                                + "50 % gain instead of 23 %. At full gain it is 20.0 dB louder than as received.")
                .endsWith("Its distortion is 2.4 dB lower: louder and gentler.");
        assertThat(answer(freed).word()).isEqualTo("gentler");
        assertThat(answer(freed).values())
                .extracting(FindingValue::name)
                .contains("thdBefore", "thdNow", "hardlyClipsUpToGainPercent");
        JobResults lost =
                Sentences.withFigure(freed, "new", 50, WaveformQuantity.THD, Sentences.bound(0, Unit.PERCENT, 0.46));
        assertThat(text(lost)).contains("up to 75 % gain it hardly clips: below 0.73 % distortion instead of 30 %.");
    }

    /** 51.2 - 11.7 = 39.5 dB at least at 25 % gain; 44.5 - 41.4 = 3.1 dB at 50 % gain, which is less though its figure is near. */
    @Test
    void aChangeThatIsHardlyKnownIsSaidByWhatItIsAtLeast() {
        List<Item> full = at(100, 20, -16, -2.4);
        List<Item> half = at(50, 20, -17, 0.5, -44.5, 41.4);
        assertThat(text(job(at(25, 20, -17, 0.5, -51.2, 11.7), half, full)))
                .endsWith("Its distortion is 2.4 dB lower (at least 39 dB at 25 % gain).");
        assertThat(text(job(half, full))).endsWith("Its distortion is 2.4 dB lower (at least 3 dB at 50 % gain).");
    }

    @Test
    void asMuchDistortionInAnotherWaveIsAnotherShape() {
        JobResults results = job(at(100, 0, -20, 0.05));
        assertThat(answer(results).word()).isEqualTo("other-shape");
        assertThat(text(results)).endsWith("the same within 0.2 dB: other in shape, neither gentler nor harsher.");
    }

    @Test
    void whatTheUncertaintyHidesIsLeftOpen() {
        JobResults wide = job(at(100, 0, -20, 0.5, 1, 3));
        assertThat(answer(wide).word()).isEqualTo("open");
        assertThat(text(wide))
                .endsWith(
                        "known to no better than 4.0 dB: it cannot be said whether the change made it gentler or harsher.");
        assertThat(answer(job(at(100, 3, -32, 1, 0.1, 0.1))).word())
                .as("a remainder that may lie on either side of its limit")
                .isEqualTo("open");
        assertThat(answer(job(at(100, 3, -40, 1, 0.5, 3))).word())
                .as("distortion that may have moved by what is heard")
                .isEqualTo("open");
    }

    @Test
    void aStateThatStaysUnderOnePercentIsCleanAndNothingElseIsSaidOfItsClipping() {
        JobResults clean = distorting(job(at(50, 5, -20, -20), at(100, 5.9, -20, -20)), "new", 0.5);
        assertThat(answer(clean).word()).isEqualTo("clean");
        assertThat(answer(clean).values()).extracting(FindingValue::name).containsExactly("level");
        assertThat(Sentences.told(clean))
                .containsExactly(
                        "Clean throughout. New clippers: 5.9 dB louder than as received at full gain. Its distortion "
                                + "stays under 1 % at every setting captured: clean.");
        assertThat(answer(with(clean, "new", 75, WaveformQuantity.THD, 1.1)).word())
                .as("it clips at a setting that was not compared")
                .isEqualTo("gentler");
    }

    @Test
    void settingsAtWhichNeitherClipsSayNothing() {
        JobResults results = job(at(0, 0, -10, 9), at(100, -3, -20, -4));
        JobResults unclipped = with(results, "new", 0, WaveformQuantity.THD, 0.9);
        assertThat(answer(results).word()).isEqualTo("different");
        assertThat(answer(unclipped).word()).isEqualTo("gentler");
    }

    @Test
    void besideDistortionThatIsLostInNoiseTheWayIsSaidAndWhatItIsAtLeast() {
        assertThat(text(besideNoise(40, 45)))
                .startsWith("About as loud, harsher. ")
                .endsWith("Its distortion is higher (noise hides by how much).");
        assertThat(text(besideNoise(40, 30)))
                .startsWith("About as loud, harsher. ")
                .endsWith("Its distortion is at least 10 dB higher.");
    }

    private static JobResults besideNoise(double change, double expanded) {
        return Sentences.withFigure(
                job(at(100, 0, -20, 0.5, change, expanded)),
                "received",
                100,
                WaveformQuantity.THD,
                Sentences.bound(0.1, Unit.PERCENT, 0.3));
    }

    @Test
    void withoutACommonSettingThereIsNoAnswer() {
        assertThat(Findings.of(job()).all()).noneMatch(Answer.class::isInstance);
    }

    @Test
    void aStateThatWasToStayGetsNoAnswer() {
        Comparison unchanged = comparison(
                "new", Intent.UNCHANGED, Decision.FAIL, at(100, 0, -20, 3).toArray(new Item[0]));
        assertThat(Findings.of(Sentences.with(unchanged)).all()).noneMatch(Answer.class::isInstance);
    }

    @Test
    void settingsThatWereDrivenOtherwiseAreLeftOut() {
        JobResults results = driven(job(at(50, 0, -20, -3), at(100, 4, -20, 5)), 100);
        assertThat(answer(results).word()).isEqualTo("gentler");
        assertThat(answer(results).subject().condition()).isEqualTo(ExampleJob.condition(50));
        assertThat(Findings.of(results).all()).hasAtLeastOneElementOfType(OtherDrive.class);
    }

    @Test
    void whatTheDriveMayExplainIsNotCalledHarsherNorClean() {
        assertThat(answer(driven(job(at(100, 4, -20, 5)), 100)).word()).isEqualTo("open");
        JobResults weaker = distorting(job(at(100, -4, -20, -15)), "new", 0.5);
        assertThat(answer(driven(weaker, 100)).word()).isEqualTo("open");
    }

    private static JobResults driven(JobResults results, double gain) {
        JobResults driven = with(results, "new", gain, WaveformQuantity.INPUT_FUNDAMENTAL, 0.148);
        return Sentences.withDoubt(driven, "new", STIMULUS);
    }

    /** The example's high harmonics: -38.6 dBc before, -42.9 dBc now. */
    @Test
    void lessOfTheHarmonicsAboveTheSeventhAddsRounder() {
        assertThat(text(Sentences.with(withHarmonics(at(100, 0, -20, -3), -4, -5))))
                .endsWith(": gentler and rounder.");
        assertThat(text(Sentences.with(withHarmonics(at(100, -3, -20, 3), -4, -5))))
                .endsWith(": quieter and harsher, but rounder.");
        assertThat(text(Sentences.with(withHarmonics(at(100, 0, -20, 0), -4, -5))))
                .endsWith(": other in shape, neither gentler nor harsher, but rounder.");
    }

    @Test
    void moreOfThemAddsSharper() {
        JobResults results = with(
                Sentences.with(withHarmonics(at(100, 0, -20, 3), 4, 5)),
                "new",
                100,
                WaveformQuantity.HIGH_HARMONICS,
                -30);
        assertThat(text(results)).endsWith(": harsher and sharper.");
    }

    /** The ninth harmonic of the example stands at -36 dBc. */
    @Test
    void rounderIsNotSaidWhereOneOfThemIsHeardToRise() {
        assertThat(answer(Sentences.with(withHarmonics(at(100, 0, -20, -3), -4, 0.9)))
                        .timbre())
                .isPresent();
        assertThat(answer(Sentences.with(withHarmonics(at(100, 0, -20, -3), -4, 2)))
                        .timbre())
                .isEmpty();
    }

    @Test
    void harmonicsThatNobodyHearsAddNothing() {
        JobResults low = with(
                with(
                        Sentences.with(withHarmonics(at(100, 0, -20, -3), -4, -5)),
                        "received",
                        100,
                        WaveformQuantity.HIGH_HARMONICS,
                        -50.1),
                "new",
                100,
                WaveformQuantity.HIGH_HARMONICS,
                -56);
        assertThat(answer(low).timbre()).isEmpty();
        assertThat(answer(with(low, "received", 100, WaveformQuantity.HIGH_HARMONICS, -49.9))
                        .timbre())
                .contains(Answer.Timbre.ROUNDER);
    }

    private static Comparison withHarmonics(List<Item> items, double... changes) {
        Comparison plain = changed(items);
        List<LevelMatchedHarmonic> harmonics = new ArrayList<>(List.of(harmonic(1, 0.04)));
        for (int i = 0; i < changes.length; i++) {
            harmonics.add(harmonic(8 + i, changes[i]));
        }
        return new Comparison(
                plain.from(),
                plain.to(),
                plain.intent(),
                plain.verdict(),
                plain.reason(),
                plain.judged(),
                plain.notExamined(),
                plain.items(),
                harmonics,
                List.of());
    }

    private static LevelMatchedHarmonic harmonic(int order, double change) {
        return new LevelMatchedHarmonic(ExampleJob.condition(100), order, ExampleJob.value(change, Unit.DECIBEL, 0.1));
    }

    /** 100 * 10^(-20/20) = 10 %, and 10 * (10^(0.5/20) - 1) = 0.593. */
    @Test
    void itsFiguresCarryUnitsAndUncertainties() {
        List<FindingValue> values =
                answer(job(at(50, -1, -20, -4), at(100, -2, -20, -3))).values();
        assertThat(values)
                .extracting(FindingValue::name)
                .containsExactly("level", "left", "null-depth", "thd", "thdLowered", "thdLoweredAtGainPercent");
        FindingValue left = values.get(1);
        assertThat(left.value()).isCloseTo(10, within(1e-9));
        assertThat(left.unit()).isEqualTo(Unit.PERCENT);
        assertThat(left.expandedUncertainty().orElseThrow()).isCloseTo(0.593, within(1e-3));
    }

    @Test
    void aRemainderThatIsHiddenIsSaidAsABound() {
        List<Item> items = List.of(
                item(ItemQuantity.LEVEL, 100, 3, 0.1, Decision.DESCRIBED),
                item(ItemQuantity.THD, 100, 0.1, 0.1, Decision.DESCRIBED),
                item(ItemQuantity.NULL_DEPTH, 100, Sentences.bound(-50, Unit.DECIBEL, 8), Decision.DESCRIBED));
        assertThat(text(job(items))).contains("Turned down to the same level, at most 0.8 % of the wave differs.");
    }

    @Test
    void withoutANullDepthNothingIsSaidOfWhatIsLeft() {
        List<Item> items = at(100, 3, -20, 0.1).subList(0, 2);
        assertThat(answer(job(items)).word()).isEqualTo("open");
        assertThat(text(job(items))).doesNotContain("of the wave");
    }

    @Test
    void theSameAnswerAgainstAnotherStateIsSaidInOneSentence() {
        JobResults results = Sentences.with(changed(at(100, -6, -20, 3)), described(at(100, -5.9, -21, 3.2)));
        assertThat(Sentences.told(results).get(0))
                .startsWith("Quieter, harsher. ")
                .endsWith(" Against original clippers the answer is the same.");
        assertThat(Findings.of(results).all())
                .filteredOn(Answer.class::isInstance)
                .hasSize(2);
    }

    @Test
    void anotherAnswerAgainstAnotherStateTellsItsDistortionAlone() {
        JobResults results = Sentences.with(changed(at(100, -6, -20, 3)), described(at(100, -5.9, -21, -3.2)));
        assertThat(Sentences.told(results).get(0))
                .startsWith("Quieter, harsher. ")
                .endsWith(" Against original clippers: quieter and gentler. Its distortion is 3.2 dB lower.");
    }

    private static Comparison described(List<Item> items) {
        return new Comparison(
                "original",
                "new",
                Intent.DESCRIBED,
                Decision.DESCRIBED,
                Optional.empty(),
                List.of(),
                List.of(),
                items,
                List.of(),
                List.of());
    }
}
