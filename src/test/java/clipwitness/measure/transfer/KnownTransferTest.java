package clipwitness.measure.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.JointFit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** Transfer curves of units whose curve, delay and filters are known. */
class KnownTransferTest {
    private static final double CYCLE = 2 * Math.PI;

    private static Samples record(DoubleUnaryOperator shape, double noise, long seed) {
        return TestRecord.of(shape)
                .sampled(600.7, 12.31, 0.2)
                .noisy(noise, 0, seed)
                .waveform()
                .samples();
    }

    /** Output and input, the output's cycle beginning where its fundamental rises through zero. */
    static FittedWave[] pair(DoubleUnaryOperator output, DoubleUnaryOperator input, double noise, long seed) {
        List<Samples> both = List.of(record(output, noise, seed), record(input, noise, seed + 1));
        JointFit joint = JointFit.of(both, 1 / 600.7, 20);
        double origin = (-Math.PI / 2 - joint.channels().get(0).phase(1)) / CYCLE;
        return new FittedWave[] {
            FittedWave.of(both.get(0), joint.channels().get(0), origin),
            FittedWave.of(both.get(1), joint.channels().get(1), origin)
        };
    }

    private static FittedWave[] pair(DoubleUnaryOperator curve, double noise) {
        DoubleUnaryOperator input = p -> 0.2 + 1.5 * Math.sin(CYCLE * p);
        return pair(p -> curve.applyAsDouble(input.applyAsDouble(p) - 0.2), input, noise, 1);
    }

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    /** Twice the input and 30 degrees later: 6.02 dB. 10 mV over 7394 samples leave 0.1645 mV a quadrature: of 1.5 V and of 3 V 1.226e-4 together. */
    @Test
    void gainAndPhaseAreThoseOfTheFundamental() {
        FittedWave[] waves = pair(p -> 3 * Math.sin(CYCLE * (p - 1 / 12.0)), p -> 1.5 * Math.sin(CYCLE * p), 0.01, 3);
        Measured gain = LinearResponse.gain(waves[0], waves[1]);
        assertThat(gain.value().orElseThrow()).isCloseTo(6.0206, within(0.005));
        assertThat(part(gain, Source.NOISE)).isCloseTo(8.68589 * 1.226e-4, within(0.06e-3));
        Measured phase = LinearResponse.phase(waves[0], waves[1]);
        assertThat(phase.value().orElseThrow()).isCloseTo(-30, within(0.03));
        assertThat(part(phase, Source.NOISE)).isCloseTo(Math.toDegrees(1.226e-4), within(0.4e-3));
        assertThat(LinearResponse.inverts(waves[0], waves[1])).isFalse();
        FittedWave[] later = pair(p -> 3 * Math.sin(CYCLE * (p - 0.3)), p -> 1.5 * Math.sin(CYCLE * p), 0.01, 3);
        assertThat(LinearResponse.inverts(later[0], later[1])).isTrue();
        assertThat(LinearResponse.difference(later[0], later[1])).isCloseTo(-0.6 * Math.PI, within(1e-3));
    }

    /** The input with a second harmonic, late by 40 degrees and turned over: over the output's cycle it is 1.5 sin + 0.2 cos of twice the phase. */
    @Test
    void theInputIsAlignedWithTheOutput() {
        DoubleUnaryOperator wave = p -> 1.5 * Math.sin(CYCLE * p) + 0.2 * Math.cos(2 * CYCLE * p);
        FittedWave[] waves = pair(p -> 2 * Math.sin(CYCLE * p), p -> 0.7 - wave.applyAsDouble(p - 1 / 9.0), 1e-4, 5);
        AlignedInput aligned = new AlignedInput(waves[0], waves[1]);
        for (double p = 0; p < 1; p += 0.07) {
            assertThat(aligned.at(p)).isCloseTo(wave.applyAsDouble(p), within(1e-4));
        }
        assertThat(aligned.isSine()).isFalse();
        assertThat(aligned.amplitude()).isCloseTo(1.5, within(1e-4));
        assertThat(aligned.at(aligned.fallingLike(0.07))).isCloseTo(aligned.at(0.07), within(1e-6));
        assertThat(aligned.fallingLike(0.07)).isBetween(0.25, 0.75);
        assertThat(Math.sqrt(aligned.crossingVariance())).isCloseTo(1e-4 * Math.sqrt(2 / 7394.0), within(2e-7));
        AlignedInput sine = new AlignedInput(waves[0], waves[0]);
        assertThat(sine.isSine()).isTrue();
        assertThat(sine.crossingVariance()).isZero();
        assertThat(sine.fallingLike(0.1)).isCloseTo(0.4, within(1e-6));
    }

