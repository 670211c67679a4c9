package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.quantity.Unit;
import java.util.Map;
import org.junit.jupiter.api.Test;

class VerticalAccuracyTest {
    /** JCGM 100:2008, 4.3.7: a bound of 3 % is a rectangular distribution, u = 3 % / sqrt 3 = 1.732 %. */
    @Test
    void aBoundOfThreePercentIsAStandardUncertaintyOf1Point732Percent() {
        WaveformResult applied = VerticalAccuracy.applied(result(), 0.03);
        assertThat(applied.get(WaveformQuantity.RMS).expandedUncertainty().orElseThrow())
                .isCloseTo(2 * 0.5 * 0.017320508, within(1e-9));
    }

    @Test
    void ratiosAreFreeOfIt() {
        WaveformResult applied = VerticalAccuracy.applied(result(), 0.03);
        assertThat(applied.get(WaveformQuantity.THD)).isEqualTo(Measured.of(10, Unit.PERCENT));
    }

    /** Two channels known to 3 %: 8.686 dB times 0.03 / sqrt 3 times sqrt 2 = 0.2128 dB (JCGM 100, 4.3.7 and 5.1.2). */
    @Test
    void aGainOfTwoChannelsKnownToThreePercentHas0Point2128Decibels() {
        WaveformResult applied = VerticalAccuracy.applied(result(), 0.03);
        assertThat(applied.get(WaveformQuantity.GAIN).expandedUncertainty().orElseThrow())
                .isCloseTo(2 * 0.2128, within(2e-4));
    }

    private static WaveformResult result() {
        return WaveValues.of(Map.of(
                WaveformQuantity.RMS, Measured.of(0.5, Unit.VOLT),
                WaveformQuantity.THD, Measured.of(10, Unit.PERCENT),
                WaveformQuantity.GAIN, Measured.of(20, Unit.DECIBEL)));
    }
}
