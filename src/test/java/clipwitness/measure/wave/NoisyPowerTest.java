package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Powers of noisy amplitudes, against the noncentral chi-squared distribution and drawn noise. */
class NoisyPowerTest {
    /** Amplitude 3 and quadratures of variance 0.25: 20000 squares have the stated mean and variance within three standard errors. */
    @Test
    void squaresOfANoisyAmplitudeHaveTheStatedMeanAndVariance() {
        Random random = new Random(1);
        double sum = 0;
        double squares = 0;
        int draws = 20000;
        for (int i = 0; i < draws; i++) {
            double found = Math.hypot(3 + 0.5 * random.nextGaussian(), 0.5 * random.nextGaussian());
            double power = NoisyPower.ofAmplitude(found, 0.25, 0.25).power();
            sum += power;
            squares += (power - 9) * (power - 9);
        }
        assertThat(sum / draws).isCloseTo(9, within(0.07));
        double stated = NoisyPower.ofAmplitude(Math.sqrt(9.5), 0.25, 0.25).variance();
        assertThat(squares / draws).isCloseTo(stated, within(0.04 * stated));
    }

    /** The same for one quadrature. */
    @Test
    void squaresOfANoisyQuadratureHaveTheStatedMeanAndVariance() {
        Random random = new Random(2);
        double sum = 0;
        double squares = 0;
        int draws = 20000;
        for (int i = 0; i < draws; i++) {
            double power = NoisyPower.ofQuadrature(1 + 0.8 * random.nextGaussian(), 0.64, 0.64)
                    .power();
            sum += power;
            squares += (power - 1) * (power - 1);
        }
        assertThat(sum / draws).isCloseTo(1, within(0.04));
        double stated = NoisyPower.ofQuadrature(Math.sqrt(1.64), 0.64, 0.64).variance();
        assertThat(squares / draws).isCloseTo(stated, within(0.06 * stated));
    }

    /** 5² less twice 0.5 is 24; 4 x 24 x 2 + 4 x 2² = 208. Of one quadrature: 24.5; 4 x 24.5 x 2 + 2 x 2² = 204. */
    @Test
    void theRandomPartIsTakenOffAndTheWholeIsUncertain() {
        assertThat(NoisyPower.ofAmplitude(5, 0.5, 2)).isEqualTo(new NoisyPower(24, 208, 4, 2));
        assertThat(NoisyPower.ofQuadrature(5, 0.5, 2)).isEqualTo(new NoisyPower(24.5, 204, 2, 2));
        assertThat(NoisyPower.ofAmplitude(0, 1, 3)).isEqualTo(new NoisyPower(-2, 36, 9, 3));
        assertThat(NoisyPower.ofQuadrature(0, 1, 3)).isEqualTo(new NoisyPower(-1, 18, 4.5, 3));
    }

    @Test
    void powersAddAndScaleAsIndependentOnes() {
        NoisyPower one = new NoisyPower(24, 208, 4, 2);
        NoisyPower other = new NoisyPower(10, 8, 1, 3);
        assertThat(one.plus(other)).isEqualTo(new NoisyPower(34, 216, 5, 3));
        assertThat(one.times(2)).isEqualTo(new NoisyPower(48, 832, 16, 4));
    }

    /** L - 24 = 2 sqrt(4 L 2 + 4 x 5), solved: L = 40 + sqrt(40² - 24² + 80) = 73.226. Below zero counts as zero: 16 + sqrt(256 + 80) = 34.330. */
    @Test
    void theLargestTruePowerLiesTwoOfItsOwnStandardDeviationsAbove() {
        double largest = Math.pow(new NoisyPower(24, 100, 5, 2).largestAmplitude(), 2);
        assertThat(largest).isCloseTo(73.2265, within(1e-4));
        assertThat(largest - 24).isCloseTo(2 * Math.sqrt(8 * largest + 20), within(1e-9));
        assertThat(Math.pow(new NoisyPower(-7, 100, 5, 2).largestAmplitude(), 2))
                .isCloseTo(34.3303, within(1e-4));
        assertThat(new NoisyPower(-7, 100, 5, 2).amplitude()).isZero();
        assertThat(new NoisyPower(49, 100, 5, 2).amplitude()).isEqualTo(7);
    }

    /** Noise alone has a standard deviation of 2 sqrt 4 = 4: twice that is 8. */
    @Test
    void aPowerOfTwiceTheStandardDeviationOfNoiseIsBuried() {
        assertThat(new NoisyPower(8, 1, 4, 2).isBuried()).isTrue();
        assertThat(new NoisyPower(8.01, 1, 4, 2).isBuried()).isFalse();
        assertThat(new NoisyPower(8.01, 64.2, 4, 2).isBuried()).isTrue();
        assertThat(new NoisyPower(10, 100, 0, 2).isBuried()).isTrue();
        assertThat(new NoisyPower(10, 99, 0, 2).isBuried()).isFalse();
    }

