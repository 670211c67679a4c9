package clipwitness.measure;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.capture.VerticalScale;
import clipwitness.signal.CodeStep;
import clipwitness.signal.FundamentalSearch;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.JointFit;
import clipwitness.signal.MeanCycle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures a waveform capture: every figure of {@link WaveformQuantity} that applies, with the noise's share of its uncertainty. */
public final class WaveformMeasurement {
    private static final int MOST_HARMONICS = 20;
    private static final double HIGHEST_OVER_SAMPLE_RATE = 0.45;
    private static final double LINE_ABOVE_NOISE = 6;

    private final WaveformInput capture;
    private final List<Doubt> doubts = new ArrayList<>();

    private WaveformMeasurement(WaveformInput capture) {
        this.capture = capture;
    }

    /** Measures a capture; what cannot be measured is refused with its reason. */
    public static WaveformResult of(WaveformInput capture) {
        return new WaveformMeasurement(capture).measure();
    }

    private WaveformResult measure() {
        Samples samples = capture.output().samples();
        double rate = capture.output().sampleRate();
        WaveformDoubts.missingSamples(samples.gaps(), samples.size()).ifPresent(doubts::add);
        if (refused()) {
            return refusal();
        }
        OptionalDouble start = start(samples);
        if (start.isEmpty() || samples.size() * start.getAsDouble() < 1) {
            doubts.add(new Doubt(DoubtCode.NO_FUNDAMENTAL, Severity.REFUSAL, "the record shows no periodic line"));
            return refusal();
        }
        int harmonics = (int) Math.min(MOST_HARMONICS, HIGHEST_OVER_SAMPLE_RATE / start.getAsDouble());
        List<Samples> channels = new ArrayList<>(List.of(samples));
        capture.input().ifPresent(i -> channels.add(i.samples()));
        JointFit joint = JointFit.of(channels, start.getAsDouble(), harmonics);
        WaveformDoubts.fewPeriods(samples.size() * joint.cyclesPerSample()).ifPresent(doubts::add);
        WaveformDoubts.undersampled(1 / joint.cyclesPerSample()).ifPresent(doubts::add);
        double frequency = joint.cyclesPerSample() * rate;
        capture.expectedFrequency()
                .ifPresent(e -> WaveformDoubts.wrongFrequency(frequency, e).ifPresent(doubts::add));
        HarmonicFit fit = joint.channels().get(0);
        double origin = (-Math.PI / 2 - fit.phase(1)) / (2 * Math.PI);
        FittedWave output = wave(samples, fit, origin);
        if (fit.amplitude(1) <= LINE_ABOVE_NOISE * Math.sqrt(output.quadratureVariance(1))) {
            doubts.add(new Doubt(DoubtCode.NO_FUNDAMENTAL, Severity.REFUSAL, "no line above the noise"));
        }
        screen(samples, output, capture.outputScale());
        if (refused()) {
            return refusal();
        }
        WaveformDoubts.unresolvedHarmonics(output).ifPresent(doubts::add);
        Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
        Extreme up = CrestSearch.of(output, 1);
        Extreme down = CrestSearch.of(output, -1);
        values.put(
                WaveformQuantity.FREQUENCY,
                Measured.withNoise(frequency, WaveformQuantity.FREQUENCY.unit(), joint.standardUncertainty() * rate));
        outputFigures(values, output, up, down);
        Optional<CycleTrace> inputCycle = Optional.empty();
        Optional<TransferCurve> curve = Optional.empty();
        if (capture.input().isPresent()) {
            FittedWave input =
                    wave(capture.input().get().samples(), joint.channels().get(1), origin);
            inputCycle = Optional.of(trace(input));
            curve = inputFigures(values, output, input, up, down);
        }
        return new WaveformResult(
                values,
                HarmonicList.of(output),
                output.count(),
                Optional.of(HarmonicList.spectrum(output, rate)),
                Optional.of(trace(output)),
                inputCycle,
                curve,
                doubts);
    }

