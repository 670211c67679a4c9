package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Measurement book, section 5: a slope, and as its bound the largest difference to the chords beside it. */
class GainSlopeTest {
    private static final double[] GAINS = {0, 25, 50};
    private static final double[] KNOWN = {0, 0, 0};

    /** Chords of 0.04 and 0.12 of equal width: their harmonic mean (Fritsch and Butland 1984) is 0.06. */
    @Test
    void theSlopeBetweenUnlikeChordsIsKnownToTheFartherOne() {
        GainSlope bent = GainSlope.at(GAINS, new double[] {0, 1, 4}, KNOWN, 1);
        assertThat(bent.slope()).isCloseTo(0.06, within(1e-12));
        assertThat(bent.bound()).isCloseTo(0.06, within(1e-12));
        assertThat(bent.isWellKnown()).isFalse();
    }

    @Test
    void theSlopeOfAStraightLineIsExactAtEachSetting() {
        for (int i = 0; i < 3; i++) {
            GainSlope line = GainSlope.at(GAINS, new double[] {3, 2, 1}, KNOWN, i);
            assertThat(line.slope()).isCloseTo(-0.04, within(1e-12));
            assertThat(line.bound()).isCloseTo(0, within(1e-12));
            assertThat(line.isWellKnown()).isTrue();
        }
    }

    /** Two settings have one chord, which may be wrong by itself: its root mean square is 2 / sqrt 3 times as much. */
    @Test
    void theOneChordOfTwoSettingsMayBeWrongByItself() {
        GainSlope chord = GainSlope.at(new double[] {0, 50}, new double[] {0, -2}, new double[2], 1);
        assertThat(chord.slope()).isCloseTo(-0.04, within(1e-12));
        assertThat(chord.bound()).isCloseTo(0.04, within(1e-12));
        assertThat(chord.effective()).isCloseTo(0.04 * 2 / Math.sqrt(3), within(1e-12));
    }

    /** A neighbour 25 % away that is known to 0.5 only may lie on a chord that is 0.02 steeper; the setting's own half width is that of the figure. */
    @Test
    void aNeighbourThatIsHardlyKnownWidensTheBound() {
        double[] line = {3, 2, 1};
        assertThat(GainSlope.at(GAINS, line, new double[] {0, 0, 0.5}, 1).bound())
                .isCloseTo(0.02, within(1e-12));
        assertThat(GainSlope.at(GAINS, line, new double[] {0.5, 0, 0}, 1).bound())
                .isCloseTo(0.02, within(1e-12));
        assertThat(GainSlope.at(new double[] {0, 50}, new double[] {0, 2}, new double[] {1, 0}, 1)
                        .bound())
                .isCloseTo(0.04 + 0.02, within(1e-12));
    }

    /** A bound of 1.7 is u = 0.98, under a third of 3; 1.75 is 1.01. */
    @Test
    void aSlopeIsWellKnownUpToAThirdOfIt() {
        assertThat(new GainSlope(-3, 1.7).isWellKnown()).isTrue();
        assertThat(new GainSlope(3, 1.75).isWellKnown()).isFalse();
    }

    @Test
    void inAnotherUnitTheBoundStaysPositive() {
        assertThat(new GainSlope(3, 1.5).times(-2)).isEqualTo(new GainSlope(-6, 3));
    }
}
