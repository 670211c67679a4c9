package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.TransferCurve;
import org.junit.jupiter.api.Test;

class LevelOverDriveTest {
    /**
     * hard-clipped-sine.csv: clipped at 0.2 of its peak a sine has an rms of 0.191288 of the peak, at 0.5 one of 0.442155. A limiter at 0.2 V
     * gives 0.191288 V for 1 V and 0.4 times 0.442155 V for 0.4 V: 0.6810 dB less.
     */
    @Test
    void aLimiterDrivenFiveTimesLoses0Point6810DecibelsOnTheWayToTwoAndAHalf() {
        assertThat(LevelOverDrive.change(limiter(0.2), 1, 0.4)).isCloseTo(-0.6810, within(1e-3));
    }

    /** 20 lg 0.4 = -7.9588 dB. */
    @Test
    void aStraightCurveFollowsTheDrive() {
        assertThat(LevelOverDrive.change(limiter(2), 1, 0.4)).isCloseTo(-7.9588, within(1e-4));
    }

    @Test
    void aDriveThatRisesIsNoQuestion() {
        assertThatThrownBy(() -> LevelOverDrive.change(limiter(2), 0.4, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the drive must fall to a peak above 0 but goes 0.4 to 1.0");
    }

    private static TransferCurve limiter(double level) {
        double[] x = new double[2001];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = (i - 1000) / 1000.0;
            y[i] = Math.max(-level, Math.min(level, x[i]));
        }
        return new TransferCurve(Samples.of(x), Samples.of(y), 0, false);
    }
}
