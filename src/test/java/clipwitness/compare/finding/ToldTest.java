package clipwitness.compare.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Condition;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A change that may be none, half or double at once is a dash: 20 lg 2 = 6.02 dB. */
class ToldTest {
    /** Means in µV, asymmetries in %: what its uncertainty reaches is not seen, and lies below its size with all of that; 0 dB is a figure. */
    /** -52 ± 40 % was measured on a wave behind filters that is even. */
    @ParameterizedTest
    @CsvSource({"CLIP_ASYMMETRY, 40, false", "ASYMMETRY, 11, false", "ASYMMETRY, 9, true", "THD, 40, true"})
    void anAsymmetryThatMayBeAnythingIsNotTold(WaveformQuantity quantity, double expanded, boolean told) {
        assertThat(Told.figure(quantity, measured(-52, expanded, Unit.PERCENT))
                        .asValue()
                        .isPresent())
                .isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "-7e-6, 43e-6, VOLT, 50e-6",
        "0.2, 0.23, PERCENT, 0.43",
        "-29.6, 0.3, PERCENT, ",
        "0.1, 0.4, DECIBEL, ",
        "0, 0.2, DEGREE, ",
    })
    void aFigureThatMayBeNoneIsTheBoundOfItsSize(double figure, double expanded, Unit unit, Double below) {
        Measured.Value told = Told.figure(WaveformQuantity.MEAN, measured(figure, expanded, unit))
                .asValue()
                .orElseThrow();
        assertThat(told.isUpperBound()).isEqualTo(below != null);
        assertThat(told.shown()).isCloseTo(below == null ? figure : below, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 25, false", // from an eighteenth to eighteen times: says nothing
        "5, 6.1, false", // none or thrice, nobody knows
        "5, 5.9, true", // known to within a factor of two
        "0, 6.0, true",
        "-8, 7, true", // wide, but lower for certain
        "-7, 8, false",
    })
    void aChangeIsToldWhereItSaysMoreThanHalfOrDouble(double change, double expanded, boolean told) {
        Measured value = measured(change, expanded, Unit.DECIBEL);
        Measured shown = Told.harmonic(new LevelMatchedHarmonic(Condition.NONE, 9, value));
        assertThat(shown.asValue().isPresent()).isEqualTo(told);
        assertThat(shown.reason().isPresent()).isNotEqualTo(told);
    }

    /** A knob turns from 0 to 100 %: 22 ± 29 % may be any of its lower half. A knee has 0 dB where it is a corner and 15 dB where it hardly is one. */
    @Test
    void aPlaceOrAKneeThatMayBeNearlyAnyIsNotTold() {
        assertThat(Told.rotation(measured(22, 29, Unit.PERCENT)).asValue()).isEmpty();
        assertThat(Told.rotation(measured(1.1, 1.2, Unit.PERCENT)).asValue()).isPresent();
        assertThat(Told.figure(WaveformQuantity.KNEE_UP, measured(13, 14, Unit.DECIBEL))
                        .asValue())
                .isEmpty();
        assertThat(Told.figure(WaveformQuantity.KNEE_UP, measured(7.1, 4.3, Unit.DECIBEL))
                        .asValue())
                .isPresent();
    }

    /** 21 ± 12 mV may be 9 or 33 mV: which of two states clips earlier is not in it. */
    @ParameterizedTest
    @CsvSource({"0.021, 0.012, false", "0.021, 0.010, true"})
    void anOnsetKnownToNoBetterThanHalfIsNotTold(double onset, double expanded, boolean told) {
        Measured measured = Told.figure(WaveformQuantity.ONSET_UP, measured(onset, expanded, Unit.VOLT));
        assertThat(measured.asValue().isPresent()).isEqualTo(told);
    }

    /** 40.9 - 16.7 = 24.2 dB are known; of 0 ± 25 dB nothing is; 0.0 ± 0.1 dB and 0.2 ± 0.4 points say that nothing moved. */
    @ParameterizedTest
    @CsvSource({
        "-40.9, 16.7, DECIBEL, true, true",
        "-9, 5.5, DECIBEL, true, false",
        "0, 25, DECIBEL, false, false",
        "0.0, 0.1, DECIBEL, true, false",
        "0.2, 12, PERCENT, true, false",
    })
    void ofAChangeThatIsHardlyKnownTheLeastIsTold(
            double change, double expanded, Unit unit, boolean told, boolean atLeast) {
        Measured measured = Told.change(measured(change, expanded, unit));
        assertThat(measured.asValue().isPresent()).isEqualTo(told);
        assertThat(measured.asValue().filter(Told::isAtLeast).isPresent()).isEqualTo(atLeast);
    }

    private static Measured measured(double figure, double expanded, Unit unit) {
        return Measured.withNoise(figure, unit, expanded / 2);
    }
}
