package clipwitness.measure;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import java.util.Locale;
import java.util.Optional;

/** Doubts about one channel of a waveform capture, each a function of the figures that raise it. */
final class WaveformDoubts {
    private static final double MOST_GAPS = 0.01;
    private static final double WRONG_FREQUENCY = 0.02;
    private static final int FEWEST_CODES = 32;
    private static final double ENOUGH_SAMPLES = 45;
    private static final double TOO_FEW_SAMPLES = 8;
    private static final double LAST_HARMONIC = 0.01;

    private WaveformDoubts() {}

    static Optional<Doubt> missingSamples(int gaps, int size) {
        if (gaps == 0) {
            return Optional.empty();
        }
        boolean refused = gaps > MOST_GAPS * size;
        return doubt(
                DoubtCode.MISSING_SAMPLES,
                refused ? Severity.REFUSAL : Severity.WARNING,
                "%d of %d samples are missing (%.2g %%)",
                gaps,
                size,
                100.0 * gaps / size);
    }

    static Optional<Doubt> fewPeriods(double periods) {
        if (periods >= 3) {
            return Optional.empty();
        }
        return doubt(
                DoubtCode.FEW_PERIODS,
                periods < 1 ? Severity.REFUSAL : Severity.WARNING,
                "the record holds %.2f periods of the fundamental",
                periods);
    }

    static Optional<Doubt> undersampled(double samplesPerPeriod) {
        if (samplesPerPeriod >= ENOUGH_SAMPLES) {
            return Optional.empty();
        }
        return doubt(
                DoubtCode.UNDERSAMPLED,
                samplesPerPeriod < TOO_FEW_SAMPLES ? Severity.REFUSAL : Severity.WARNING,
                "%.1f samples a period leave room for fewer than 20 harmonics",
                samplesPerPeriod);
    }

    static Optional<Doubt> unresolvedHarmonics(FittedWave wave) {
        int last = wave.count();
        double share = wave.harmonicPower(last).amplitude() / wave.fit().amplitude(1);
        if (last == 1 || wave.harmonicPower(last).isBuried() || share <= LAST_HARMONIC) {
            return Optional.empty();
        }
        return doubt(
                DoubtCode.UNDERSAMPLED,
                Severity.WARNING,
                "harmonic %d, the last one counted, still has %.1f %% of the fundamental: there are more above it",
                last,
                100 * share);
    }

    static Optional<Doubt> lowResolution(double swing, double step) {
        double codes = swing / step;
        if (codes >= FEWEST_CODES) {
            return Optional.empty();
        }
        return doubt(DoubtCode.LOW_RESOLUTION, Severity.WARNING, "the swing uses %.0f codes of the converter", codes);
    }

    static Optional<Doubt> wrongFrequency(double found, double expected) {
        if (Math.abs(found / expected - 1) <= WRONG_FREQUENCY) {
            return Optional.empty();
        }
        return doubt(
                DoubtCode.WRONG_FREQUENCY,
                Severity.WARNING,
                "the fundamental lies at %.1f Hz, the sheet says %.1f Hz",
                found,
                expected);
    }

    static Optional<Doubt> doubt(DoubtCode code, Severity severity, String format, Object... figures) {
        return Optional.of(new Doubt(code, severity, String.format(Locale.ROOT, format, figures)));
    }
}
