package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Said;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values, bounds and limits as the measurement book, section 5, has them: U = 2 u where u is as good as known. */
class MeasuredTest {
    private static Measured.Value volt(double value, double u) {
        return Measured.withNoise(value, Unit.VOLT, u);
    }

    /** What does not exceed its expanded uncertainty is a bound, and lies below value + U. */
    @Test
    void aValueThatDoesNotExceedItsUncertaintyIsABound() {
        assertThat(volt(1, 0.49).orUpperBound().isUpperBound()).isFalse();
        assertThat(volt(1, 0.49).orUpperBound().shown()).isEqualTo(1);
        assertThat(volt(1, 0.5).orUpperBound().isUpperBound()).isTrue();
        assertThat(volt(1, 0.6).orUpperBound().shown()).isCloseTo(2.2, within(1e-12));
    }

    @Test
    void theRelativeUncertaintyIsThatOfTheMagnitude() {
        assertThat(volt(-2, 0.1).relativeUncertainty()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void aSourceThatCancelsIsTakenOut() {
        Measured.Value both = volt(1, 0.3).plus(Source.KNOB, 0.4);
        assertThat(both.standardUncertainty()).isCloseTo(0.5, within(1e-12));
        assertThat(both.without(Source.KNOB).standardUncertainty()).isCloseTo(0.3, within(1e-12));
        assertThat(both.largestFirst()).extracting(Contribution::source).containsExactly(Source.KNOB, Source.NOISE);
        assertThat(volt(1, 0.3).asUpperBound().without(Source.NOISE).isUpperBound())
                .isTrue();
    }

    @Test
    void limitsAreWrittenInTheirUnitAndHaveToRise() {
        assertThat(Said.reason(Measured.between(Unit.PERCENT, OptionalDouble.of(25), 37.5)
                        .reason()))
                .hasValueSatisfying(t -> assertThat(t).contains("25").contains("37.5"));
        assertThat(Said.reason(Measured.between(Unit.PERCENT, OptionalDouble.empty(), 25)
                        .reason()))
                .hasValueSatisfying(t -> assertThat(t).contains("25").doesNotContain("25.0"));
        assertThatThrownBy(() -> Measured.between(Unit.PERCENT, OptionalDouble.of(25), 25))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Measured.between(Unit.PERCENT, OptionalDouble.empty(), Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"-1e-9, 5", "NaN, 5", "Infinity, 5", "1, 0", "1, -1", "1, NaN"})
    void whatIsNoUncertaintyIsNoContribution(double u, double freedom) {
        assertThatThrownBy(() -> new Contribution(Source.NOISE, u, freedom))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aContributionToAFigureThatMovesTwiceAsMuchIsTwiceAsLarge() {
        Contribution none = new Contribution(Source.NOISE, 0);
        assertThat(none.variance()).isZero();
        assertThat(new Contribution(Source.KNOB, 3, 8).times(2)).isEqualTo(new Contribution(Source.KNOB, 6, 8));
        assertThat(new Contribution(Source.KNOB, 3, 8).variance()).isEqualTo(9);
    }

    /** A part that is zero rests on no estimate: the degrees of freedom are those of the other. */
    @Test
    void aPartOfNothingTakesNoDegreesOfFreedom() {
        Contribution nothing = new Contribution(Source.KNOB, 0, 1);
        Contribution knob = new Contribution(Source.KNOB, 3, 8);
        assertThat(Budget.bySource(List.of(nothing, knob))).containsExactly(knob);
        assertThat(Budget.bySource(List.of(knob, nothing))).containsExactly(knob);
        assertThat(Budget.degreesOfFreedom(List.of(new Contribution(Source.KNOB, 3, 0.5))))
                .isEqualTo(1);
        assertThat(Budget.degreesOfFreedom(List.of(volt(1, 0.1).budget().get(0))))
                .isInfinite();
    }
}