    @Test
    void theCurveIsTheUnits() {
        DoubleUnaryOperator curve = x -> 0.1 + 2 * x + 0.3 * x * x;
        FittedWave[] waves = pair(curve, 1e-4);
        InputPlaces inputs = new InputPlaces(waves[0], waves[1]);
        Transfer transfer = Transfer.of(waves[0], inputs);
        AveragedCurve averaged = AveragedCurve.of(waves[0], inputs.aligned());
        int last = averaged.input().size() - 1;
        for (int i = 0; i <= last; i += 7) {
            double x = averaged.input().at(i);
            assertThat(averaged.output().at(i)).isCloseTo(curve.applyAsDouble(x), within(1e-3));
        }
        assertThat(averaged.input().at(0)).isCloseTo(-1.5, within(1e-3));
        assertThat(averaged.input().at(last)).isCloseTo(1.5, within(1e-3));
        for (int i = 0; i < transfer.points().size(); i += 13) {
            assertThat(transfer.points().y(i))
                    .isCloseTo(curve.applyAsDouble(transfer.points().x(i)), within(1e-3));
            int turned = transfer.points().size() - 1 - i;
            assertThat(transfer.mirrored().points().x(turned))
                    .isEqualTo(-transfer.points().x(i));
            assertThat(transfer.mirrored().points().y(turned))
                    .isEqualTo(-transfer.points().y(i));
        }
        assertThat(averaged.gap()).isLessThan(1e-3);
        assertThat(transfer.amplitude()).isCloseTo(1.5, within(1e-4));
        assertThat(transfer.scatter()).isCloseTo(1e-4, within(5e-6));
        assertThat(inputs.inverting()).isFalse();
        MeanCrossing middle = MeanCrossing.of(waves[0], inputs.aligned());
        assertThat(middle.value()).isCloseTo(0.1, within(1e-4));
        assertThat(middle.apart()).isLessThan(5e-5);
    }

    /** A cosine of the third harmonic has one sign on the rising branch and the other on the falling one: they part by twice its amplitude. */
    @Test
    void theGapIsTheLargestDistanceOfTheBranches() {
        FittedWave[] waves =
                pair(p -> Math.sin(CYCLE * p) + 0.1 * Math.cos(3 * CYCLE * p), p -> Math.sin(CYCLE * p), 1e-6, 7);
        assertThat(AveragedCurve.of(waves[0], new AlignedInput(waves[0], waves[1]))
                        .gap())
                .isCloseTo(0.2 / swing(), within(1e-3));
        Measured gap = new Branches(waves[0], waves[1]).gap(Corners.NONE);
        assertThat(gap.value().orElseThrow()).isCloseTo(200 * 0.1 / Math.sqrt(1.01), within(0.01));
        Branches branches = new Branches(waves[0], waves[1]);
        assertThat(branches.distance(Corners.NONE, 0)).isCloseTo(0.1, within(1e-4));
        assertThat(branches.distance(Corners.NONE, 0.05)).isCloseTo(0.1 * Math.cos(0.3 * Math.PI), within(1e-4));
        assertThat(branches.count()).isEqualTo(20);
        assertThat(branches.power(Corners.NONE)).isCloseTo(1.01, within(1e-4));
    }

    private static double swing() {
        double high = 0;
        for (double p = 0; p < 1; p += 1e-4) {
            high = Math.max(high, Math.sin(CYCLE * p) + 0.1 * Math.cos(3 * CYCLE * p));
        }
        double low = 0;
        for (double p = 0; p < 1; p += 1e-4) {
            low = Math.min(low, Math.sin(CYCLE * p) + 0.1 * Math.cos(3 * CYCLE * p));
        }
        return high - low;
    }

