package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Intervals of changes in dB near noise: 20 lg of the ends of the two amounts, which every expectation here is worked out from by hand. */
class LevelChangeTest {
    /** 20 lg(20 % / 0.2 %) = 40 dB: distortion of 20 % that fell to what lies below 0.2 % fell by at least that. */
    @Test
    @DisplayName("From 20 % to below 0.2 % is at least 40 dB")
    void twentyPercentToBelowAFifthOfOneIsAtLeastFortyDecibels() {
        Measured.Value change = fallTo(Measured.withNoise(0, Unit.PERCENT, 0.1).asUpperBound(), -50);
        assertThat(least(change)).isCloseTo(40, within(1e-9));
    }

    /** 23 % to 0.14 ± 0.09 %: 20 lg(23 / 0.23) = 40 dB at least; to first order ± 5.6 dB about 44.3 dB would be 38.7. */
    @Test
    void aFallIsAtLeastWhatTheUpperEndOfTheLaterAmountSays() {
        LevelSide before = LevelSide.ofFirstOrder(Measured.of(20 * Math.log10(23), Unit.DECIBEL), List.of());
        Measured.Value after = Measured.withNoise(0.14, Unit.PERCENT, 0.045);
        Measured.Value change = LevelChange.of(before, LevelSide.ofAmount(20 * Math.log10(0.14), after), List.of());
        assertThat(change.number()).isCloseTo(-44.31, within(0.01));
        assertThat(least(change)).isCloseTo(40, within(1e-9));
    }

    /** From 0.14 ± 0.09 % up to 23 % it is the same, the earlier amount's upper end deciding. */
    @Test
    void aRiseIsAtLeastWhatTheUpperEndOfTheEarlierAmountSays() {
        Measured.Value before = Measured.withNoise(0.14, Unit.PERCENT, 0.045);
        Measured.Value change = LevelChange.of(
                LevelSide.ofAmount(20 * Math.log10(0.14), before),
                LevelSide.ofFirstOrder(Measured.of(20 * Math.log10(23), Unit.DECIBEL), List.of()),
                List.of());
        assertThat(least(change)).isCloseTo(40, within(1e-9));
    }

    @Test
    @DisplayName("Between two amounts that may both be nothing no change is known, however far apart they were read")
    void betweenTwoBoundsNoChangeIsKnown() {
        LevelSide before =
                LevelSide.ofAmount(0, Measured.withNoise(1, Unit.PERCENT, 0.6).asUpperBound());
        LevelSide after = LevelSide.ofAmount(
                -60, Measured.withNoise(0.001, Unit.PERCENT, 0.001).asUpperBound());
        Measured.Value change = LevelChange.of(before, after, List.of());
        assertThat(Math.abs(change.number())).isLessThan(change.expanded());
    }

    /** An amplitude of 1 ± 0.5 reaches down to half of it, 6.02 dB, and up to 1.5 of it, 3.52 dB. */
    @Test
    void anAmplitudeKnownToHalfReachesSixDecibelsDownAndThreeAndAHalfUp() {
        LevelEnds ends = LevelEnds.ofFirstOrder(0.5 * 20 / Math.log(10));
        assertThat(ends.below()).isCloseTo(6.02, within(0.005));
        assertThat(ends.above()).isCloseTo(3.52, within(0.005));
    }

    /** Where two levels are known to a thousandth, first order and ends agree to a thousandth: sqrt 2 times 8.686 dB / 1000. */
    @Test
    void farFromNoiseTheIntervalIsThatOfFirstOrder() {
        double known = 8.686e-3;
        Measured.Value level = Measured.withNoise(3, Unit.DECIBEL, known / 2);
        Measured.Value change = LevelChange.of(
                LevelSide.ofFirstOrder(level, List.of()), LevelSide.ofFirstOrder(level, List.of()), List.of());
        assertThat(change.expanded()).isCloseTo(1.4142 * known, within(2e-3 * known));
    }

    private static Measured.Value fallTo(Measured.Value after, double level) {
        LevelSide before = LevelSide.ofFirstOrder(Measured.of(20 * Math.log10(20), Unit.DECIBEL), List.of());
        return LevelChange.of(before, LevelSide.ofAmount(level, after), List.of());
    }

    private static double least(Measured.Value change) {
        return Math.abs(change.number()) - change.expanded();
    }
}
