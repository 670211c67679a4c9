package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Doubts about one channel of a waveform capture, each with the figures that raise it. */
final class WaveformDoubts {
    private static final double MOST_GAPS = 0.01;
    private static final double FEW_PERIODS = 3;
    private static final double WRONG_FREQUENCY = 0.02;
    private static final int FEWEST_CODES = 32;
    private static final double ENOUGH_SAMPLES = 45;
    private static final double TOO_FEW_SAMPLES = 8;
    private static final double LAST_HARMONIC = 0.01;
    private static final double DISTORTED_PERCENT = 1;

    private WaveformDoubts() {}

    /** Doubts that need the fit of the output. */
    static List<Doubt> ofFit(FittedWave output, Samples samples, WaveformInput capture) {
        double found = output.fit().cyclesPerSample() * capture.output().sampleRate();
        OptionalDouble expected = capture.expectedFrequency();
        return Stream.of(
                        overRange(output, samples, capture.outputScale(), Severity.REFUSAL),
                        lowResolution(output, samples),
                        unresolvedHarmonics(output),
                        wrongFrequency(found, expected))
                .flatMap(Optional::stream)
                .toList();
    }

    static boolean tooManyGaps(Samples samples) {
        return samples.gaps() > MOST_GAPS * samples.size();
    }

    /**
     * Gaps in a record.
     *
     * @param atWorst severity where over 1 % of the record is missing
     */
    static Optional<Doubt> missingSamples(Samples samples, Severity atWorst) {
        return samples.gaps() > 0
                ? Optional.of(Doubt.of(
                        tooManyGaps(samples) ? atWorst : Severity.WARNING,
                        DoubtReason.MISSING_SAMPLES,
                        Argument.count(samples.gaps()),
                        Argument.count(samples.size()),
                        Argument.plain(100.0 * samples.gaps() / samples.size(), Unit.PERCENT, 2)))
                : Optional.empty();
    }

    static Doubt noFundamental(OptionalDouble expected, Severity severity) {
        return expected.isPresent()
                ? Doubt.of(severity, DoubtReason.NO_FUNDAMENTAL_NEAR, hertz(expected.getAsDouble()))
                : Doubt.of(severity, DoubtReason.NO_FUNDAMENTAL);
    }

    private static Argument hertz(double frequency) {
        return Argument.significant(frequency, Unit.HERTZ, 6);
    }

    /** An output without a line at the expected frequency, in Hz, with the line that is there, if there is one. */
    static Doubt noFundamental(double expected, OptionalDouble strongest) {
        return strongest.isEmpty()
                ? noFundamental(OptionalDouble.of(expected), Severity.REFUSAL)
                : Doubt.of(
                        Severity.REFUSAL,
                        DoubtReason.NO_FUNDAMENTAL_NEAR_BUT,
                        hertz(expected),
                        Argument.significant(strongest.getAsDouble(), Unit.HERTZ, 4));
    }

    static Optional<Doubt> fewPeriods(double periods) {
        return periods < FEW_PERIODS
                ? Optional.of(Doubt.of(
                        periods < 1 ? Severity.REFUSAL : Severity.WARNING,
                        DoubtReason.FEW_PERIODS,
                        Argument.decimals(periods, Unit.ONE, 2)))
                : Optional.empty();
    }

    /** A record so short that its frequency and harmonics cannot be told apart. */
    static Doubt tooFewPeriods(double periods) {
        return Doubt.of(Severity.REFUSAL, DoubtReason.TOO_FEW_PERIODS, Argument.decimals(periods, Unit.ONE, 2));
    }

    static Optional<Doubt> undersampled(double samplesPerPeriod) {
        return samplesPerPeriod < ENOUGH_SAMPLES
                ? Optional.of(Doubt.of(
                        samplesPerPeriod < TOO_FEW_SAMPLES ? Severity.REFUSAL : Severity.WARNING,
                        DoubtReason.UNDERSAMPLED,
                        Argument.decimals(samplesPerPeriod, Unit.ONE, 1)))
                : Optional.empty();
    }

    private static Optional<Doubt> unresolvedHarmonics(FittedWave wave) {
        int last = wave.count();
        NoisyPower power = wave.harmonicPower(last);
        double share = power.amplitude() / wave.fit().amplitude(1);
        double least =
                (power.amplitude() - power.expandedAmplitude()) / wave.fit().amplitude(1);
        return last > 1 && least > LAST_HARMONIC
                ? Optional.of(Doubt.of(
                        Severity.WARNING,
                        DoubtReason.UNDERSAMPLED_HARMONICS,
                        Argument.count(last),
                        Argument.decimals(100 * share, Unit.PERCENT, 1)))
                : Optional.empty();
    }

    static Optional<Doubt> overRange(
            FittedWave wave, Samples samples, Optional<VerticalScale> scale, Severity severity) {
        if (wave.codeStep().isEmpty()) {
            return Optional.empty();
        }
        double period = 1 / wave.fit().cyclesPerSample();
        return OverRange.evidence(samples, wave.codeStep().getAsDouble(), period, wave.scatter(), scale)
                .map(reason -> new Doubt(severity, reason));
    }

    static Optional<Doubt> lowResolution(FittedWave wave, Samples samples) {
        double codes = (samples.maximum() - samples.minimum()) / wave.codeStep().orElse(Double.MIN_NORMAL);
        return codes < FEWEST_CODES
                ? Optional.of(
                        Doubt.of(Severity.WARNING, DoubtReason.LOW_RESOLUTION, Argument.decimals(codes, Unit.ONE, 0)))
                : Optional.empty();
    }

    private static Optional<Doubt> wrongFrequency(double found, OptionalDouble expected) {
        double wanted = expected.orElse(found);
        return Math.abs(found / wanted - 1) > WRONG_FREQUENCY
                ? Optional.of(Doubt.of(Severity.WARNING, DoubtReason.WRONG_FREQUENCY, hertz(found), hertz(wanted)))
                : Optional.empty();
    }

    static Optional<Doubt> distortedInput(Measured inputThd) {
        double percent = inputThd.asValue()
                .filter(v -> !v.isUpperBound())
                .map(Measured.Value::number)
                .orElse(0.0);
        return percent > DISTORTED_PERCENT
                ? Optional.of(Doubt.of(
                        Severity.WARNING, DoubtReason.DISTORTED_INPUT, Argument.decimals(percent, Unit.PERCENT, 2)))
                : Optional.empty();
    }
}
