package clipwitness.measure.transfer;

import static clipwitness.measure.transfer.KnownTransferTest.filtered;
import static clipwitness.measure.transfer.KnownTransferTest.pair;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Branches that part by a known amount, over a sine and over a distorted input. */
class BranchesTest {
    private static final double CYCLE = 2 * Math.PI;

    private static double input(double p) {
        return 1.5 * Math.sin(CYCLE * p) + 0.2 * Math.cos(2 * CYCLE * p);
    }

    /** Where the input falls through the value that it has on its rising side: by halving between its extremes, a quarter and three quarters. */
    private static double fallingLike(double rising) {
        double low = 0.25;
        double high = 0.75;
        for (int halving = 0; halving < 60; halving++) {
            double middle = (low + high) / 2;
            boolean above = input(middle) > input(rising);
            low = above ? middle : low;
            high = above ? high : middle;
        }
        return low;
    }

    /**
     * A straight unit beside a third harmonic of 0.3 V: over equal input the branches differ by that harmonic's two values. The gap is the rms of the difference
     * without its fundamental part over the rms of the swing, here integrated over 4,000 places.
     */
    @Test
    void overADistortedInputTheGapIsTakenAtEqualInput() {
        double square = 0;
        double first = 0;
        int places = 4000;
        for (int i = 0; i < places; i++) {
            double rising = (i + 0.5) / (2 * places) - 0.25;
            double half = 0.15 * (Math.cos(3 * CYCLE * rising) - Math.cos(3 * CYCLE * fallingLike(rising)));
            square += half * half / places;
            first += 2 * half * Math.cos(CYCLE * rising) / places;
        }
        double expected = 200 * Math.sqrt((2 * square - first * first) / (9 + 0.16 + 0.09));
        FittedWave[] waves = pair(p -> 2 * input(p) + 0.3 * Math.cos(3 * CYCLE * p), BranchesTest::input, 1e-5, 31);
        Measured gap = new Branches(waves[0], waves[1]).gap(Corners.NONE);
        assertThat(gap.value().orElseThrow()).isCloseTo(expected, within(0.02));
        assertThat(expected).isBetween(15.0, 21.0);
    }

    /** A curve bent by its square makes other harmonics of a distorted input than of a sine; it has no gap all the same. */
    @Test
    void aCurveHasNoGapOverAnyInput() {
        FittedWave[] waves = pair(p -> 2 * input(p) + 0.3 * input(p) * input(p), BranchesTest::input, 1e-5, 33);
        Measured gap = new Branches(waves[0], waves[1]).gap(Corners.NONE);
        assertThat(gap.asValue().orElseThrow().shown()).isLessThan(0.02);
    }

    /** 0.1 V of a third harmonic's cosine: where the input crosses its mean, one branch lies 0.1 V above and the other below. */
    @Test
    void halfTheDistanceOfTheCrossingsIsABoundOfTheClipLevels() {
        FittedWave[] waves = pair(
                p -> 0.7 + Math.sin(CYCLE * p) + 0.1 * Math.cos(3 * CYCLE * p), p -> Math.sin(CYCLE * p), 1e-5, 35);
        MeanCrossing crossing = MeanCrossing.of(waves[0], new AlignedInput(waves[0], waves[1]));
        assertThat(crossing.value()).isCloseTo(0.7, within(1e-3));
        assertThat(crossing.apart()).isCloseTo(0.1, within(1e-3));
        Extreme up = new Extreme(1.7, 0.25, 1e-6, 0);
        Extreme down = new Extreme(-0.3, 0.75, 1e-6, 0);
        Map<WaveformQuantity, Measured> values = new CurveFigures(waves[0], waves[1], up, down).values();
        assertThat(values.get(WaveformQuantity.CLIP_UP).value().orElseThrow()).isCloseTo(1, within(1e-3));
        assertThat(values.get(WaveformQuantity.CLIP_DOWN).value().orElseThrow()).isCloseTo(1, within(1e-3));
        assertThat(part(values.get(WaveformQuantity.CLIP_UP))).isCloseTo(0.1 / Math.sqrt(3), within(1e-3));
        assertThat(part(values.get(WaveformQuantity.CLIP_DOWN))).isCloseTo(0.1 / Math.sqrt(3), within(1e-3));
        // (u - d) / (u + d) of u + d = 2: 0.1 V of the level is 2 x 0.1 / 2 of it
        assertThat(part(values.get(WaveformQuantity.CLIP_ASYMMETRY))).isCloseTo(10 / Math.sqrt(3), within(0.1));
    }

    private static double part(Measured measured) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == Source.BRANCHES)
                .mapToDouble(c -> c.standardUncertainty())
                .sum();
    }

    /** Twenty-five records: the output at the input's mean scatters as it is stated to, for a gain of 2 whose input is as noisy as its output. */
    @Test
    void theOutputAtTheMeanOfTheInputScattersAsStated() {
        double squares = 0;
        double stated = 0;
        for (int record = 0; record < 25; record++) {
            FittedWave[] waves =
                    pair(p -> 0.5 + 2 * Math.sin(CYCLE * p), p -> Math.sin(CYCLE * p), 0.02, 100 + 2 * record);
            MeanCrossing crossing = MeanCrossing.of(waves[0], new AlignedInput(waves[0], waves[1]));
            squares += Math.pow(crossing.value() - 0.5, 2) / 25;
            stated += crossing.noise() / 25;
            assertThat(crossing.apart()).isLessThan(0.02);
        }
        assertThat(Math.sqrt(squares) / stated).isBetween(0.65, 1.4);
    }

    /** Corners that are drawn scatter about the best ones as their uncertainties say. */
    @Test
    void drawnCornersScatterAsTheirUncertaintySays() {
        DoubleUnaryOperator input = p -> Math.sin(CYCLE * p);
        FittedWave[] waves = pair(filtered(0.3, 0.12), input, 0.01, 10);
        CornerSearch search = new CornerSearch(new Branches(waves[0], waves[1]));
        Random random = new Random(1);
        int draws = 4000;
        double low = 0;
        double high = 0;
        double lowSquare = 0;
        double highSquare = 0;
        for (int i = 0; i < draws; i++) {
            Corners drawn = search.drawn(random);
            double l = (drawn.low() - search.best().low()) / search.uncertainty()[0];
            double h = (drawn.high() - search.best().high()) / search.uncertainty()[1];
            low += l / draws;
            high += h / draws;
            lowSquare += l * l / draws;
            highSquare += h * h / draws;
        }
        assertThat(low).isCloseTo(0, within(0.06));
        assertThat(high).isCloseTo(0, within(0.06));
        assertThat(Math.sqrt(lowSquare)).isCloseTo(1, within(0.05));
        assertThat(Math.sqrt(highSquare)).isCloseTo(1, within(0.05));
        assertThat(search.uncertainty()[0]).isBetween(1e-4, 0.02);
        assertThat(search.uncertainty()[1]).isBetween(1e-4, 0.02);
    }
}
