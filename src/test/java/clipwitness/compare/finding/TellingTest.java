package clipwitness.compare.finding;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.fixture.ExampleJob;
import clipwitness.quantity.ItemQuantity;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a change counts: beyond its expanded uncertainty, and not next to nothing. */
class TellingTest {
    private static Item item(ItemQuantity quantity, double change, double expanded) {
        return new Item(
                quantity,
                ExampleJob.condition(50),
                ExampleJob.value(change, quantity.unit(), expanded),
                OptionalDouble.empty(),
                Decision.DESCRIBED,
                OptionalDouble.empty(),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "0.31, 0.30, MORE",
        "-0.31, 0.30, LESS",
        "0.29, 0.30, EQUAL",
        "-0.29, 0.30, EQUAL",
        "0.80, 0.99, EQUAL",
        "0.80, 1.01, UNKNOWN"
    })
    void aChangeWithinItsUncertaintyIsNoneWhereOneThatIsHeardWouldHaveShown(
            double change, double expanded, Telling.Kind kind) {
        assertThat(Telling.of(item(ItemQuantity.LEVEL, change, expanded)).kind())
                .isEqualTo(kind);
    }

    /** The usual limits are 0.5 dB of level and 1 dB of distortion: a tenth is 0.05 dB and 0.1 dB. */
    @ParameterizedTest
    @CsvSource({"LEVEL, 0.049, EQUAL", "LEVEL, 0.051, MORE", "THD, 0.099, EQUAL", "THD, 0.101, MORE"})
    void aTenthOfTheUsualLimitIsNextToNothingHoweverWellItIsKnown(
            ItemQuantity quantity, double change, Telling.Kind kind) {
        assertThat(Telling.of(item(quantity, change, 0.001)).kind()).isEqualTo(kind);
    }

    /** Picked as the clearest of many, a change that is none exceeds its uncertainty once in twenty times. */
    @Test
    void theClearestOfManyChangesMustExceedItsUncertaintyByHalf() {
        assertThat(Significance.ofOneOfMany(item(ItemQuantity.LEVEL, 0.44, 0.3)))
                .isFalse();
        assertThat(Significance.ofOneOfMany(item(ItemQuantity.LEVEL, 0.46, 0.3)))
                .isTrue();
    }
}
