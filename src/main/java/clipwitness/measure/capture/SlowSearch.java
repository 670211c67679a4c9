package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.signal.CosineSeries;
import clipwitness.signal.MainsLines;
import clipwitness.signal.SlowWave;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Whether a slow wave runs under the tone of a record, or lines of the mains stand between its harmonics, by more than noise explains and 0.2 % of
 * the swing, and the record without them. Lines are looked for where there is no slow wave but a whole period of the mains or more: a drift reaches between the harmonics too, with what the series leaves of it.
 */
final class SlowSearch {
    /** 0.2 % of the swing, span against span: the amplitude is half the span. */
    private static final double LEAST_SHARE = 0.002 / 2;

    private static final List<Double> USUAL = List.of(50.0, 60.0);

    /** A sine of the mains frequency explains a hum that is not bent. */
    private static final double OF_THE_MAINS = 0.95;

    private static final double NEAR_THE_BEST = 0.02;

    /** A sine that was fitted to less than this share of its period does not tell its mean. */
    private static final double SHORTEST = 0.5;

    /** A sine's mean over the record is known to so much of its amplitude. */
    private static final double OF_THE_MEAN = 0.1;

    private final Optional<SlowWave> wave;
    private final MainsLines lines;
    private final double duration;
    private final List<Double> mains;

    private SlowSearch(Optional<SlowWave> wave, MainsLines lines, double duration, List<Double> mains) {
        this.wave = wave;
        this.lines = lines;
        this.duration = duration;
        this.mains = mains;
    }

    /**
     * Looks at one channel.
     *
     * @param samples    the record
     * @param fitted     its fit
     * @param sampleRate Hz
     * @param mains      frequency of the mains in Hz, where it is known
     */
    static Optional<SlowSearch> of(Samples samples, FittedWave fitted, double sampleRate, OptionalDouble mains) {
        double duration = samples.size() / sampleRate;
        List<Double> possible = mains.isPresent() ? List.of(mains.getAsDouble()) : USUAL;
        CosineSeries rest = new CosineSeries(samples, fitted.cycle());
        double least = LEAST_SHARE * swing(fitted);
        Optional<SlowWave> wave = SlowWave.of(rest).filter(w -> w.amplitude() - 2 * w.noise() > least);
        SlowSearch alone = new SlowSearch(wave, MainsLines.NONE, duration, possible);
        MainsLines lines = alone.leavesLines() ? lines(rest, possible, duration, least) : MainsLines.NONE;
        return wave.isPresent() || !lines.lines().isEmpty()
                ? Optional.of(new SlowSearch(wave, lines, duration, possible))
                : Optional.empty();
    }

    private boolean leavesLines() {
        return wave.isEmpty()
                || mains(wave.get()).filter(f -> f * duration >= 1).isPresent();
    }

    private static double swing(FittedWave fitted) {
        double[] cycle = fitted.cycle().values();
        return Arrays.stream(cycle).max().orElse(0) - Arrays.stream(cycle).min().orElse(0);
    }

    /** Lines of the mains frequency that explains more of them. */
    private static MainsLines lines(CosineSeries rest, List<Double> possible, double duration, double least) {
        return possible.stream()
                .map(f -> MainsLines.of(rest, f * duration, least))
                .max(Comparator.comparingDouble(SlowSearch::power))
                .orElse(MainsLines.NONE);
    }

    private static double power(MainsLines lines) {
        return lines.lines().stream()
                .mapToDouble(l -> l.amplitude() * l.amplitude())
                .sum();
    }

    /** The record without the slow wave and the lines. */
    Samples without(Samples samples) {
        Samples rest = lines.without(samples);
        return wave.map(w -> w.without(rest)).orElse(rest);
    }

    /** This and what was found of it in the record without this. */
    SlowSearch and(Samples rest, FittedWave fitted) {
        CosineSeries left = new CosineSeries(rest, fitted.cycle());
        Optional<SlowWave> sum = wave.map(w -> SlowWave.of(left).map(w::plus).orElse(w));
        if (!leavesLines()) {
            return new SlowSearch(sum, lines, duration, mains);
        }
        return new SlowSearch(
                sum, lines.plus(lines(left, mains, duration, LEAST_SHARE * swing(fitted))), duration, mains);
    }

    /** Frequency and amplitude of the slow wave, or of the strongest line. */
    SlowTone tone() {
        return wave.map(this::tone).orElseGet(() -> tone(lines.lines().get(0)));
    }

    private SlowTone tone(SlowWave slow) {
        return new SlowTone(
                mains(slow).orElse(slow.cycles() / duration),
                Measured.withNoise(slow.amplitude(), Unit.VOLT, slow.noise()));
    }

    private SlowTone tone(MainsLines.Line line) {
        return new SlowTone(line.cycles() / duration, Measured.withNoise(line.amplitude(), Unit.VOLT, line.noise()));
    }

    /** The mains frequency, or twice that, of which a sine explains the slow wave. */
    private Optional<Double> mains(SlowWave slow) {
        double most = slow.shareOfSine(slow.cycles());
        return Stream.concat(mains.stream(), mains.stream().map(f -> 2 * f))
                .filter(f -> slow.shareOfSine(f * duration) > Math.max(OF_THE_MAINS, most - NEAR_THE_BEST))
                .findFirst();
    }

    /** How far the slow wave is from 0 on average over the record at most, V: a sine's mean is known, anything else may be anywhere in its span. */
    double offset() {
        return wave.map(this::offset).orElse(0.0);
    }

    private double offset(SlowWave slow) {
        Optional<Double> frequency = mains(slow).filter(f -> f * duration > SHORTEST);
        if (frequency.isEmpty()) {
            return 2 * slow.amplitude();
        }
        SlowWave.Sine sine = slow.sine(frequency.get() * duration);
        return Math.abs(sine.constant()) + OF_THE_MEAN * sine.amplitude();
    }

    /**
     * The wave with what this slow wave may have moved in it: a bound, u = a / sqrt 3, of each harmonic and of the mean.
     *
     * @param samples the record of the wave without its own slow wave
     * @param output  its fit
     * @param own     its own slow wave, if it has one
     * @param gain    of the tone, from the channel of this slow wave to the output
     */
    FittedWave moved(Samples samples, FittedWave output, Optional<SlowSearch> own, double gain) {
        if (wave.isEmpty()) {
            return output;
        }
        SlowModulation modulation = SlowModulation.of(samples, output.cycle(), wave.get(), output.count(), gain);
        if (!modulation.isReal()) {
            return output;
        }
        double[] bounds = new double[output.count() + 1];
        bounds[0] = Math.max(own.map(SlowSearch::offset).orElse(0.0), offset() * modulation.ofMean());
        for (int k = 1; k < bounds.length; k++) {
            bounds[k] = offset() * modulation.slopes().at(k - 1);
        }
        return output.movedBy(bounds);
    }

    /** The doubts that name it. */
    List<Doubt> doubts() {
        return Stream.concat(
                        wave
                                .map(w -> doubt(
                                        mains(w).isPresent() ? DoubtReason.SLOW_WAVE_MAINS : DoubtReason.SLOW_WAVE,
                                        tone(w)))
                                .stream(),
                        lines.lines().stream().limit(1).map(l -> doubt(DoubtReason.SLOW_WAVE_BETWEEN, tone(l))))
                .toList();
    }

    private static Doubt doubt(DoubtReason reason, SlowTone tone) {
        return Doubt.of(
                Severity.WARNING,
                reason,
                Argument.prefixed(tone.frequency(), Unit.HERTZ, 2),
                Argument.prefixed(tone.amplitude().number(), Unit.VOLT, 2));
    }
}
