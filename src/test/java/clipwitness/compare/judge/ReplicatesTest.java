package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.Said;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReplicatesTest {
    /** JCGM 100:2008, 4.2.3: the mean of n independent readings has the root of n times less uncertainty. */
    @Test
    void noiseOfFourReadingsHalves() {
        Measured mean = Replicates.mean(List.of(volts(1), volts(2), volts(3), volts(4)));
        assertThat(mean.value().orElseThrow()).isEqualTo(2.5);
        assertThat(mean.expandedUncertainty().orElseThrow()).isCloseTo(0.1, within(1e-15));
    }

    /** JCGM 100:2008, 5.2.2, example: what is common to all readings does not average out. */
    @Test
    void verticalAccuracyDoesNotAverageOut() {
        Measured.Value reading = Measured.of(1, Unit.VOLT, new Contribution(Source.VERTICAL_ACCURACY, 0.1));
        Measured mean = Replicates.mean(List.of(reading, reading, reading, reading));
        assertThat(mean.expandedUncertainty().orElseThrow()).isCloseTo(0.2, within(1e-15));
    }

    @Test
    void refusalsAreLeftOutAndStandAloneWhereNothingElseIs() {
        Measured refused = Measured.refused(Unit.VOLT, FigureReason.CAPTURE_NOT_MEASURED);
        assertThat(Replicates.mean(List.of(refused, volts(3))).value()).hasValue(3);
        assertThat(Said.reason(Replicates.mean(List.of(refused, refused)).reason()))
                .contains("the capture could not be measured");
    }

    @Test
    void anglesOnBothSidesOf180DegreesAverageTo180() {
        Measured mean = Replicates.mean(
                List.of(Measured.withNoise(179, Unit.DEGREE, 0.1), Measured.withNoise(-179, Unit.DEGREE, 0.1)));
        assertThat(Math.abs(mean.value().orElseThrow())).isCloseTo(180, within(1e-12));
    }

    /** Amplitudes below 0.2 and below 0.4 lie below 0.3 on average: 20 lg 0.3 = -10.4576 dB. */
    @Test
    void besideALevelThatNoiseBoundsTheMeanIsABound() {
        Measured mean = Replicates.mean(List.of(
                Measured.withNoise(-60, Unit.DBC, (60 + 20 * Math.log10(0.2)) / 2)
                        .asUpperBound(),
                Measured.withNoise(20 * Math.log10(0.2), Unit.DBC, 10 * Math.log10(2))));
        assertThat(mean.asValue().orElseThrow().isUpperBound()).isTrue();
        assertThat(mean.asValue().orElseThrow().shown()).isCloseTo(-10.4576, within(1e-4));
    }

    private static Measured volts(double value) {
        return Measured.withNoise(value, Unit.VOLT, 0.1);
    }
}
