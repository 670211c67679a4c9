package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.transfer.TransferMeasurement;
import clipwitness.measure.transfer.TransferValues;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.ExtremeSearch;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.HarmonicList;
import clipwitness.measure.wave.OutputValues;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import clipwitness.signal.FundamentalSearch;
import clipwitness.signal.JointFit;
import clipwitness.signal.UsableBand;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures a waveform capture: every figure of {@link WaveformQuantity} that applies, with the noise's share of its uncertainty. */
public final class WaveformMeasurement {
    private static final int MOST_HARMONICS = 20;
    private static final double SAMPLES_PER_HARMONIC = 3;
    /** Rest of a fit over its fundamental beyond which it may have taken a harmonic for the fundamental. */
    private static final double LEFT_OVER = 0.2;

    /** In a record of fewer periods the harmonics may not be told from another frequency. */
    private static final double FEW_PERIODS = 3;

    private static final int HIGHEST_ORDER = 6;
    private static final double CLOSE = 0.02;
    private static final List<Double> MAINS = List.of(50.0, 60.0);

    private final WaveformInput capture;
    private final Samples samples;
    private final double sampleRate;
    private final List<Doubt> doubts = new ArrayList<>();
    private final Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);

    private WaveformMeasurement(WaveformInput capture) {
        this.capture = capture;
        this.samples = capture.output().samples();
        this.sampleRate = capture.output().sampleRate();
    }

    /** Measures a capture; what cannot be measured is refused with its reason. */
    public static WaveformResult of(WaveformInput capture) {
        return new WaveformMeasurement(capture).measure();
    }

    /**
     * A capture whose file shows already that it is no even record of a wave: nothing is measured.
     *
     * @param capture what would be measured
     * @param reason  why not
     */
    public static WaveformResult refused(WaveformInput capture, Reason reason) {
        return new WaveformMeasurement(capture).refusal(reason);
    }

    private WaveformResult measure() {
        WaveformDoubts.missingSamples(samples, Severity.REFUSAL).ifPresent(doubts::add);
        if (isRefused()) {
            return refusal();
        }
        OptionalDouble start = start();
        if (start.isEmpty() || harmonics(start.getAsDouble()) < 1) {
            doubts.add(noFundamental());
            return refusal();
        }
        double periods = samples.size() * start.getAsDouble();
        shortOfPeriods(periods).or(() -> WaveformDoubts.fewPeriods(periods)).ifPresent(doubts::add);
        WaveformDoubts.undersampled(1 / start.getAsDouble()).ifPresent(doubts::add);
        return isRefused() ? refusal() : measuredFrom(start.getAsDouble());
    }

    /** In a record of so few periods the search may find another frequency; then the periods are those of the tone that was to be captured. */
    private Optional<Doubt> shortOfPeriods(double found) {
        double expected = samples.size() * capture.expectedFrequency().orElse(0) / sampleRate;
        return found < 1 && expected >= 1 ? Optional.of(WaveformDoubts.tooFewPeriods(expected)) : Optional.empty();
    }

    private OptionalDouble start() {
        if (capture.expectedFrequency().isEmpty()) {
            return FundamentalSearch.strongest(samples);
        }
        return FundamentalSearch.near(samples, capture.expectedFrequency().getAsDouble() / sampleRate);
    }

    /** Number of harmonics below 0.45 of the sample rate, 20 at most, fewer where the record has fewer samples. */
    private int harmonics(double cyclesPerSample) {
        double fitting = (samples.size() - samples.gaps() - 3) / SAMPLES_PER_HARMONIC;
        return (int) Math.min(MOST_HARMONICS, Math.min(fitting, UsableBand.HIGHEST_OVER_SAMPLE_RATE / cyclesPerSample));
    }

    private WaveformResult measuredFrom(double start) {
        InputScreen inputScreen = new InputScreen(capture);
        List<Samples> channels = new ArrayList<>(List.of(samples));
        inputScreen.usableSamples().ifPresent(channels::add);
        ChannelFit raw = ChannelFit.of(channels, start, harmonics(start));
        OptionalDouble lower = lowerFundamental(start, raw.output());
        if (lower.isPresent()) {
            return measuredFrom(lower.getAsDouble());
        }
        if (!raw.output().hasFundamental()) {
            doubts.add(noFundamental());
            return refusal();
        }
        if (raw.joint().strayed() && samples.size() * start < FEW_PERIODS) {
            doubts.removeIf(d -> d.code() == DoubtCode.FEW_PERIODS);
            doubts.add(WaveformDoubts.tooFewPeriods(samples.size() * start));
            return refusal();
        }
        doubts.addAll(WaveformDoubts.ofFit(raw.output(), samples, capture));
        if (isRefused()) {
            return refusal();
        }
        Optional<FittedWave> rawInput = inputScreen.usableSamples().map(i -> raw.input(channels));
        SlowRemoval slow = SlowRemoval.of(capture, channels, raw, rawInput, start, harmonics(start));
        doubts.addAll(slow.doubts());
        slow.doubtsOfInput().forEach(inputScreen::add);
        JointFit joint = slow.fit().joint();
        FittedWave output = slow.output();
        Optional<FittedWave> input =
                rawInput.map(i -> slow.input().withStepOf(i)).filter(inputScreen::accepts);
        Extreme up = ExtremeSearch.of(output, 1);
        Extreme down = ExtremeSearch.of(output, -1);
        values.put(WaveformQuantity.FREQUENCY, frequency(joint, output));
        OutputValues.write(values, output, up, down, sampleRate);
        double hertz = joint.cyclesPerSample() * sampleRate;
        Optional<TransferMeasurement> transfer =
                input.map(i -> TransferValues.write(values, output, i, up, down, hertz));
        slow.widenCurve(values);
        if (capture.input().isPresent() && input.isEmpty()) {
            TransferValues.refuse(values, inputScreen.reason());
        }
        doubts.addAll(inputScreen.doubts());
        transfer.flatMap(TransferMeasurement::doubt).ifPresent(doubts::add);
        return new WaveformResult(
                values,
                HarmonicList.of(output),
                output.count(),
                Optional.of(HarmonicList.spectrum(output, sampleRate)),
                Optional.of(output.trace()),
                input.map(FittedWave::trace),
                transfer.map(TransferMeasurement::curve),
                slow.tone(),
                new VerticalRange(perDivision(), raw.output().codeStep()),
                doubts);
    }

    /**
     * The line that is there where the one at the expected frequency is only a harmonic of it: the fit then leaves most of the wave, and the
     * strongest line is an aliquot part of the one that was fitted. Hum of the mains is no such line.
     */
    private OptionalDouble lowerFundamental(double start, FittedWave output) {
        boolean fits = output.scatter() < LEFT_OVER * output.fit().amplitude(1);
        if (fits || capture.expectedFrequency().isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble strongest = FundamentalSearch.strongest(samples);
        double line = strongest.orElse(start);
        double order = start / line;
        boolean isAliquot = Math.rint(order) >= 2
                && Math.rint(order) <= HIGHEST_ORDER
                && Math.abs(order - Math.rint(order)) < CLOSE * order;
        return isAliquot && MAINS.stream().noneMatch(m -> Math.abs(line * sampleRate / m - 1) < CLOSE)
                ? strongest
                : OptionalDouble.empty();
    }

    private Doubt noFundamental() {
        if (capture.expectedFrequency().isEmpty()) {
            return WaveformDoubts.noFundamental(capture.expectedFrequency(), Severity.REFUSAL);
        }
        OptionalDouble line = FundamentalSearch.strongest(samples);
        return WaveformDoubts.noFundamental(
                capture.expectedFrequency().getAsDouble(),
                line.isPresent() ? OptionalDouble.of(line.getAsDouble() * sampleRate) : line);
    }

    private Measured frequency(JointFit joint, FittedWave output) {
        double more = output.scatter() > 0 ? output.noise().at(1) / output.scatter() : 1;
        return Measured.withNoise(
                joint.cyclesPerSample() * sampleRate,
                WaveformQuantity.FREQUENCY.unit(),
                joint.standardUncertainty() * sampleRate * more);
    }

    private OptionalDouble perDivision() {
        return capture.outputScale()
                .map(s -> OptionalDouble.of(s.perDivision()))
                .orElse(OptionalDouble.empty());
    }

    private boolean isRefused() {
        return doubts.stream().anyMatch(Doubt::refuses);
    }

    private WaveformResult refusal() {
        return refusal(
                doubts.stream().filter(Doubt::refuses).findFirst().orElseThrow().reason());
    }

    private WaveformResult refusal(Reason reason) {
        for (WaveformQuantity q : WaveformQuantity.values()) {
            if (!q.needsInput() || capture.input().isPresent()) {
                values.put(q, Measured.refused(q.unit(), reason));
            }
        }
        return new WaveformResult(
                values,
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                VerticalRange.UNKNOWN,
                doubts);
    }
}
