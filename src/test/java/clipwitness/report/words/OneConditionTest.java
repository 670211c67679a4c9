package clipwitness.report.words;

import static clipwitness.report.words.Sentences.comparison;
import static clipwitness.report.words.Sentences.item;
import static clipwitness.report.words.Sentences.plain;
import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.quantity.ItemQuantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A job whose waves were all captured under one condition: nothing is told apart by it, so sentences do not repeat it. */
class OneConditionTest {
    private static final JobResults FULL = Sentences.only(100);

    /** The good example as if nothing had been said of the gain control, with other comparisons. */
    private static JobWording nameless(Comparison... comparisons) {
        JobResults good = ExampleJob.good().results();
        return Sentences.wording(
                new JobResults(good.job(), good.inputsDigest(), List.of(), List.of(), List.of(comparisons), List.of()));
    }

    private static Item nameless(ItemQuantity quantity, double change, Decision decision) {
        Item item = item(quantity, 100, change, 0.05, decision);
        return new Item(
                quantity,
                item.condition().withoutGain(),
                item.change(),
                item.limit(),
                decision,
                OptionalDouble.empty(),
                Optional.empty());
    }

    @Test
    void findingsLeaveItOutAndTheVerdictNamesIt() {
        JobWording wording = Sentences.wording(FULL);
        List<String> findings = Sentences.told(FULL);
        assertThat(findings)
                .anyMatch(
                        f -> f.startsWith("Quieter, harsher. New clippers: 5.9 dB quieter than as received. Turned up"))
                .anyMatch(f -> f.startsWith("Less edge. New clippers, set equally loud: harmonics above the seventh"))
                .anyMatch(f -> f.matches("The same wave\\. .* laid over one another, .* differ by .* \\(limit .*"))
                .noneMatch(f -> f.contains("full gain") || f.contains("captured (") || f.contains("only setting"));
        assertThat(plain(new VerdictText(wording).sentence(FULL.comparisons().get(1))))
                .startsWith("New clippers: 5.9 dB quieter than as received. ");
        assertThat(plain(new VerdictText(wording).sentence(FULL.comparisons().get(0))))
                .contains("at the one gain setting captured");
    }

    @Test
    void aConditionWithoutNameIsNotSpokenOf() {
        Comparison changed = comparison(
                "new", Intent.DESCRIBED, Decision.DESCRIBED, nameless(ItemQuantity.LEVEL, -3, Decision.DESCRIBED));
        assertThat(plain(new VerdictText(nameless(changed)).sentence(changed)))
                .isEqualTo("Described, not judged: it is 3.0 dB quieter.");
        Comparison failed = comparison(
                "original",
                Intent.UNCHANGED,
                Decision.FAIL,
                nameless(ItemQuantity.LEVEL, -3, Decision.FAIL),
                nameless(ItemQuantity.ASYMMETRY, 4, Decision.FAIL));
        VerdictText text = new VerdictText(nameless(failed));
        assertThat(plain(text.sentence(failed))).isEqualTo("It is 3.00 ± 0.05 dB quieter (limit 0.5 dB).");
        assertThat(text.more(failed))
                .extracting(Sentences::plain)
                .containsExactly("Beyond the limits, two of two figures: level; asymmetry of the peaks.");
    }
}
