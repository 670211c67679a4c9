package clipwitness.measure.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The curve is that of IEC 61672-1: its table at the exact third octaves, rounded to 0.1 dB there. */
class AWeightingTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/clipwitness/measure/a-weighting.csv", numLinesToSkip = 1)
    void givesTheTableOfTheStandard(
            double nominal, double exact, double table, double formula, double atNominal, double rounded) {
        assertThat(decibels(exact)).isCloseTo(formula, within(1e-4));
        assertThat(decibels(exact)).isCloseTo(table, within(0.06));
        assertThat(decibels(nominal)).isCloseTo(atNominal, within(1e-4));
        assertThat(decibels(exact)).isCloseTo(rounded, within(0.02));
    }

    @Test
    void isUnityAt1KilohertzAndNothingAt0() {
        assertThat(AWeighting.power(1000)).isEqualTo(1);
        assertThat(AWeighting.power(0)).isZero();
        assertThat(Arrays.stream(new double[] {20, 100, 1000, 5000}).map(AWeightingTest::decibels))
                .allMatch(d -> d < 1);
    }

    private static double decibels(double frequency) {
        return 10 * Math.log10(AWeighting.power(frequency));
    }
}
