package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.DemoJob;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Findings claim what the figures say: a change within its uncertainty is called none, a bound is called a bound. */
class FindingTest {
    private static final Map<String, Figure> USUAL =
            FigureCatalogue.of(DemoJob.usual().results()).all();
    private static final Map<String, Figure> EDGY =
            FigureCatalogue.of(DemoJob.usual().edgy().results()).all();

    @Test
    void changesWithinTheirUncertaintyAreNotToldAsChanges() {
        assertThat(USUAL.get("cycles-main").finding())
                .isEqualTo("At 50\u00a0% gain: against as received, original clippers shows no change of level above "
                        + "its uncertainty of 0.11\u00a0dB and shows no change of distortion above its uncertainty of "
                        + "0.20\u00a0dB; against as received, new clippers is 3.00\u00a0dB quieter and distorts "
                        + "6.00\u00a0dB less.");
    }

    /** A tenth of the usual limit of 0.5 dB is 0.05 dB; page one says of such a change that it is as loud within 0.05 dB. */
    @Test
    void aChangeThatIsNextToNothingIsNoneThoughItIsKnownBetter() {
        JobResults usual = DemoJob.usual().results();
        Comparison first = usual.comparisons().get(0);
        List<Item> items = first.items().stream()
                .map(i -> i.quantity() == ItemQuantity.LEVEL ? nextToNothing(i) : i)
                .toList();
        Comparison slight = new Comparison(
                first.from(),
                first.to(),
                first.intent(),
                first.verdict(),
                first.reason(),
                first.judged(),
                first.notExamined(),
                items,
                first.levelMatched(),
                first.equivalentGain());
        JobResults results = new JobResults(
                usual.job(), usual.inputsDigest(), usual.captures(), usual.series(), List.of(slight), List.of());
        assertThat(FigureCatalogue.of(results).all().get("cycles-main").finding())
                .startsWith("At 50\u00a0% gain: against as received, original clippers shows no change of level above "
                        + "0.05\u00a0dB and shows no change of distortion");
    }

    private static Item nextToNothing(Item item) {
        return new Item(
                item.quantity(),
                item.condition(),
                Measured.withNoise(0.04, Unit.DECIBEL, 0.005),
                item.limit(),
                item.decision(),
                item.conformanceProbability(),
                item.remedy());
    }

    @Test
    void distortionLostInNoiseIsABound() {
        assertThat(USUAL.get("series-thd").finding()).contains("as received below 0.080\u00a0% at 0\u00a0% gain");
    }

    @Test
    void nullDepthIsGivenFromTheDeepestToTheShallowest() {
        assertThat(USUAL.get("cycles-matched").finding())
                .isEqualTo("When both waves are set equally loud, original clippers less as received leaves from "
                        + "−46.0\u00a0dB at 0\u00a0% gain to −38.0\u00a0dB at full gain; new clippers less as "
                        + "received leaves from −16.0\u00a0dB at full gain to −12.0\u00a0dB at 0\u00a0% gain.");
    }

    @Test
    void decisionsAreCountedAndThoseThatDidNotPassAreNamed() {
        assertThat(EDGY.get("decisions").finding())
                .isEqualTo("Items judged: 25; pass: 22; fail: 1; undecided: 2. Fail: distortion at 25\u00a0% gain."
                        + " Undecided: level at 0\u00a0% gain; asymmetry of the peaks at 50\u00a0% gain.");
    }
}
