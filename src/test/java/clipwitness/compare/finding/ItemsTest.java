package clipwitness.compare.finding;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which item represents the others, by hand: sizes over limits. */
class ItemsTest {
    private static final Optional<Remark> REMEDY = Optional.of(Remark.of(RemedyRemark.ON_THE_LIMIT));

    private static Item item(ItemQuantity quantity, double gain, double change, double expanded, double limit) {
        return item(quantity, gain, change, expanded, limit, Decision.UNDECIDED, REMEDY);
    }

    private static Item item(
            ItemQuantity quantity,
            double gain,
            double change,
            double expanded,
            double limit,
            Decision decision,
            Optional<Remark> remedy) {
        return new Item(
                quantity,
                ExampleJob.condition(gain),
                Measured.withNoise(change, quantity.unit(), expanded / 2),
                OptionalDouble.of(limit),
                decision,
                OptionalDouble.empty(),
                remedy);
    }

    private static Comparison of(Item... items) {
        return new Comparison(
                "received",
                "original",
                Intent.UNCHANGED,
                Decision.UNDECIDED,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(items),
                List.of(),
                List.of());
    }

    /** 0.6 of 0.5 is 1.2, 1.9 of 2 is 0.95; a null 2 dB above its limit counts e^0.1 = 1.11, one 12 dB above e^0.6 = 1.82. */
    @Test
    void theWorstComesNearestToItsLimitOrLiesFarthestBeyond() {
        Item level = item(ItemQuantity.LEVEL, 50, -0.6, 0.1, 0.5);
        Item thd = item(ItemQuantity.THD, 50, 1.9, 0.1, 2);
        Item near = item(ItemQuantity.NULL_DEPTH, 50, -30, 1, -32);
        Item far = item(ItemQuantity.NULL_DEPTH, 50, -20, 1, -32);
        assertThat(Items.worst(List.of(thd, level, near))).hasValue(level);
        assertThat(Items.worst(List.of(thd, far, level))).hasValue(far);
        assertThat(Items.worst(List.of(thd, near))).hasValue(near);
        assertThat(Items.worst(List.of())).isEmpty();
    }

    /** Uncertainty over limit: 0.3 of 0.5 is 0.6, 0.5 of 1 is 0.5, 10 of 32 is 0.31. */
    @Test
    void theNeediestHasTheLargestUncertaintyForItsLimit() {
        Item level = item(ItemQuantity.LEVEL, 50, 0.6, 0.3, 0.5);
        Item thd = item(ItemQuantity.THD, 50, 1, 0.5, 1);
        Item depth = item(ItemQuantity.NULL_DEPTH, 50, -30, 10, -32);
        Item silent = item(ItemQuantity.LEVEL, 75, 0.6, 3, 0.5, Decision.UNDECIDED, Optional.empty());
        Item decided = item(ItemQuantity.LEVEL, 25, 0.6, 3, 0.5, Decision.FAIL, REMEDY);
        assertThat(Items.neediest(of(thd, silent, level, decided, depth))).hasValue(level);
        assertThat(Items.neediest(of(decided, silent))).isEmpty();
        assertThat(Items.decided(of(thd, decided), Decision.FAIL)).containsExactly(decided);
    }

    @Test
    void theHighestGainAndTheLargestReachAreChosen() {
        Item low = item(ItemQuantity.LEVEL, 25, -0.9, 0.1, 0.5);
        Item high = item(ItemQuantity.LEVEL, 75, 0.6, 0.5, 0.5);
        Item thd = item(ItemQuantity.THD, 100, 3, 0.1, 1);
        Comparison comparison = of(low, high, thd);
        assertThat(Items.highest(comparison, ItemQuantity.LEVEL)).hasValue(high);
        assertThat(Items.farthest(List.of(low, high))).isEqualTo(high); // 1.1 against 1.0
        assertThat(Items.at(comparison, ExampleJob.condition(25), ItemQuantity.LEVEL))
                .hasValue(low);
        assertThat(Items.at(comparison, ExampleJob.condition(25), ItemQuantity.THD))
                .isEmpty();
        assertThat(Items.conditionsOfWaves(comparison)).hasSize(3);
        assertThat(Items.isFall(low)).isTrue();
        assertThat(Items.isFall(item(ItemQuantity.LEVEL, 50, 0, 0.1, 0.5))).isFalse();
        Item shallow = item(ItemQuantity.NULL_DEPTH, 25, -35, 4, -32);
        Item deep = item(ItemQuantity.NULL_DEPTH, 75, -33, 1, -32);
        assertThat(Items.mostLeft(List.of(deep, shallow))).isEqualTo(shallow); // -31 against -32 dB
    }
}
