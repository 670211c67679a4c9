package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Waves of 0.1 V made of both paths outright, the node by its equation, with 1 mV of noise on each of 125 points. */
class PathFitsTest {
    private static final int POINTS = 125;
    private static final double PEAK = 0.1;
    private static final double NOISE = 1e-3;
    private static final ClipperCircuit CIRCUIT = ReferenceClipper.named("one silicon up two in series down");
    private static final JunctionUncertainty EXACT = new JunctionUncertainty(0, 0);

    private static TransferCurve curve(DoubleUnaryOperator output, long seed) {
        Random random = new Random(seed);
        Samples input = Samples.of(IntStream.range(0, POINTS)
                .mapToDouble(i -> PEAK * Math.sin(Math.PI * ((i + 0.5) / POINTS - 0.5)))
                .toArray());
        return new TransferCurve(
                input, input.map(x -> output.applyAsDouble(x) + NOISE * random.nextGaussian()), 0, false);
    }

    private static PathFits fits(DoubleUnaryOperator output, ClipperCircuit circuit, PathFit.Unclipped... known) {
        Optional<PathFit.Unclipped> unclipped = known.length == 0 ? Optional.empty() : Optional.of(known[0]);
        return new PathFits(circuit, new PathFit.Wave(curve(output, 7), NOISE, 1, unclipped), EXACT);
    }

    private static void assertHolds(Measured measured, double truth) {
        double u = measured.asValue().orElseThrow().standardUncertainty();
        assertThat(measured.value().orElseThrow()).isCloseTo(truth, within(3 * u));
    }

    /** Little clipped beside much clean, half and half, much clipped beside little. */
    @ParameterizedTest
    @CsvSource({"12, 0.3, 4", "25, 0.6, 3", "50, 0.9, 0.5"})
    void bothPathsAreFoundWithinTheirUncertainty(double gain, double clipped, double clean) {
        PathFits fits = fits(x -> clipped * CIRCUIT.outputAt(gain * x) + clean * x, CIRCUIT);
        assertHolds(fits.gain(), gain);
        assertHolds(fits.clipped(), clipped);
        assertHolds(fits.clean(), clean);
        assertThat(fits.cleanShare().expandedUncertainty().orElseThrow()).isLessThan(0.1);
        assertThat(fits.remainderOverNoise()).isBetween(0.8, 1.2);
    }

    @Test
    void theShareIsOneWhereTheClipperIsSilentAndNoneWithoutCleanPath() {
        assertHolds(fits(x -> CIRCUIT.outputAt(40 * x), CIRCUIT).cleanShare(), 0);
        assertThat(fits(x -> 0.05 * CIRCUIT.outputAt(40 * x) + 40 * x, CIRCUIT)
                        .cleanShare()
                        .value()
                        .orElseThrow())
                .isBetween(0.98, 0.99);
    }

    @Test
    void aWaveThatIsNotBentTellsNothingOfItsPaths() {
        assertThat(fits(x -> 3 * x, CIRCUIT).cleanShare().reason()).contains(Reason.of(DeviceReason.PATHS_ALIKE));
    }

    /** The level without clippers fixes a G + b: 0.6 * 25 + 3 = 18. */
    @Test
    void theLevelWithoutClippersNarrowsTheGain() {
        DoubleUnaryOperator output = x -> 0.6 * CIRCUIT.outputAt(25 * x) + 3 * x;
        Measured alone = fits(output, CIRCUIT).gain();
        Measured together =
                fits(output, CIRCUIT, new PathFit.Unclipped(18, 0.02)).gain();
        assertHolds(together, 25);
        assertThat(together.expandedUncertainty().orElseThrow())
                .isLessThan(alone.expandedUncertainty().orElseThrow());
    }

    /** The other way round a pair of one against two leaves many times the noise. */
    @Test
    void anotherPairThanTheOneInTheUnitLeavesARemainder() {
        ClippingPair pair = CIRCUIT.pair();
        ClipperCircuit turned = CIRCUIT.with(new ClippingPair(pair.down(), pair.up()));
        assertThat(fits(x -> 0.6 * CIRCUIT.outputAt(25 * x) + 3 * x, turned).remainderOverNoise())
                .isGreaterThan(10);
    }

    /** The table gives the roots that the node's equation has, driven softly and hard, an open leg too. */
    @Test
    void tabulatedNodesAreTheRoots() {
        ClipperCircuit open = CIRCUIT.with(new ClippingPair(CIRCUIT.pair().up(), new ClipperLeg(List.of())));
        for (ClipperCircuit circuit : List.of(CIRCUIT, open)) {
            DoubleUnaryOperator table = circuit.clipped(100);
            for (double v = -99; v < 100; v += 0.37) {
                assertThat(table.applyAsDouble(v)).isCloseTo(circuit.outputAt(v), within(2e-5));
            }
        }
    }

    /** 1 + Rf / Rg and Rf / Rg, with the pair's conductance beside Rf where the gain is that for small signals. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void theResistanceOfAGainControlFollowsFromTheGain(boolean inverting) {
        ClippingPair pair = CIRCUIT.pair();
        ClipperCircuit.Feedback full = new ClipperCircuit.Feedback(pair, 1000, 500_000, inverting);
        ClipperCircuit.Feedback low = new ClipperCircuit.Feedback(pair, 1000, 47_000, inverting);
        ClipperCircuit.Feedback high = new ClipperCircuit.Feedback(pair, 9100, 500_000, inverting);
        double conductance = pair.conductanceAtZero();
        assertThat(full.withFeedbackFor(Math.abs(low.smallSignalGain()), conductance)
                        .orElseThrow()
                        .feedback())
                .isCloseTo(47_000, within(1e-3));
        assertThat(full.withInputFor(Math.abs(high.smallSignalGain()), conductance)
                        .orElseThrow()
                        .input())
                .isCloseTo(9100, within(1e-3));
        assertThat(full.withFeedbackFor(0, 0)).isEmpty();
    }
}
