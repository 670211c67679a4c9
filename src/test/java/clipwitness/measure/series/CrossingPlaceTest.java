package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Measurement book, section 3: a place between captured points, and how far it may be off. */
class CrossingPlaceTest {
    private static final double[] X = {0, 10, 20, 30};
    private static final double[] BENT = {0, 1, 4, 9};

    private static CrossingPlace place(double[] x, double[] y, double level) {
        return CrossingPlace.of(x, y, level).orElseThrow();
    }

    @Test
    void onAStraightLineThePlaceIsExact() {
        CrossingPlace place = place(X, new double[] {0, 1, 2, 3}, 1.7);
        assertThat(place.at()).isCloseTo(17, within(1e-9));
        assertThat(place.above()).isEqualTo(2);
        assertThat(place.bound()).isCloseTo(0, within(1e-9));
    }

    @Test
    void betweenTwoPointsAloneItMayLieAtTheFartherOne() {
        double[] two = {0, 10};
        assertThat(place(two, new double[] {0, 1}, 0.3).bound()).isCloseTo(7, within(1e-9));
        assertThat(place(two, new double[] {0, 1}, 0.8).bound()).isCloseTo(8, within(1e-9));
    }

    /** At 2 the point at 0 is the next-nearest, at 3.8 that at 30; the chord from 10 to 20 reaches them at 13.33 and 19.33. */
    @Test
    void onABentCurveChordAndNextNearestPointBoundIt() {
        CrossingPlace low = place(X, BENT, 2);
        double withoutFirst =
                place(new double[] {10, 20, 30}, new double[] {1, 4, 9}, 2).at();
        assertThat(low.at()).isBetween(13.34, 14.99);
        assertThat(low.bound()).isCloseTo(low.at() - 40.0 / 3 + Math.abs(low.at() - withoutFirst), within(1e-9));
        CrossingPlace high = place(X, BENT, 3.8);
        double withoutLast =
                place(new double[] {0, 10, 20}, new double[] {0, 1, 4}, 3.8).at();
        assertThat(high.at()).isBetween(19.34, 19.99);
        assertThat(high.bound()).isCloseTo(high.at() - 58.0 / 3 + Math.abs(high.at() - withoutLast), within(1e-9));
    }

    @Test
    void aLevelBeyondThePointsHasNoPlace() {
        assertThat(CrossingPlace.of(X, BENT, 9.1)).isEmpty();
        assertThat(CrossingPlace.of(X, BENT, -0.1)).isEmpty();
    }
}
