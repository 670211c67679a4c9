package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeightedPointsTest {
    private static final WeightedPoints CYCLE =
            new WeightedPoints(new double[] {0.1, 0.3, 0.6, 0.9}, new double[] {1, 2, 3, 4}, new double[] {5, 6, 7, 8});

    private static void are(WeightedPoints points, double[] x, double[] y, double[] weights) {
        assertThat(IntStream.range(0, points.size()).mapToDouble(points::x).toArray())
                .containsExactly(x, within(1e-12));
        assertThat(IntStream.range(0, points.size()).mapToDouble(points::y).toArray())
                .containsExactly(y);
        assertThat(IntStream.range(0, points.size()).mapToDouble(points::weight).toArray())
                .containsExactly(weights);
    }

    @Test
    void aCycleMayBeginAtAnyPhase() {
        double[] y = {2, 3, 4, 1};
        double[] weights = {6, 7, 8, 5};
        are(CYCLE.cycleFrom(0.25), new double[] {0.3, 0.6, 0.9, 1.1}, y, weights);
        are(CYCLE.cycleFrom(1.25), new double[] {1.3, 1.6, 1.9, 2.1}, y, weights);
        are(CYCLE.cycleFrom(-0.75), new double[] {-0.7, -0.4, -0.1, 0.1}, y, weights);
    }

    @Test
    void seenFromTheOtherEndBothCoordinatesTurn() {
        are(CYCLE.mirrored(), new double[] {-0.9, -0.6, -0.3, -0.1}, new double[] {-4, -3, -2, -1}, new double[] {
            8, 7, 6, 5
        });
    }

    @Test
    void newAbscissaePutThePointsInTheirOrder() {
        are(
                CYCLE.over(x -> Math.abs(x - 0.5)),
                new double[] {0.1, 0.2, 0.4, 0.4},
                new double[] {3, 2, 1, 4},
                new double[] {7, 6, 5, 8});
    }

    @Test
    void aStretchHoldsThePointsOnItsEnds() {
        are(CYCLE.between(0.3, 0.6), new double[] {0.3, 0.6}, new double[] {2, 3}, new double[] {6, 7});
        assertThat(CYCLE.between(0.31, 0.59).size()).isZero();
    }

    /** A hundred-thousandth of the range apart is one place. */
    @Test
    void pointsOnTopOfOneAnotherStandInOnePlace() {
        double[] x = {0, 1e-5, 0.5, 1};
        WeightedPoints points = new WeightedPoints(x, x, x);
        assertThat(points.placesUpTo(10)).isEqualTo(3);
        assertThat(points.holds(3)).isTrue();
        assertThat(points.holds(4)).isFalse();
        assertThat(points.holds(2, 0.5, 1)).isTrue();
        assertThat(points.holds(2, 0.51, 1)).isFalse();
    }
}