    /** 1 / ((1 + 0.2 jk)(1 - 0.1 j / k)) is undone; the fundamental keeps no delay, harmonic 3 loses three times the fundamental's. */
    @Test
    void cornersUndoTheirFilters() {
        Corners corners = new Corners(0.2, 0.1);
        for (int k = 1; k < 6; k++) {
            Complex response = Complex.ONE.divide(new Complex(1, 0.2 * k)).divide(new Complex(1, -0.1 / k));
            Complex whole = corners.inverse(k).multiply(response);
            assertThat(whole.getReal()).isCloseTo(1, within(1e-12));
            assertThat(whole.getImaginary()).isCloseTo(0, within(1e-12));
        }
        double delay = Math.atan(0.2) - Math.atan(0.1);
        assertThat(corners.undelayed(1).getArgument()).isCloseTo(0, within(1e-12));
        assertThat(corners.undelayed(3).getArgument())
                .isCloseTo(Math.atan(0.6) - Math.atan(0.1 / 3) - 3 * delay, within(1e-12));
        assertThat(corners.inHertz(100).lowPass()).hasValue(500);
        assertThat(corners.inHertz(100).highPass().orElseThrow()).isCloseTo(10, within(1e-9));
        assertThat(Corners.NONE.inHertz(100).lowPass()).isEmpty();
        assertThat(Corners.NONE.inHertz(100).highPass()).isEmpty();
        assertThat(Corners.within(5, 5)).isEqualTo(new Corners(2 / 3.0, 1 / 3.0));
        assertThat(Corners.within(-5, -5)).isEqualTo(Corners.NONE);
    }

    /** Odd harmonics of a clipped sine behind both filters, synthesized one by one. */
    static DoubleUnaryOperator filtered(double low, double high) {
        double[] sines = new double[16];
        for (int k = 1; k < sines.length; k++) {
            for (int i = 0; i < 2000; i++) {
                double angle = CYCLE * (i + 0.5) / 2000;
                double clipped = Math.max(-0.5, Math.min(0.7, Math.sin(angle)));
                sines[k] += k % 2 == 1 ? clipped * Math.sin(k * angle) / 1000 : clipped * Math.cos(k * angle) / 1000;
            }
        }
        return p -> {
            double sum = 0;
            for (int k = 1; k < sines.length; k++) {
                Complex response = Complex.ONE.divide(new Complex(1, low * k)).divide(new Complex(1, -high / k));
                double angle = CYCLE * k * p + response.getArgument();
                sum += sines[k] * response.abs() * (k % 2 == 1 ? Math.sin(angle) : Math.cos(angle));
            }
            return sum;
        };
    }

    @Test
    void theCornersAreFoundThatCloseTheGap() {
        double squares = 0;
        double stated = 0;
        for (int record = 0; record < 6; record++) {
            FittedWave[] waves = pair(filtered(0.3, 0.12), p -> Math.sin(CYCLE * p), 0.01, 10 + 2 * record);
            CornerSearch search = new CornerSearch(new Branches(waves[0], waves[1]));
            assertThat(search.best().low()).isCloseTo(0.3, within(0.02));
            assertThat(search.best().high()).isCloseTo(0.12, within(0.01));
            squares += Math.pow((search.best().low() - 0.3) / search.uncertainty()[0], 2)
                    + Math.pow((search.best().high() - 0.12) / search.uncertainty()[1], 2);
            stated += 2;
        }
        assertThat(Math.sqrt(squares / stated)).isBetween(0.45, 1.7);
    }

    /** -1 dB is 0.891251 of the amplitude. */
    @Test
    void theLoweredLineLiesADecibelBelow() {
        SmallSignalLine line = new SmallSignalLine(4, 0.03, 0.5, 0.02, 0.3);
        assertThat(line.lowered(2)).isCloseTo(0.5 + 0.891251 * 8, within(1e-5));
        assertThat(line.mirrored().lowered(2)).isCloseTo(-0.5 + 0.891251 * 8, within(1e-5));
        assertThat(line.loweredUncertainty(2)).isCloseTo(Math.hypot(0.02, 0.0534751), within(1e-6));
        assertThat(new SmallSignalLine(4, 0.217, 0, 0, 1).tellsOneDecibel()).isTrue();
        assertThat(new SmallSignalLine(4, 0.218, 0, 0, 1).tellsOneDecibel()).isFalse();
    }

