package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.job.Bench;
import clipwitness.job.Clipper;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperLeg;
import clipwitness.measure.clipper.ClippingPair;
import clipwitness.measure.clipper.DeviceLaw;
import clipwitness.measure.clipper.JunctionUncertainty;
import clipwitness.measure.junction.JunctionModel;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Inputs of 0.1 V peak; the output is a v(G x) + b x, the node by its equation, with 1 mV of noise on each of 125 points. */
class PathPredictorTest {
    private static final int POINTS = 125;
    private static final double PEAK = 0.1;
    private static final double NOISE = 1e-3;
    private static final ClipperLeg LEG =
            new ClipperLeg(List.of(DeviceLaw.of(new JunctionModel(2.5e-9, 1.75 * 0.0256926, 0.6, 0))));
    private static final ClipperCircuit CIRCUIT = new ClipperCircuit.Shunt(new ClippingPair(LEG, LEG), 2200);
    private static final JunctionUncertainty EXACT = new JunctionUncertainty(0, 0);

    private static double paths(double clipped, double gain, double clean, double x) {
        return clipped * CIRCUIT.outputAt(gain * x) + clean * x;
    }

    /** Share of the clean path in the fundamental, by projection on a sine. */
    private static double share(double clipped, double gain, double clean) {
        double both = IntStream.range(0, 1000)
                .mapToDouble(i -> Math.sin(2 * Math.PI * (i + 0.5) / 1000))
                .map(s -> s * paths(clipped, gain, clean, PEAK * s) / 500)
                .sum();
        return clean * PEAK / both;
    }

    private static MadeUpCapture wave(DoubleUnaryOperator output) {
        Random random = new Random(11);
        Samples input = Samples.of(IntStream.range(0, POINTS)
                .mapToDouble(i -> PEAK * Math.sin(Math.PI * ((i + 0.5) / POINTS - 0.5)))
                .toArray());
        Samples noisy = input.map(x -> output.applyAsDouble(x) + NOISE * random.nextGaussian());
        return MadeUpCapture.ordinary("new", 50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, PEAK, 1e-6)
                .transfer(new TransferCurve(input, noisy, 0, false))
                .cycle(new CycleTrace(noisy, 0, NOISE * Math.sqrt(2)));
    }

    private static PathPredictor predictor(OptionalDouble outputGain, MadeUpCapture... captures) {
        Clipper clipper = new Clipper(
                Clipper.Topology.SHUNT,
                OptionalDouble.of(2200),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Clipper.GainControl.SERIES,
                outputGain,
                Optional.of("open"),
                false,
                Map.of());
        List<CaptureResult> results =
                Stream.of(captures).map(MadeUpCapture::done).toList();
        Catalogue catalogue = Catalogue.of(results, s -> s);
        OptionalDouble none = OptionalDouble.empty();
        Bench bench = new Bench(none, none, none, none, List.of(), 0.03, 0.01, 0.005);
        return new PathPredictor(clipper, catalogue, new Repeatability(catalogue, bench));
    }

    private static Optional<StatePrediction.Paths> shown(MadeUpCapture setting, ClipperCircuit circuit) {
        return predictor(OptionalDouble.of(1), setting).shown(setting.setting(), circuit, EXACT);
    }

    @Test
    void aCleanPathThatTheSheetDoesNotNameIsShownWithItsShare() {
        StatePrediction.Paths paths =
                shown(wave(x -> paths(0.6, 60, 6, x)), CIRCUIT).orElseThrow();
        assertThat(paths.stated()).isFalse();
        assertThat(paths.cleanShare().value().orElseThrow())
                .isCloseTo(
                        share(0.6, 60, 6),
                        within(2 * paths.cleanShare().expandedUncertainty().orElseThrow()));
        assertThat(paths.gain().value().orElseThrow()).isCloseTo(60, within(6.0));
        assertThat(paths.clipped().value().orElseThrow()).isCloseTo(0.6, within(0.03));
        assertThat(paths.clean().value().orElseThrow()).isCloseTo(6, within(0.3));
    }