    /** u of the power 4 / (2 x 5) = 0.4 of the amplitude, so U = 0.8; a buried one reaches up to the largest. */
    @Test
    void theAmplitudeIsHalfAsUncertainAsThePowerOverIt() {
        assertThat(new NoisyPower(25, 16, 1, 1).expandedAmplitude()).isCloseTo(0.8, within(1e-12));
        NoisyPower buried = new NoisyPower(1, 16, 4, 2);
        assertThat(buried.expandedAmplitude()).isCloseTo(buried.largestAmplitude() - 1, within(1e-12));
        assertThat(new NoisyPower(25, 700, 0, 0).expandedAmplitude()).isEqualTo(5);
    }

    /** 5 ± 0.4 over 20 ± 1, in percent: 25, relative 0.08 and 0.05 together 9.434 %. */
    @Test
    void aRatioIsUncertainByBoth() {
        Measured.Value ratio = new NoisyPower(25, 16, 1, 1).over(20, 1, 100, Unit.PERCENT);
        assertThat(ratio.number()).isCloseTo(25, within(1e-12));
        assertThat(ratio.standardUncertainty()).isCloseTo(25 * 0.0943398, within(1e-5));
        assertThat(ratio.isUpperBound()).isFalse();
        assertThat(ratio.unit()).isEqualTo(Unit.PERCENT);
        assertThat(new NoisyPower(1, 16, 4, 2).over(20, 1, 100, Unit.PERCENT).isUpperBound())
                .isTrue();
    }

    /** 5 over 50 is -20 dB; relative 0.08 and 0.02 are 8.6859 x 0.082462 dB. */
    @Test
    void aLevelIsUncertainByBoth() {
        Measured.Value level = level(new NoisyPower(25, 16, 1, 1));
        assertThat(level.number()).isCloseTo(-20, within(1e-12));
        assertThat(level.standardUncertainty()).isCloseTo(8.685890 * 0.0824621, within(1e-5));
        assertThat(level.isUpperBound()).isFalse();
    }

    /** Nothing but noise stands at half the largest amplitude, half of 6.02 dB uncertain, so that value and U reach the largest. */
    @Test
    void aBuriedLevelReachesUpToTheLargestAmplitude() {
        NoisyPower nothing = new NoisyPower(-7, 100, 5, 2);
        Measured.Value level = level(nothing);
        assertThat(level.isUpperBound()).isTrue();
        assertThat(level.number()).isCloseTo(20 * Math.log10(Math.sqrt(34.3303) / 2 / 50), within(1e-4));
        assertThat(level.standardUncertainty()).isCloseTo(Math.hypot(3.0103, 8.685890 * 0.02), within(1e-4));
        NoisyPower little = new NoisyPower(9, 400, 5, 2);
        assertThat(little.isBuried()).isTrue();
        assertThat(level(little).number()).isCloseTo(20 * Math.log10(little.largestAmplitude() / 2 / 50), within(1e-9));
        assertThat(NoisyPower.ZERO.levelOver(50, 1, Unit.DBC, FigureReason.NO_SUCH_HARMONIC))
                .isInstanceOf(Measured.Refused.class);
    }

    /** An amplitude of 10 with u = 3.5 is faint, with u = 2.45 it is not; a level over the fundamental is a bound where it is. */
    @Test
    void anAmplitudeBelowThreeTimesItsUncertaintyHasNoInterval() {
        NoisyPower third = new NoisyPower(100, 70 * 70, 0.1, 1);
        NoisyPower quarter = new NoisyPower(100, 49 * 49, 0.1, 1);
        assertThat(third.isFaint()).isTrue();
        assertThat(quarter.isBuried()).isFalse();
        assertThat(quarter.isFaint()).isFalse();
        assertThat(bounded(third)).isTrue();
        assertThat(bounded(quarter)).isFalse();
    }

    private static boolean bounded(NoisyPower power) {
        return power.harmonicLevelOver(50, 1, FigureReason.NO_SUCH_HARMONIC)
                .asValue()
                .orElseThrow()
                .isUpperBound();
    }

    private static Measured.Value level(NoisyPower power) {
        return power.levelOver(50, 1, Unit.DBC, FigureReason.NO_SUCH_HARMONIC)
                .asValue()
                .orElseThrow();
    }
}
