package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class AxesTest {
    private static final Axes AXES = new Axes(NumberText.in("en"));

    @Test
    void onePrefixServesTheWholeAxis() {
        Axis axis = AXES.round("Output", Unit.VOLT, new Extent(-0.43, 0.51), 6);
        assertThat(axis.label()).isEqualTo("Output, mV");
        assertThat(texts(axis)).containsExactly("−600", "−400", "−200", "0", "200", "400", "600");
    }

    @Test
    void anAxisThatReachesOneVoltIsInVolts() {
        Axis axis = AXES.round("Output", Unit.VOLT, new Extent(-0.9, 0.9), 4);
        assertThat(axis.label()).isEqualTo("Output, V");
        assertThat(texts(axis)).containsExactly("−1.0", "−0.5", "0.0", "0.5", "1.0");
    }

    @Test
    void timeOfOneKilohertzIsInMilliseconds() {
        Axis axis = AXES.exact("Time", Unit.SECOND, new Extent(0, 1e-3), 5);
        assertThat(axis.label()).isEqualTo("Time, ms");
        assertThat(texts(axis)).containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
    }

    @Test
    void anOddPeriodIsMarkedAtRoundTimes() {
        Axis axis = AXES.exact("Time", Unit.SECOND, new Extent(0, 1 / 82.4), 5);
        assertThat(texts(axis)).containsExactly("0", "5", "10");
    }

    /** A measured period of 2.4999 ms ends at the mark 2.5. */
    @Test
    void anEndThatIsAsGoodAsRoundIsMarked() {
        Axis axis = AXES.exact("Time", Unit.SECOND, new Extent(0, 2.4999e-3), 5);
        assertThat(texts(axis)).containsExactly("0.0", "0.5", "1.0", "1.5", "2.0", "2.5");
    }

    @Test
    void numbersHaveTheDecimalMarkOfTheReportsLanguage() {
        Axis axis = new Axes(NumberText.in("de")).round("Output", Unit.VOLT, new Extent(-0.9, 0.9), 4);
        assertThat(texts(axis)).containsExactly("−1,0", "−0,5", "0,0", "0,5", "1,0");
    }

    @Test
    void percentAndDecibelsTakeNoPrefix() {
        assertThat(AXES.round("Level", Unit.DBC, new Extent(-0.02, 0), 4).label())
                .isEqualTo("Level, dBc");
        assertThat(AXES.round("Distortion", Unit.PERCENT, new Extent(0, 4000), 4)
                        .label())
                .isEqualTo("Distortion, %");
    }

    @Test
    void aPureNumberHasNoUnit() {
        assertThat(AXES.round("Crest factor", Unit.ONE, new Extent(1, 1.41), 5).label())
                .isEqualTo("Crest factor");
    }

    @Test
    void logarithmicAxisOfDistortionReadsInPlainNumbers() {
        Axis axis = AXES.logarithmic("Distortion", Unit.PERCENT, new Extent(0.2, 31));
        assertThat(texts(axis)).contains("0.3", "1", "3", "10", "30").noneMatch(t -> t.contains("E"));
    }

    @Test
    void aSeriesThatDoesNotMoveStillHasAnAxis() {
        Axis axis = AXES.round("Crest factor", Unit.ONE, new Extent(1.414, 1.414), 5);
        assertThat(axis.scale().share(1.414)).isBetween(-1e-6, 1 + 1e-6);
        Axis log = AXES.logarithmic("Level", Unit.VOLT, new Extent(0.1, 0.1));
        assertThat(log.ticks()).isNotEmpty();
    }

    @Test
    void everyRoundAxisHoldsItsRange() {
        for (double low : new double[] {-3.7, -1e-9, 0, 2.2e-7, 999}) {
            for (double span : new double[] {1e-9, 0.3, 17, 4e5}) {
                Axis axis = AXES.round("x", Unit.VOLT, new Extent(low, low + span), 5);
                assertThat(axis.scale().share(low)).isBetween(-1e-6, 1 + 1e-6);
                assertThat(axis.scale().share(low + span)).isBetween(-1e-6, 1 + 1e-6);
                assertThat(axis.ticks()).hasSizeBetween(2, 9);
            }
        }
    }

    private static List<String> texts(Axis axis) {
        return axis.ticks().stream().map(Axis.Tick::text).toList();
    }
}
