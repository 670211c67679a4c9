package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import org.junit.jupiter.api.Test;

/** The groups of harmonics, on a wave of five whose levels are powers of ten. */
class HarmonicGroupTest {
    private static double cosine(int order, double phase) {
        return Math.cos(2 * Math.PI * order * phase);
    }

    /** 20 lg of 0.1, and of 0.01: the seventh harmonic, ten times the eighth, is an odd one but no high one. */
    @Test
    void evenOddAndHighHarmonicsHaveTheLevelsOfTheirMembers() {
        WaveformResult result = TestRecord.of(p -> cosine(1, p) + 0.1 * cosine(7, p) + 0.01 * cosine(8, p))
                .measured();
        assertThat(Values.value(result, WaveformQuantity.ODD_HARMONICS)).isCloseTo(-20, within(1e-6));
        assertThat(Values.value(result, WaveformQuantity.EVEN_HARMONICS)).isCloseTo(-40, within(1e-5));
        assertThat(Values.value(result, WaveformQuantity.HIGH_HARMONICS)).isCloseTo(-40, within(1e-5));
    }

    /** The root sum square of 0.03 and 0.04 is 0.05: 20 lg 0.05 = -26.02 dB. */
    @Test
    void membersOfAGroupAddByTheirSquares() {
        WaveformResult result = TestRecord.of(
                        p -> cosine(1, p) + 0.03 * cosine(8, p) + 0.04 * cosine(19, p) + 0.2 * cosine(2, p))
                .measured();
        assertThat(Values.value(result, WaveformQuantity.HIGH_HARMONICS)).isCloseTo(-26.0206, within(1e-3));
    }
}