    /** What remains is the noise: once over itself, and 1 mV over an rms of 0.7 V. */
    @Test
    void whatBothPathsLeaveIsTheNoise() {
        StatePrediction.Paths paths =
                shown(wave(x -> paths(0.6, 60, 6, x)), CIRCUIT).orElseThrow();
        assertThat(paths.remainderOverNoise()).isBetween(0.8, 1.2);
        assertThat(paths.remainderOverSwing()).isCloseTo(paths.remainderOverNoise() * NOISE / 0.7, within(1e-9));
    }

    /** Where b = 2, the slope is 2 at the ends and 38 at the centre, under a tenth of it. */
    @Test
    void aWaveThatHardlyRisesAtItsEndsShowsNone() {
        assertThat(shown(wave(x -> paths(0.6, 60, 2, x)), CIRCUIT)).isEmpty();
        assertThat(shown(wave(x -> paths(0.6, 60, 0, x)), CIRCUIT)).isEmpty();
    }

    @Test
    void aWaveThatRisesAtOneEndShowsNone() {
        assertThat(shown(wave(x -> paths(0.6, 60, x > 0 ? 6 : 0, x)), CIRCUIT)).isEmpty();
        assertThat(shown(wave(x -> paths(0.6, 60, x < 0 ? 6 : 0, x)), CIRCUIT)).isEmpty();
    }

    @Test
    void aWaveThatHardlyClipsAndAStageThatPassesItsSourceOnShowNone() {
        assertThat(shown(wave(x -> paths(0.6, 60, 6, x)).with(WaveformQuantity.THD, 2, 0.01), CIRCUIT))
                .isEmpty();
        ClipperCircuit passing = new ClipperCircuit.Feedback(CIRCUIT.pair(), 1000, 99_000, false);
        assertThat(shown(wave(x -> paths(0.6, 60, 6, x)), passing)).isEmpty();
    }

    /** 0.6 times 60, and 6: the state without clippers has 42 times the input. */
    @Test
    void aStatedCleanPathIsFittedWithTheLevelWithoutClippers() {
        MadeUpCapture setting = wave(x -> paths(0.6, 60, 6, x));
        MadeUpCapture open = MadeUpCapture.ordinary("open", 50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, PEAK, 1e-6)
                .with(WaveformQuantity.FUNDAMENTAL, 42 * PEAK, 1e-4);
        StatePrediction alone = predictor(OptionalDouble.of(1), setting).predict(setting.setting(), CIRCUIT, EXACT);
        StatePrediction both =
                predictor(OptionalDouble.of(1), setting, open).predict(setting.setting(), CIRCUIT, EXACT);
        assertThat(both.paths().orElseThrow().stated()).isTrue();
        assertThat(both.paths().orElseThrow().gain().value().orElseThrow()).isCloseTo(60, within(2.0));
        assertThat(both.paths().orElseThrow().gain().expandedUncertainty().orElseThrow())
                .isLessThan(
                        alone.paths().orElseThrow().gain().expandedUncertainty().orElseThrow());
        assertThat(Said.remark(both.source())).isNotEqualTo(Said.remark(alone.source()));
    }

    @Test
    void withoutAnInputBothPathsCannotBeFitted() {
        MadeUpCapture setting = MadeUpCapture.ordinary("new", 50);
        StatePrediction refused = predictor(OptionalDouble.of(1), setting).predict(setting.setting(), CIRCUIT, EXACT);
        assertThat(refused.figures().get(0).predicted().reason()).contains(Reason.of(DeviceReason.PATHS_WITHOUT_INPUT));
    }

    /** Of the level and the input of both settings: noise of a point from two neighbours of the mean cycle, no less than 0.02 % of the swing. */
    @Test
    void theWaveToExplainHasTheNoiseOfItsCycleAndTheSignOfTheOutput() {
        MadeUpCapture setting = wave(x -> paths(0.6, 60, 6, x));
        assertThat(predictor(OptionalDouble.of(1), setting).wave(setting.setting()))
                .hasValueSatisfying(w -> {
                    assertThat(w.noise()).isCloseTo(NOISE, within(1e-12));
                    assertThat(w.sign()).isEqualTo(1);
                });
        assertThat(predictor(OptionalDouble.of(-1), setting).wave(setting.setting()))
                .hasValueSatisfying(w -> assertThat(w.sign()).isEqualTo(-1));
    }
}
