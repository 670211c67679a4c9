package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Said;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
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

    @Test
    void noDistortionAtAllLiesBelowEverySetting() {
        Measured.Value none = Measured.withNoise(0, Unit.PERCENT, 0.1);
        assertThat(Said.reason(TENFOLD.gainAt(none).reason())).hasValue("below the lowest setting");
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

    /** Clean to 75 %, 4 % at 100 %: where between them 1 % is reached, nothing says. */
    @Test
    void aMarkAboveASettingLostInNoiseIsABracket() {
        Measured.Value lost = Measured.withNoise(0.02, Unit.PERCENT, 0.05).asUpperBound();
        ThdCurve curve = ThdCurve.of(List.of(50.0, 75.0, 100.0), List.of(lost, lost, percent(4)));
        assertThat(curve.gainAt(percent(1)))
                .isEqualTo(Measured.between(Unit.PERCENT, OptionalDouble.of(75), 100))
                .extracting(m -> Said.reason(m.reason()).orElseThrow())
                .isEqualTo("between 75 and 100 %, because the figure at the setting below is known too roughly");
    }

    /** Below 1.4 %, says noise, at the lowest setting: 1 % may be reached there already. */
    @Test
    void aMarkThatNoiseHidesAtTheLowestSettingIsBelowTheNext() {
        Measured.Value lost = Measured.withNoise(0.4, Unit.PERCENT, 0.5).asUpperBound();
        ThdCurve curve = ThdCurve.of(List.of(0.0, 25.0, 50.0), List.of(lost, percent(4), percent(9)));
        assertThat(curve.gainAt(percent(1))).isEqualTo(Measured.between(Unit.PERCENT, OptionalDouble.empty(), 25));
        assertThat(curve.gainAt(percent(2))).isEqualTo(Measured.between(Unit.PERCENT, OptionalDouble.of(0), 25));
    }

    /** From nothing at 0 % to 3.5 % at 25 % and 20 % at 50 %: 3 % is not reached before 25 x 3 / 3.5 = 21.4 %. */
    @Test
    void aMarkThatASettingHardlyExceedsIsReachedCloseBelowIt() {
        Measured.Value lost = Measured.withNoise(0, Unit.PERCENT, 0.03).asUpperBound();
        ThdCurve curve = ThdCurve.of(List.of(0.0, 25.0, 50.0), List.of(lost, percent(3.5), percent(20)));
        Measured.Value found = curve.gainAt(percent(3)).asValue().orElseThrow();
        assertThat(found.number()).isBetween(21.4, 25.0);
        assertThat(found.number() - found.expanded()).isBetween(20.5, 21.5);
    }

    /**
     * A sine through a hard clipper, its peak 1.05 to 10 times the clip level over the rotation: distortion of 20 harmonics from a Fourier transform of
     * 65,536 places a cycle; 10 % is reached at 2.62 % of the rotation. Nothing between the settings shows the steep rise.
     */
    @Test
    void theBendBetweenTwoSettingsIsInTheUncertainty() {
        ThdCurve curve = ThdCurve.of(
                GAINS,
                List.of(percent(1.8141), percent(32.7397), percent(38.8392), percent(41.5079), percent(42.9314)));
        Measured.Value found = curve.gainAt(percent(10)).asValue().orElseThrow();
        assertThat(Math.abs(found.number() - 2.619)).isLessThan(found.expanded());
        assertThat(found.expanded()).isLessThan(12.5);
    }
}