    /** u = 10 mV and a percent of 1 V are 14.1 mV; a step of 1 mV moves the onset by 1 mV over the slope of 0.25. */
    @Test
    void anOnsetIsUncertainByNoiseInputAndSteps() {
        Measured onset = new OnsetPoint(1, 0.01, 0.25).measured(0.01, 0.001);
        assertThat(part(onset, Source.NOISE)).isCloseTo(0.0141421, within(1e-6));
        assertThat(part(onset, Source.CONVERTER_STEP)).isCloseTo(0.004, within(1e-9));
        assertThat(new OnsetPoint(1, 0.49, 1).measured(0, 0).value()).hasValue(1);
        assertThat(new OnsetPoint(1, 0.5, 1).measured(0, 0).value()).isEmpty();
        assertThat(new OnsetPoint(1, 0.01, 0.25).wider(3)).isEqualTo(new OnsetPoint(1, 0.03, 0.25));
    }

    /** tanh(x) lies 1 dB below x where tanh(x) / x = 0.891251, x = 0.6236, found by hand; slope 1, knee 14.9 dB driven far. */
    @Test
    void aHyperbolicTangentHasItsOnsetsAndItsKnee() {
        DoubleUnaryOperator input = p -> 5 * Math.sin(CYCLE * p);
        FittedWave[] waves = pair(p -> Math.tanh(input.applyAsDouble(p)), input, 1e-4, 21);
        Transfer transfer = Transfer.of(waves[0], new InputPlaces(waves[0], waves[1]));
        SmallSignal found = SmallSignal.of(transfer, transfer.mirrored(), OptionalDouble.empty())
                .found()
                .orElseThrow();
        double onset = 0.1;
        for (double x = 0.1; Math.tanh(x) > 0.8912509 * x; x += 1e-5) {
            onset = x;
        }
        assertThat(found.line().slope()).isCloseTo(1, within(0.01));
        assertThat(found.line().centre()).isCloseTo(0, within(1e-3));
        assertThat(found.onsetUp().orElseThrow().input()).isCloseTo(onset, within(0.02));
        assertThat(found.onsetDown().orElseThrow().input()).isCloseTo(onset, within(0.02));
        assertThat(found.gain(0.01).asValue().orElseThrow().standardUncertainty())
                .isCloseTo(0.0868589, within(0.01));
        Measured knee = Knee.of(transfer, 1, onset);
        assertThat(knee.value().orElseThrow()).isCloseTo(14.9, within(0.5));
        SlopeProfile slopes = SlopeProfile.of(transfer, 1, onset);
        SlopeProfile.Passage passage = slopes.passage(0.5);
        assertThat(passage.middle()).isCloseTo(0.8814, within(0.02)); // acosh(root 2)
        assertThat(slopes.last()).isCloseTo(0, within(0.01));
        assertThat(slopes.relativeUncertainty(passage, 0.5)).isBetween(1e-4, 0.05);
    }

    @Test
    void theProfileOfAStraightUnitIsStraight() {
        FittedWave[] waves = pair(x -> 0.1 + 2 * x, 1e-4);
        OutputProfile profile = new OutputProfile(Transfer.of(waves[0], new InputPlaces(waves[0], waves[1])));
        assertThat(profile.places()).isEqualTo(96);
        assertThat(profile.input(0)).isCloseTo(0.0099 * 1.5, within(1e-5));
        assertThat(profile.input(95)).isCloseTo(0.99 * 1.5, within(1e-4));
        for (int i = 0; i < 96; i += 5) {
            assertThat(profile.output(i)).isCloseTo(0.1 + 2 * profile.input(i), within(4e-4));
        }
        for (double x : new double[] {0.02, 0.333, 1, 1.48, profile.input(40), profile.input(95)}) {
            assertThat(profile.at(x)).isCloseTo(0.1 + 2 * x, within(4e-4));
        }
        assertThat(Knee.of(profile.transfer(), 2, 1.5).value()).isEmpty();
        SmallSignal found = SmallSignal.of(
                        profile.transfer(), profile.transfer().mirrored(), OptionalDouble.empty())
                .found()
                .orElseThrow();
        assertThat(found.onsetUp()).isEmpty();
        assertThat(found.line().window()).isCloseTo(0.75 * 1.5, within(0.01));
        assertThat(SmallSignal.of(profile.transfer(), profile.transfer().mirrored(), OptionalDouble.of(0.1))
                        .found())
                .isEmpty();
        assertThat(SmallSignal.of(profile.transfer(), profile.transfer().mirrored(), OptionalDouble.of(0.089))
                        .found())
                .isPresent();
    }
}
