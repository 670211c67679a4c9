package clipwitness.measure.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Crossings of waves whose zeros are known, and how far they move with one bin. */
class ZeroCrossingTest {
    private static double[] cycle(int bins, IntToDoubleFunction value) {
        return IntStream.range(0, bins).mapToDouble(value).toArray();
    }

    /** Peaks of ±1 at bins 10.3 and 30.3: slope ±0.1 a bin, zeros at 20.3 and 0.3. */
    private static double[] triangle() {
        return cycle(40, i -> 1 - 0.1 * Math.min(Math.abs(i - 10.3), Math.abs(i - 50.3)));
    }

    /** Five bins lie from the last above 0.15 to the first below -0.15: the one farthest from zero is left out. */
    @Test
    void theZerosOfATriangleAreFoundFromFourBins() {
        ZeroCrossing after = ZeroCrossing.of(triangle(), 10, 1, 1).orElseThrow();
        assertThat(after.place()).isCloseTo(20.3, within(1e-9));
        assertThat(after.slope()).isCloseTo(-0.1, within(1e-9));
        assertThat(List.of(after.from(), after.to())).containsExactly(19, 22);
        ZeroCrossing before = ZeroCrossing.of(triangle(), 10, -1, 1).orElseThrow();
        assertThat(before.place()).isCloseTo(0.3, within(1e-9));
        assertThat(before.slope()).isCloseTo(0.1, within(1e-9));
        assertThat(List.of(before.from(), before.to())).containsExactly(-1, 2);
    }

    /** 0.02 a bin, peak at 50.3: 0.146 at bin 93 and -0.134 at bin 107 are the outermost within 0.15. */
    @Test
    void aSlowEdgeIsFoundFromAllBinsNearZero() {
        double[] slow = cycle(200, i -> 1 - 0.02 * Math.min(Math.abs(i - 50.3), Math.abs(i - 250.3)));
        ZeroCrossing crossing = ZeroCrossing.of(slow, 50, 1, 1).orElseThrow();
        assertThat(List.of(crossing.from(), crossing.to())).containsExactly(93, 107);
        assertThat(crossing.place()).isCloseTo(100.3, within(1e-9));
        ZeroCrossing ofSmall = ZeroCrossing.of(slow, 50, 1, 0.5).orElseThrow();
        assertThat(List.of(ofSmall.from(), ofSmall.to())).containsExactly(97, 104);
    }

    /** (x - 100.3)(x - 300) / 4000 falls through zero at 100.3 with a slope of -199.7 / 4000. */
    @Test
    void aParabolaIsFoundExactly() {
        double[] bent = cycle(200, i -> i < 50 ? 1 : (i - 100.3) * (i - 300) / 4000.0);
        ZeroCrossing crossing = ZeroCrossing.of(bent, 60, 1, 1).orElseThrow();
        assertThat(crossing.place()).isCloseTo(100.3, within(1e-9));
        assertThat(crossing.slope()).isCloseTo(-199.7 / 4000, within(1e-9));
    }

    /** From one level to its opposite within one bin. */
    @Test
    void aSteepEdgeCrossesBetweenItsBins() {
        double[] square = cycle(40, i -> i < 20 ? 1 : -1);
        assertThat(ZeroCrossing.of(square, 10, 1, 1).orElseThrow().place()).isCloseTo(19.5, within(1e-9));
        assertThat(ZeroCrossing.of(square, 10, -1, 1).orElseThrow().place()).isCloseTo(-0.5, within(1e-9));
    }

    @Test
    void aCycleAboveZeroHasNone() {
        assertThat(ZeroCrossing.of(cycle(40, i -> 1 + 0.1 * (i % 3)), 10, 1, 1)).isEmpty();
        assertThat(ZeroCrossing.of(cycle(40, i -> i == 20 ? 0.1 : 1), 10, 1, 1)).isEmpty();
    }

    /** Each bin raised by a millionth, one after the other. */
    @Test
    void thePlaceMovesWithEachBinAsStated() {
        double[] clipped = cycle(120, i -> Math.max(-0.6, Math.min(1, 1.7 * Math.sin(2 * Math.PI * (i - 3.37) / 120))));
        for (double[] swing : List.of(clipped, triangle(), cycle(40, i -> i < 20 ? 1 : -0.8))) {
            for (int side : new int[] {1, -1}) {
                int top = swing.length / 4;
                ZeroCrossing crossing = ZeroCrossing.of(swing, top, side, 0.7).orElseThrow();
                for (int bin = crossing.from() - 2; bin <= crossing.to() + 2; bin++) {
                    double[] raised = swing.clone();
                    raised[Math.floorMod(bin, swing.length)] += 1e-6;
                    double moved = ZeroCrossing.of(raised, top, side, 0.7)
                                    .orElseThrow()
                                    .place()
                            - crossing.place();
                    assertThat(crossing.sensitivity(bin)).isCloseTo(moved / 1e-6, within(2e-4));
                }
            }
        }
    }
}
