package clipwitness.measure.pair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Two waves laid over one another: 10 lg(1 - rho²), exact where the second wave is the first plus a known harmonic. */
class NullDepthTest {
    private static double cubed(double phase) {
        double x = TestRecord.SINE.applyAsDouble(phase);
        return x + 0.2 * x * x - 0.25 * x * x * x;
    }

    private static TestRecord noisy(DoubleUnaryOperator shape, double phase, long seed) {
        return TestRecord.of(shape).sampled(500, 10.37, phase).noisy(1e-3, 0, seed);
    }

    @Test
    void theSameWaveLaterByPartOfASampleAndLouderLeavesNothing() {
        WaveformResult first = noisy(NullDepthTest::cubed, 0.1, 1).measured();
        WaveformResult second = noisy(p -> 1.7 * cubed(p), 0.4567, 2).measured();
        Measured.Value depth = NullDepth.of(first, second).asValue().orElseThrow();
        assertThat(depth.isUpperBound()).isTrue();
        assertThat(depth.number()).isLessThan(-70);
    }

    /** A third harmonic of one hundredth of the fundamental has a power of 1e-4 of the whole: -40 dB. */
    @Test
    void aHarmonicOfOnePercentLeavesMinus40Decibels() {
        WaveformResult plain = noisy(TestRecord.SINE, 0.1, 3).measured();
        WaveformResult coloured = noisy(
                        p -> TestRecord.SINE.applyAsDouble(p) + 0.01 * Math.sin(6 * Math.PI * p + 0.3), 0.7, 4)
                .measured();
        Measured.Value depth = NullDepth.of(plain, coloured).asValue().orElseThrow();
        assertThat(depth.isUpperBound()).isFalse();
        assertThat(depth.number()).isCloseTo(-40, within(Math.max(0.01, 2 * depth.standardUncertainty())));
        assertThat(2 * depth.standardUncertainty()).isBetween(0.01, 0.5);
    }

    @Test
    void anAsymmetricWaveTurnedOverIsNoMatchUntilItIsTurnedBack() {
        WaveformResult upright = noisy(NullDepthTest::cubed, 0.1, 5).measured();
        WaveformResult turned = noisy(p -> -cubed(p), 0.1, 6).measured();
        assertThat(NullDepth.of(upright, turned).value().orElseThrow()).isGreaterThan(-20);
        assertThat(turnedOver(upright, turned)).isLessThan(-60);
        assertThat(turnedOver(upright, upright)).isGreaterThan(-20);
    }

    /** Sampled at another rate, over another length, from another trigger point, by a clock that is 100 parts per million fast. */
    @Test
    void recordsOfAnotherRateLengthTriggerAndClockLeaveNothing() {
        WaveformResult first = noisy(NullDepthTest::cubed, 0.1, 9).measured();
        WaveformResult second = TestRecord.of(NullDepthTest::cubed)
                .sampled(317.3 * (1 + 1e-4), 21.9, 0.8)
                .noisy(1e-3, 0, 10)
                .measured();
        assertThat(NullDepth.of(first, second).value().orElseThrow()).isLessThan(-70);
    }

    private static double turnedOver(WaveformResult from, WaveformResult to) {
        NullDepth.Alignment over = NullDepth.alignment(from, to, true).orElseThrow();
        return over.depth().value().orElseThrow();
    }

    @Test
    void aLouderWaveOfTheSameShapeHasNoChangeOnceLevelsAreMatched() {
        WaveformResult first = noisy(NullDepthTest::cubed, 0.1, 7).measured();
        WaveformResult second = noisy(p -> 2 * cubed(p), 0.3, 8).measured();
        for (int order = 1; order <= 3; order++) {
            Measured.Value before =
                    HarmonicAtEqualLevel.of(first, order).asValue().orElseThrow();
            Measured.Value after =
                    HarmonicAtEqualLevel.of(second, order).asValue().orElseThrow();
            double uncertainty = 2 * Math.hypot(before.standardUncertainty(), after.standardUncertainty());
            assertThat(after.number()).isCloseTo(before.number(), within(1.5 * uncertainty));
            assertThat(uncertainty).isLessThan(0.1);
        }
    }
}
