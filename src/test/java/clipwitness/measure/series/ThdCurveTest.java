package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Said;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Distortion over the gain control where it is a known function: tenfold from end to end, so log(thd) is a straight line. */
class ThdCurveTest {
    private static final List<Double> GAINS = List.of(0.0, 25.0, 50.0, 75.0, 100.0);

    private static Measured.Value percent(double number) {
        return Measured.withNoise(number, Unit.PERCENT, number * 1e-3);
    }

    private static final ThdCurve TENFOLD = ThdCurve.of(
            GAINS,
            GAINS.stream()
                    .map(g -> (Measured) percent(2 * Math.pow(10, g / 100)))
                    .toList());

    /** 2 % at 0 and 20 % at 100: the mark at lg(10 / 2) = 69.897 % of the way. */
    @Test
    void tenPercentIsReachedAt69Point897() {
        assertThat(TENFOLD.gainAt(percent(10)).value().orElseThrow()).isCloseTo(69.897, within(1e-3));
    }

    @Test
    void aMarkBelowTheFirstSettingOrAboveTheLastIsSaidSo() {
        assertThat(Said.reason(TENFOLD.gainAt(percent(1)).reason())).hasValue("below the lowest setting");
        assertThat(Said.reason(TENFOLD.gainAt(percent(30)).reason())).hasValue("not reached");
    }

    /** 2 % at the lowest setting: 1.99 %, known to 1 %, may be the same; 1.8 % is not. */
    @Test
    void anUncertainMarkThatMayBeThatOfAnEndIsReachedThere() {
        Measured.Value near = Measured.withNoise(1.99, Unit.PERCENT, 0.01);
        assertThat(TENFOLD.gainAt(near).value().orElseThrow()).isEqualTo(0);
        assertThat(TENFOLD.gainAt(Measured.withNoise(20.1, Unit.PERCENT, 0.1))
                        .value()
                        .orElseThrow())
                .isEqualTo(100);
        assertThat(Said.reason(TENFOLD.gainAt(Measured.withNoise(1.8, Unit.PERCENT, 0.01))
                        .reason()))
                .hasValue("below the lowest setting");
    }

    @Test
    void aCurveThatDoesNotChangeHasNoPlaceForItsOwnDistortion() {
        ThdCurve flat = ThdCurve.of(List.of(25.0, 50.0, 75.0), List.of(percent(3), percent(3), percent(3)));
        assertThat(Said.reason(flat.gainAt(percent(3)).reason()))
                .hasValue("the distortion does not change along the gain control there");
    }

    @Test
    void oneSettingAloneIsNoCurve() {
        assertThat(Said.reason(ThdCurve.of(List.of(50.0), List.of(percent(3)))
                        .gainAt(percent(3))
                        .reason()))
                .isPresent();
    }
}
