package clipwitness.measure.noise;

import clipwitness.capture.Samples;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.OptionalDouble;

/** Doubts about a record of noise. */
final class NoiseDoubts {
    private static final double MOST_GAPS = 0.01;
    private static final double LEAST_SPAN = 8; // codes
    private static final int LEAST_ON_EXTREME = 10;
    /** A sine leaves 2.4 times as many samples on its extreme code as on the next; noise leaves fewer. */
    private static final double PILED_UP = 5;

    private NoiseDoubts() {}

    static Optional<Doubt> missingSamples(Samples samples) {
        return samples.gaps() > 0
                ? Optional.of(Doubt.of(
                        samples.gaps() > MOST_GAPS * samples.size() ? Severity.REFUSAL : Severity.WARNING,
                        DoubtReason.MISSING_SAMPLES,
                        Argument.count(samples.gaps()),
                        Argument.count(samples.size()),
                        Argument.plain(100.0 * samples.gaps() / samples.size(), Unit.PERCENT, 2)))
                : Optional.empty();
    }

    /** A record too short for hum: how long it lasts and would have to last, s. */
    static Doubt tooShort(double lasts, double mains) {
        return Doubt.of(
                Severity.WARNING,
                DoubtReason.TOO_SHORT_FOR_HUM,
                Argument.prefixed(lasts, Unit.SECOND, 3),
                Argument.prefixed(NoiseMeasurement.PERIODS_FOR_HUM / mains, Unit.SECOND, 3));
    }

    /** Samples pile up on the last code of a record that was cut off by the end of the converter. */
    static Optional<Doubt> overRange(Samples samples, OptionalDouble step) {
        if (step.isEmpty()) {
            return Optional.empty();
        }
        double width = step.getAsDouble();
        return pile(samples, samples.maximum(), -width, Word.UPPER_HALF)
                .or(() -> pile(samples, samples.minimum(), width, Word.LOWER_HALF));
    }

    private static Optional<Doubt> pile(Samples samples, double extreme, double inward, Word side) {
        int last = 0;
        int next = 0;
        for (int i = 0; i < samples.size(); i++) {
            double codes = (samples.at(i) - extreme) / inward; // not a number in a gap
            last += codes < 0.5 ? 1 : 0;
            next += codes >= 0.5 && codes < 1.5 ? 1 : 0;
        }
        boolean wide = samples.maximum() - samples.minimum() >= LEAST_SPAN * Math.abs(inward);
        return wide && last >= LEAST_ON_EXTREME && last > PILED_UP * next
                ? Optional.of(Doubt.of(
                        Severity.REFUSAL, DoubtReason.OVER_RANGE_PILED, Argument.count(last), Argument.word(side)))
                : Optional.empty();
    }
}
