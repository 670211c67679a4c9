package clipwitness.report.words;

import static clipwitness.report.words.Sentences.item;
import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Difference;
import clipwitness.compare.result.Decision;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Changes as text: their digits say what was decided, and no more than is known. */
class ItemTextTest {
    private final ItemText texts =
            new ItemText(Sentences.wording(ExampleJob.good().results()));

    /** The limit of distortion is 1 dB: 3.4 - 2.3 lies beyond it, 3 - 3 would not. */
    @ParameterizedTest
    @CsvSource({
        "3.4, 2.3, FAIL, 3.4 ± 2.3 dB",
        "3.43, 2.42, FAIL, 3.43 ± 2.42 dB",
        "-5.49, 0.43, FAIL, 5.49 ± 0.43 dB",
        "-31, 7.6, FAIL, at least 23 dB",
    })
    void aFailIsToldSoThatItsIntervalLiesBeyondTheLimit(
            double change, double expanded, Decision decision, String text) {
        assertThat(Sentences.plain(texts.spread(item(ItemQuantity.THD, 50, change, expanded, decision))))
                .isEqualTo(text);
    }

    /** An amplitude known to two thirds may be a third of itself, so a rise of 17 dB may be much less. */
    @Test
    void aDifferenceOfHarmonicsThatMayBeHalfOrDoubleIsToldByItsLeast() {
        Difference known = Difference.of(level(-57, 1), level(-40, 1));
        Difference wide = Difference.of(level(-57, 5.8), level(-40, 5.8));
        assertThat(Sentences.plain(texts.size(known, Unit.DECIBEL))).isEqualTo("17 dB");
        assertThat(Sentences.plain(texts.size(wide, Unit.DECIBEL))).startsWith("at least ");
    }

    private static Measured.Value level(double level, double expanded) {
        return Measured.withNoise(level, Unit.DBC, expanded / 2);
    }

    @ParameterizedTest
    @CsvSource({
        "-40.9, 16.7, < −24 dB",
        "48.7, 18.2, > +30 dB",
        "-3, 19, – ± 19 dB",
        "-0.1, 2.7, −0.1 ± 2.7 dB",
    })
    void aListHasTheLeastOfAChangeOrADashWhereNothingIsKnown(double change, double expanded, String text) {
        assertThat(Sentences.plain(texts.listed(item(ItemQuantity.THD, 50, change, expanded, Decision.UNDECIDED))
                        .full()))
                .isEqualTo(text);
    }
}
