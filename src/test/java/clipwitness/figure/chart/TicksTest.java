package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
    /** A reader counts in ones, twos and fives: the only steps that divide a decade into whole parts without remainder. */
    @ParameterizedTest
    @CsvSource({"1, 5, 0.2", "1, 4, 0.5", "1, 10, 0.1", "7, 5, 2", "0.0012, 6, 0.0002", "1e6, 3, 500000", "3, 3, 1"})
    void stepsAreOneTwoOrFiveTimesAPowerOfTen(double span, int most, String step) {
        assertThat(Ticks.step(span, most)).isEqualByComparingTo(step);
    }

    @Test
    void multiplesAreExactDecimals() {
        assertThat(Ticks.multiples(new BigDecimal("0.1"), -0.2, 0.3))
                .extracting(BigDecimal::doubleValue)
                .containsExactly(-0.2, -0.1, 0.0, 0.1, 0.2, 0.3);
    }

    @Test
    void endsOfAnAxisThatAreTicksAreKept() {
        assertThat(Ticks.multiples(new BigDecimal("0.3"), 0.3, 0.1 + 0.2 + 0.6)).hasSize(3);
    }

    @Test
    void aLongLogarithmicAxisIsMarkedOneThreeTen() {
        assertThat(text(Ticks.logarithmic(0.03, 50))).containsExactly("0.03", "0.1", "0.3", "1", "3", "10", "30");
    }

    @Test
    void aShortLogarithmicAxisIsMarkedOneTwoFive() {
        assertThat(text(Ticks.logarithmic(50, 600))).containsExactly("50", "100", "200", "500");
    }

    @Test
    void anAxisWithoutSpanIsOurMistake() {
        assertThatThrownBy(() -> Ticks.step(Double.NaN, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ticks.step(0, 5)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<String> text(List<BigDecimal> ticks) {
        return ticks.stream().map(BigDecimal::toPlainString).toList();
    }
}
