package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.device.ClipForecast;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.MatchedPair;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The words as printed, spaces that do not break made plain. */
class RankingWordsTest {
    private static String forecast(double change, double uChange, double asymmetry, double uAsymmetry) {
        return plain(RankingWords.forecast(Optional.of(new ClipForecast.Forecast(
                Measured.withNoise(change, Unit.DECIBEL, uChange),
                Measured.withNoise(asymmetry, Unit.PERCENT, uAsymmetry)))));
    }

    private static String plain(String text) {
        return text.replace('\u00A0', ' ');
    }

    @Test
    void aMismatchHasItsUncertaintyAndABoundIsWhatItLiesBelow() {
        Measured.Value value = Measured.withNoise(0.00266, Unit.VOLT, 0.00004);
        assertThat(plain(RankingWords.volts(value))).isEqualTo("2.660 ± 0.080 mV");
        assertThat(plain(RankingWords.volts(
                        Measured.withNoise(0.0001, Unit.VOLT, 0.00015).orUpperBound())))
                .isEqualTo("< 400 µV");
        assertThat(RankingWords.volts(Measured.refused(Unit.VOLT, DeviceReason.NO_SWEEP_BACK)))
                .isEqualTo("–");
    }

    @Test
    void whatExceedsItsUncertaintyIsSaidWithIt() {
        assertThat(forecast(-2.9, 0.05, -3.1, 0.2)).isEqualTo("2.90 ± 0.10 dB lower, asymmetric by 3.10 ± 0.40 %");
        assertThat(forecast(2.9, 0.05, 3.1, 0.2)).isEqualTo("2.90 ± 0.10 dB higher, asymmetric by 3.10 ± 0.40 %");
    }

    @Test
    void whatDoesNotIsWithinSoMuch() {
        assertThat(forecast(-0.05, 0.05, 0.1, 0.3)).isEqualTo("as high within 0.15 dB, symmetric within 0.70 %");
        assertThat(RankingWords.forecast(Optional.empty())).isEmpty();
    }

    @Test
    void temperaturesHaveTheirBound() {
        assertThat(plain(RankingWords.temperature(new Temperature(23, 3 / Math.sqrt(3)))))
                .isEqualTo("23 °C ± 3 K");
    }

    @Test
    void tracesTakenApartHaveARemark() {
        Measured.Value none = Measured.of(0, Unit.VOLT);
        assertThat(plain(RankingWords.remark(
                        new MatchedPair(List.of("a", "b"), none, none, 3.5, new CurrentRange(1e-6, 1e-3)))))
                .isEqualTo(
                        "traced 3.5 K apart: referred to one temperature, which adds ± 1.1 mV of uncertainty to the mismatch");
        assertThat(RankingWords.remark(
                        new MatchedPair(List.of("a", "b"), none, none, 2.5, new CurrentRange(1e-6, 1e-3))))
                .isEmpty();
    }
}
