package clipwitness.measure.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import org.junit.jupiter.api.Test;

/** Shares of bins in a band and straight lines over gaps. */
class BandAndGapsTest {
    private static final Band BAND = new Band(20, 100);

    @Test
    void aBinLiesInTheBandByItsWidth() {
        assertThat(BAND.share(50, 10)).isEqualTo(1);
        assertThat(BAND.share(20, 10)).isCloseTo(0.5, within(1e-12));
        assertThat(BAND.share(102, 10)).isCloseTo(0.3, within(1e-12));
        assertThat(BAND.share(18, 10)).isCloseTo(0.3, within(1e-12));
        assertThat(BAND.share(110, 10)).isZero();
        assertThat(BAND.share(10, 10)).isZero();
        assertThat(BAND.share(60, 160)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aLineLiesInTheBandWithBothEnds() {
        assertThat(BAND.share(20, 0)).isEqualTo(1);
        assertThat(BAND.share(100, 0)).isEqualTo(1);
        assertThat(BAND.share(19.9, 0)).isZero();
        assertThat(BAND.share(100.1, 0)).isZero();
    }

    @Test
    void bandsOverlap() {
        assertThat(BAND.and(new Band(50, 300))).isEqualTo(new Band(50, 100));
        assertThat(BAND.and(new Band(0, 60))).isEqualTo(new Band(20, 60));
        assertThatThrownBy(() -> BAND.and(new Band(100, 300))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(-1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(1, Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void gapsAreFilledStraight() {
        double n = Double.NaN;
        assertThat(Gaps.filled(Samples.of(new double[] {n, n, 2, n, n, n, 10, 4, n}))
                        .toArray())
                .containsExactly(new double[] {2, 2, 2, 4, 6, 8, 10, 4, 4}, within(1e-12));
        Samples whole = Samples.of(new double[] {1, 2, 3});
        assertThat(Gaps.filled(whole)).isSameAs(whole);
    }
}
