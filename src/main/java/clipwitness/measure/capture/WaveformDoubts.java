package clipwitness.measure.capture;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.capture.VerticalScale;
import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.NumberText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Doubts about one channel of a waveform capture, each with the figures that raise it; texts begin with the channel where it is not the output. */
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
        if (!output.hasFundamental()) {
            return List.of(noFundamental("", expected, Severity.REFUSAL));
        }
        return Stream.of(
                        overRange("", output, samples, capture.outputScale(), Severity.REFUSAL),
                        lowResolution("", output, samples),
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
    static Optional<Doubt> missingSamples(String channel, Samples samples, Severity atWorst) {
        double percent = 100.0 * samples.gaps() / samples.size();
        return when(
                samples.gaps() > 0,
                DoubtCode.MISSING_SAMPLES,
                tooManyGaps(samples) ? atWorst : Severity.WARNING,
                "%s%d of %d samples are missing (%s %%)",
                channel,
                samples.gaps(),
                samples.size(),
                NumberText.plain(percent, 2));
    }

    static Doubt noFundamental(String channel, OptionalDouble expected, Severity severity) {
        String where = expected.isPresent()
                ? String.format(Locale.ROOT, "no line near %.6g Hz", expected.getAsDouble())
                : "no periodic line";
        return new Doubt(DoubtCode.NO_FUNDAMENTAL, severity, channel + where + " stands above the noise");
    }

    static Optional<Doubt> fewPeriods(double periods) {
        return when(
                periods < FEW_PERIODS,
                DoubtCode.FEW_PERIODS,
                periods < 1 ? Severity.REFUSAL : Severity.WARNING,
                "the record holds %.2f periods of the fundamental",
                periods);
    }

    static Optional<Doubt> undersampled(double samplesPerPeriod) {
        return when(
                samplesPerPeriod < ENOUGH_SAMPLES,
                DoubtCode.UNDERSAMPLED,
                samplesPerPeriod < TOO_FEW_SAMPLES ? Severity.REFUSAL : Severity.WARNING,
                "%.1f samples a period leave room for fewer than 20 harmonics",
                samplesPerPeriod);
    }

    private static Optional<Doubt> unresolvedHarmonics(FittedWave wave) {
        int last = wave.count();
        NoisyPower power = wave.harmonicPower(last);
        double share = power.amplitude() / wave.fit().amplitude(1);
        double least =
                (power.amplitude() - power.expandedAmplitude()) / wave.fit().amplitude(1);
        return when(
                last > 1 && least > LAST_HARMONIC,
                DoubtCode.UNDERSAMPLED,
                Severity.WARNING,
                "harmonic %d, the last one counted, still has %.1f %% of the fundamental: there are more above it",
                last,
                100 * share);
    }

    static Optional<Doubt> overRange(
            String channel, FittedWave wave, Samples samples, Optional<VerticalScale> scale, Severity severity) {
        if (wave.codeStep().isEmpty()) {
            return Optional.empty();
        }
        double period = 1 / wave.fit().cyclesPerSample();
        return OverRange.evidence(samples, wave.codeStep().getAsDouble(), period, wave.scatter(), scale)
                .map(text -> new Doubt(DoubtCode.OVER_RANGE, severity, channel + text));
    }

    static Optional<Doubt> lowResolution(String channel, FittedWave wave, Samples samples) {
        double codes = (samples.maximum() - samples.minimum()) / wave.codeStep().orElse(Double.MIN_NORMAL);
        return when(
                codes < FEWEST_CODES,
                DoubtCode.LOW_RESOLUTION,
                Severity.WARNING,
                "%sthe swing uses %.0f codes of the converter",
                channel,
                codes);
    }

    private static Optional<Doubt> wrongFrequency(double found, OptionalDouble expected) {
        double wanted = expected.orElse(found);
        return when(
                Math.abs(found / wanted - 1) > WRONG_FREQUENCY,
                DoubtCode.WRONG_FREQUENCY,
                Severity.WARNING,
                "the fundamental lies at %.6g Hz, expected was %.6g Hz",
                found,
                wanted);
    }

    static Optional<Doubt> distortedInput(Measured inputThd) {
        double percent = inputThd.asValue()
                .filter(v -> !v.isUpperBound())
                .map(Measured.Value::number)
                .orElse(0.0);
        return when(
                percent > DISTORTED_PERCENT,
                DoubtCode.DISTORTED_INPUT,
                Severity.WARNING,
                "the input's own THD is %.2f %%: the output's figures hold it too",
                percent);
    }

    private static Optional<Doubt> when(
            boolean doubtful, DoubtCode code, Severity severity, String format, Object... figures) {
        return doubtful
                ? Optional.of(new Doubt(code, severity, String.format(Locale.ROOT, format, figures)))
                : Optional.empty();
    }
}
