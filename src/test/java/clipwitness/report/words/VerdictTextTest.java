package clipwitness.report.words;

import static clipwitness.report.words.Sentences.comparison;
import static clipwitness.report.words.Sentences.item;
import static clipwitness.report.words.Sentences.plain;
import static clipwitness.report.words.Sentences.refused;
import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.rule.DiffersRule;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.FigureReason;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerdictTextTest {
    /** What is said of a comparison about which there is no answer. */
    private static String differs(Comparison comparison) {
        return plain(new DiffersText(Sentences.wording(Sentences.with(comparison))).what(DiffersRule.of(comparison)));
    }

    private static String sentence(Comparison comparison) {
        return plain(new VerdictText(Sentences.wording(Sentences.with(comparison))).sentence(comparison));
    }

    /** A null of -12 dB leaves more than one of -28 dB does: less is better, so it lies farther beyond the limit. */
    @Test
    void ofTwoNullsBeyondTheLimitTheOneThatLeavesMoreIsNamed() {
        Comparison failed = comparison(
                "original",
                Intent.UNCHANGED,
                Decision.FAIL,
                item(ItemQuantity.NULL_DEPTH, 50, -12, 0.5, Decision.FAIL),
                item(ItemQuantity.NULL_DEPTH, 100, -28, 0.5, Decision.FAIL));
        assertThat(sentence(failed)).contains("at 50 % gain").contains("25.1 ± 1.5 %");
    }

    @Test
    void anUnchangedStateThatPassesNamesTheLargestMoveOfLevelRoundedUp() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.PASS,
                        item(ItemQuantity.LEVEL, 25, 0.02, 0.05, Decision.PASS),
                        item(ItemQuantity.LEVEL, 100, -0.0712, 0.05, Decision.PASS),
                        item(ItemQuantity.THD, 100, 0.1, 0.05, Decision.PASS))))
                .isEqualTo(
                        "Level within 0.13 dB at both gain settings, uncertainty included (limit 0.5 dB). One further "
                                + "figure is within the limits.");
    }

    /** 0.02 + 0.30 reaches farther than 0.20 + 0.05: the row that lies nearest to the limit is told, not a part of each. */
    @Test
    void theLargestMoveAndItsUncertaintyAreOfOneSetting() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.PASS,
                        item(ItemQuantity.LEVEL, 25, 0.02, 0.3, Decision.PASS),
                        item(ItemQuantity.LEVEL, 100, 0.2, 0.05, Decision.PASS))))
                .contains("Level within 0.32 dB");
    }

    @Test
    void withoutLevelsItSaysHowManyFiguresPass() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.PASS,
                        item(ItemQuantity.THD, 100, 0.1, 0.05, Decision.PASS))))
                .isEqualTo("Within the limits, uncertainty included: one figure.");
    }

    @Test
    void aFailNamesTheItemFarthestBeyondItsLimit() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.FAIL,
                        item(ItemQuantity.LEVEL, 50, -0.9, 0.1, Decision.FAIL),
                        item(ItemQuantity.ASYMMETRY, 100, 7.3, 0.4, Decision.FAIL))))
                .isEqualTo(
                        "At full gain the asymmetry of its peaks (0 % is even) rose by 7.30 ± 0.40 points (limit 2 points).");
    }

    @Test
    void anUndecidedItemIsTooNearItsLimit() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.UNDECIDED,
                        item(ItemQuantity.LEVEL, 50, 0.47, 0.11, Decision.UNDECIDED))))
                .isEqualTo("At 50 % gain it is 0.47 ± 0.11 dB louder (limit 0.5 dB).");
    }

    @Test
    void aRefusedItemSaysWhy() {
        assertThat(sentence(comparison(
                        "original",
                        Intent.UNCHANGED,
                        Decision.UNDECIDED,
                        refused(ItemQuantity.LEVEL, 50, FigureReason.CAPTURE_NOT_MEASURED, Decision.UNDECIDED))))
                .isEqualTo("At 50 % gain the level could not be measured: the capture could not be measured.");
    }

    @Test
    void aChangedStateIsDescribedByLoudnessAndDistortionAtItsHighestSetting() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.PASS,
                        item(ItemQuantity.LEVEL, 50, -3.1, 0.12, Decision.DESCRIBED),
                        item(ItemQuantity.LEVEL, 100, -5.93, 0.12, Decision.DESCRIBED),
                        item(ItemQuantity.THD, 100, 3.1, 0.21, Decision.DESCRIBED),
                        item(ItemQuantity.POLARITY, 100, 0.3, 0.4, Decision.PASS))))
                .isEqualTo(
                        "New clippers: 5.9 dB quieter than as received at full gain. Its distortion is 3.1 dB higher.");
    }

    @Test
    void aChangeWithinItsUncertaintyIsNone() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.DESCRIBED,
                        Decision.DESCRIBED,
                        item(ItemQuantity.LEVEL, 100, 0.05, 0.12, Decision.DESCRIBED))))
                .isEqualTo(
                        "New clippers and as received: as loud at full gain within 0.2 dB. Its distortion is not known "
                                + "well enough to compare: it cannot be said whether the change made it gentler or harsher.");
    }

    @Test
    void aChangeThatIsHardlyKnownIsNotCalledNone() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.DESCRIBED,
                        Decision.DESCRIBED,
                        item(ItemQuantity.LEVEL, 100, 1.98, 6.87, Decision.DESCRIBED))))
                .isEqualTo(
                        "New clippers and as received: as loud at full gain within 8.9 dB. Its distortion is not known "
                                + "well enough to compare: it cannot be said whether the change made it gentler or harsher.");
    }

    @Test
    void whatIsMeantToDifferAndDoesNotIsSaidNotTo() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.PASS,
                        item(ItemQuantity.LEVEL, 100, 0.02, 0.06, Decision.DESCRIBED),
                        item(ItemQuantity.THD, 100, -0.02, 0.01, Decision.DESCRIBED),
                        item(ItemQuantity.POLARITY, 100, 0.3, 0.4, Decision.PASS))))
                .isEqualTo(
                        "New clippers and as received: as loud at full gain within 0.1 dB. Its distortion is the same "
                                + "within 0.1 dB: it cannot be said whether the change made it gentler or harsher.");
    }

    @Test
    void whatDiffersOnlyBelowFullGainIsSaidOfTheSettingThatDiffersMost() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.DESCRIBED,
                        item(ItemQuantity.LEVEL, 25, 0.9, 0.1, Decision.DESCRIBED),
                        item(ItemQuantity.LEVEL, 50, 1.6, 0.1, Decision.DESCRIBED),
                        item(ItemQuantity.LEVEL, 100, 0.02, 0.06, Decision.DESCRIBED),
                        item(ItemQuantity.THD, 100, -2, 0.1, Decision.DESCRIBED))))
                .isEqualTo("New clippers and as received: as loud at full gain within 0.1 dB. Its distortion is 2.0 dB "
                        + "lower.");
    }

    @Test
    void whereLoudnessAndDistortionStayTheCrestSpeaksOrTheShape() {
        Item level = item(ItemQuantity.LEVEL, 100, 0.02, 0.06, Decision.DESCRIBED);
        assertThat(differs(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.DESCRIBED,
                        level,
                        item(ItemQuantity.CREST_FACTOR, 100, 0.8, 0.05, Decision.DESCRIBED))))
                .endsWith(
                        "at full gain it is as loud within 0.08 dB and the crest factor differs by +0.800 ± 0.050 dB");
        assertThat(differs(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.DESCRIBED,
                        level,
                        item(ItemQuantity.NULL_DEPTH, 100, -20, 0.5, Decision.DESCRIBED))))
                .endsWith("and the waves differ by 10.0 % of their size when laid over one another");
    }

    @Test
    void aPassOfWhatIsMeantToDifferIsNoPraiseOfItsSound() {
        Comparison comparison = comparison(
                "new", Intent.CHANGED, Decision.PASS, item(ItemQuantity.POLARITY, 100, 0.3, 0.4, Decision.PASS));
        VerdictText texts = new VerdictText(Sentences.wording(Sentences.with(comparison)));
        assertThat(texts.lead(comparison)).isEqualTo("No difference found.");
        assertThat(texts.more(comparison)).containsExactly("What must not change, did not: polarity.");
    }

    @Test
    void aChangedStateCanFailWhatMustNotChange() {
        assertThat(sentence(comparison(
                        "new",
                        Intent.CHANGED,
                        Decision.FAIL,
                        item(ItemQuantity.POLARITY, 100, 179.6, 0.4, Decision.FAIL))))
                .isEqualTo("Its wave is turned over: its phase moved by +180 ± 1° at full gain (limit 90°).");
    }

    @Test
    void statesWithoutCommonCapturesSaySo() {
        assertThat(sentence(comparison("original", Intent.UNCHANGED, Decision.UNDECIDED)))
                .isEqualTo("Nothing could be compared: no waveform capture under a condition that both states share.");
    }

    private static List<String> more(Comparison comparison) {
        return new VerdictText(Sentences.wording(Sentences.with(comparison)))
                .more(comparison).stream().map(Sentences::plain).toList();
    }

    @Test
    void whatElseFailedStandsBesideAndNoRemedyHelpsWhatFailed() {
        Comparison comparison = comparison(
                "original",
                Intent.UNCHANGED,
                Decision.FAIL,
                item(ItemQuantity.LEVEL, 50, -0.9, 0.1, Decision.FAIL),
                item(ItemQuantity.LEVEL, 100, -1.2, 0.1, Decision.FAIL),
                item(ItemQuantity.THD, 50, 0.95, 0.1, Decision.UNDECIDED),
                item(ItemQuantity.THD, 100, 0.1, 0.1, Decision.PASS));
        assertThat(more(comparison))
                .containsExactly(
                        "Beyond the limits, two of four figures: level (50 % gain and full gain).",
                        "Undecided, one of four figures: distortion (THD) (50 % gain).");
    }

    @Test
    void placesThatSeveralQuantitiesShareAreNamedOnce() {
        Comparison comparison = comparison(
                "original",
                Intent.UNCHANGED,
                Decision.FAIL,
                item(ItemQuantity.LEVEL, 50, -0.9, 0.1, Decision.FAIL),
                item(ItemQuantity.LEVEL, 100, -1.2, 0.1, Decision.FAIL),
                item(ItemQuantity.CREST_FACTOR, 50, 0.9, 0.1, Decision.FAIL),
                item(ItemQuantity.CREST_FACTOR, 100, 1.2, 0.1, Decision.FAIL),
                item(ItemQuantity.THD, 50, 1.9, 0.1, Decision.FAIL));
        assertThat(more(comparison))
                .containsExactly(
                        "Beyond the limits, five of five figures: level and crest factor (50 % gain and full gain);"
                                + " distortion (THD) (50 % gain).");
    }

    @Test
    void whatWouldDecideStandsBesideAnUndecidedVerdict() {
        Comparison comparison = comparison(
                "original",
                Intent.UNCHANGED,
                Decision.UNDECIDED,
                item(ItemQuantity.THD, 50, 0.95, 0.1, Decision.UNDECIDED),
                item(ItemQuantity.THD, 100, 0.1, 0.1, Decision.PASS));
        assertThat(more(comparison)).containsExactly("The change lies on the limit; more captures would not decide.");
    }
}