    private void outputFigures(Map<WaveformQuantity, Measured> values, FittedWave output, Extreme up, Extreme down) {
        double mean = output.fit().mean();
        double[] gradient = new double[output.fit().parameters()];
        gradient[0] = 1;
        double meanU = output.uncertainty(gradient);
        values.put(WaveformQuantity.MEAN, Measured.withNoise(mean, WaveformQuantity.MEAN.unit(), meanU));
        values.put(WaveformQuantity.RMS, RmsLevel.of(output));
        values.put(
                WaveformQuantity.FUNDAMENTAL,
                Measured.withNoise(
                        output.fit().amplitude(1),
                        WaveformQuantity.FUNDAMENTAL.unit(),
                        Math.sqrt(output.quadratureVariance(1))));
        values.put(
                WaveformQuantity.NOISE,
                Measured.withNoise(
                        output.scatter(),
                        WaveformQuantity.NOISE.unit(),
                        output.scatter() / Math.sqrt(2 * output.cycle().freedom())));
        values.put(WaveformQuantity.PEAK_UP, up.distanceFrom(mean, meanU));
        values.put(WaveformQuantity.PEAK_DOWN, down.distanceFrom(mean, meanU));
        values.put(WaveformQuantity.CREST_FACTOR, CrestFactor.of(output, up, down));
        values.put(WaveformQuantity.THD, TotalHarmonicDistortion.of(output));
        values.put(
                WaveformQuantity.THD_PLUS_NOISE,
                DistortionAndNoise.of(output, capture.output().sampleRate()));
        values.put(WaveformQuantity.ASYMMETRY, Asymmetry.of(up, down, mean, meanU));
        values.put(WaveformQuantity.HALF_WAVE_RESIDUE, HalfWaveResidue.of(output));
        values.put(WaveformQuantity.EVEN_HARMONICS, HarmonicGroup.even(output));
        values.put(WaveformQuantity.ODD_HARMONICS, HarmonicGroup.odd(output));
        values.put(WaveformQuantity.HIGH_HARMONICS, HarmonicGroup.high(output));
        values.put(WaveformQuantity.DWELL_UP, Dwell.of(output, up, 1));
        values.put(WaveformQuantity.DWELL_DOWN, Dwell.of(output, down, -1));
        values.put(WaveformQuantity.LEAN, Lean.of(output, up));
    }

    private Optional<TransferCurve> inputFigures(
            Map<WaveformQuantity, Measured> values, FittedWave output, FittedWave input, Extreme up, Extreme down) {
        values.put(
                WaveformQuantity.INPUT_FUNDAMENTAL,
                Measured.withNoise(
                        input.fit().amplitude(1),
                        WaveformQuantity.INPUT_FUNDAMENTAL.unit(),
                        Math.sqrt(input.quadratureVariance(1))));
        Measured inputThd = TotalHarmonicDistortion.of(input);
        values.put(WaveformQuantity.INPUT_THD, inputThd);
        values.put(WaveformQuantity.GAIN, LinearResponse.gain(output, input));
        values.put(WaveformQuantity.PHASE, LinearResponse.phase(output, input));
        inputThd.asValue()
                .filter(v -> v.number() > 1 && !v.isUpperBound())
                .flatMap(v -> WaveformDoubts.doubt(
                        DoubtCode.DISTORTED_INPUT, Severity.WARNING, "the input's own thd is %.2f %%", v.number()))
                .ifPresent(doubts::add);
        ClipLevels centre = ClipLevels.of(output, input);
        values.put(WaveformQuantity.CLIP_UP, up.distanceFrom(centre.value(), centre.noise()));
        values.put(WaveformQuantity.CLIP_DOWN, down.distanceFrom(centre.value(), centre.noise()));
        values.put(WaveformQuantity.CLIP_ASYMMETRY, Asymmetry.of(up, down, centre.value(), centre.noise()));
        Transfer transfer = Transfer.of(output, input);
        double relative = Math.sqrt(input.quadratureVariance(1)) / input.fit().amplitude(1);
        SmallSignal.Answer answer = SmallSignal.of(transfer, input.codeStep());
        curveFigures(values, transfer, answer, relative, output.undithered());
        double middle = answer.found().map(f -> f.line().centre()).orElse(centre.value());
        return Optional.of(new TransferCurve(
                transfer.input(), transfer.output().map(v -> v - middle), transfer.gap(), transfer.inverting()));
    }

