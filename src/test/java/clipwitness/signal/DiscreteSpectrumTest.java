package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Exact transforms of simple records: a cosine of amplitude a at bin m of N samples gives a N / 2 there and nothing elsewhere. */
class DiscreteSpectrumTest {
    @ParameterizedTest
    @ValueSource(ints = {8, 100, 101, 997, 12_000})
    void aSineOnABinStandsInThatBinOnly(int n) {
        int m = 3;
        DiscreteSpectrum spectrum = DiscreteSpectrum.of(Samples.of(IntStream.range(0, n)
                .mapToDouble(i -> 0.4 * Math.cos(2 * Math.PI * m * i / n) + 0.3 * Math.sin(2 * Math.PI * m * i / n) + 7)
                .toArray()));
        assertThat(spectrum.size()).isEqualTo(n / 2 + 1);
        assertThat(spectrum.real(m)).isCloseTo(0.2 * n, within(1e-10 * n));
        assertThat(spectrum.imaginary(m)).isCloseTo(-0.15 * n, within(1e-10 * n));
        for (int k = 0; k < spectrum.size(); k++) {
            if (k != m) {
                assertThat(spectrum.power(k)).isLessThan(1e-20 * n * n);
            }
        }
    }

    @Test
    void anImpulseHasAllFrequenciesAlikeAndItsDelayInTheirPhase() {
        double[] values = new double[15];
        values[2] = 1;
        DiscreteSpectrum spectrum = DiscreteSpectrum.of(Samples.of(values));
        for (int k = 1; k < spectrum.size(); k++) {
            assertThat(spectrum.real(k)).isCloseTo(Math.cos(2 * Math.PI * 2 * k / 15), within(1e-12));
            assertThat(spectrum.imaginary(k)).isCloseTo(-Math.sin(2 * Math.PI * 2 * k / 15), within(1e-12));
        }
    }
}