    private static void curveFigures(
            Map<WaveformQuantity, Measured> values,
            Transfer transfer,
            SmallSignal.Answer answer,
            double relative,
            double step) {
        if (answer.found().isEmpty()) {
            for (WaveformQuantity q : List.of(
                    WaveformQuantity.SMALL_SIGNAL_GAIN,
                    WaveformQuantity.ONSET_UP,
                    WaveformQuantity.ONSET_DOWN,
                    WaveformQuantity.KNEE_UP,
                    WaveformQuantity.KNEE_DOWN)) {
                values.put(q, Measured.refused(q.unit(), answer.reason()));
            }
            return;
        }
        SmallSignal line = answer.found().get();
        values.put(WaveformQuantity.SMALL_SIGNAL_GAIN, line.gain(relative));
        values.put(WaveformQuantity.ONSET_UP, onset(line.onsetUp(), relative, step));
        values.put(WaveformQuantity.ONSET_DOWN, onset(line.onsetDown(), relative, step));
        values.put(WaveformQuantity.KNEE_UP, Knee.of(transfer, line.line().slope()));
        values.put(
                WaveformQuantity.KNEE_DOWN,
                Knee.of(transfer.mirrored(), line.line().slope()));
    }

    private static Measured onset(Optional<OnsetPoint> point, double relative, double step) {
        if (point.isEmpty()) {
            return Measured.refused(WaveformQuantity.ONSET_UP.unit(), "not reached");
        }
        OnsetPoint p = point.get();
        Measured.Value value = Measured.withNoise(
                p.input(), WaveformQuantity.ONSET_UP.unit(), Math.hypot(p.noise(), p.input() * relative));
        Measured.Value whole = step > 0 ? value.plus(Source.CONVERTER_STEP, step / p.leaving()) : value;
        return 2 * whole.standardUncertainty() < p.input()
                ? whole
                : Measured.refused(whole.unit(), "noise hides where the curve leaves its line");
    }

    private FittedWave wave(Samples samples, HarmonicFit fit, double origin) {
        MeanCycle cycle = MeanCycle.of(samples, fit, origin);
        double[] noise = new double[fit.count() + 1];
        Arrays.fill(noise, cycle.noise());
        return new FittedWave(fit, cycle, origin, Samples.of(noise), CodeStep.of(samples));
    }

    private void screen(Samples samples, FittedWave wave, Optional<VerticalScale> scale) {
        wave.codeStep().ifPresent(step -> {
            OverRange.evidence(samples, step, 1 / wave.fit().cyclesPerSample(), wave.scatter(), scale)
                    .ifPresent(text -> doubts.add(new Doubt(DoubtCode.OVER_RANGE, Severity.REFUSAL, text)));
            WaveformDoubts.lowResolution(samples.maximum() - samples.minimum(), step)
                    .ifPresent(doubts::add);
        });
    }

    private OptionalDouble start(Samples samples) {
        if (capture.expectedFrequency().isEmpty()) {
            return FundamentalSearch.strongest(samples);
        }
        double expected =
                capture.expectedFrequency().getAsDouble() / capture.output().sampleRate();
        return expected < HIGHEST_OVER_SAMPLE_RATE && samples.size() * expected > 0.7
                ? OptionalDouble.of(FundamentalSearch.near(samples, expected))
                : OptionalDouble.empty();
    }

    private static CycleTrace trace(FittedWave wave) {
        double mean = wave.fit().mean();
        double[] swing = Arrays.stream(wave.cycle().values()).map(v -> v - mean).toArray();
        return new CycleTrace(Samples.of(swing), mean, wave.cycle().binUncertainty());
    }

    private boolean refused() {
        return doubts.stream().anyMatch(d -> d.severity() == Severity.REFUSAL);
    }

    private WaveformResult refusal() {
        String reason = doubts.stream()
                .filter(d -> d.severity() == Severity.REFUSAL)
                .findFirst()
                .orElseThrow()
                .text();
        Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
        for (WaveformQuantity q : WaveformQuantity.values()) {
            if (!q.needsInput() || capture.input().isPresent()) {
                values.put(q, Measured.refused(q.unit(), reason));
            }
        }
        return new WaveformResult(
                values, List.of(), 0, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), doubts);
    }
}
