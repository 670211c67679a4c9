package clipwitness.cli;

import clipwitness.capture.TimeRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import clipwitness.report.data.Look;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sentence that {@code look} ends with: whether the export is fit, and if not, what keeps it from being so and what to do. */
final class FitSentence {
    private FitSentence() {}

    /** The sentence, without a line end. */
    static String of(Look look) {
        boolean record = look.export() instanceof TimeRecord;
        String what = record ? "The record" : "The curve";
        String use = record ? "measure" : "compare";
        List<String> causes = look.doubts().stream()
                .filter(Doubt::refuses)
                .map(d -> inChannel(d.reason()) + cause(d))
                .distinct()
                .toList();
        if (!causes.isEmpty()) {
            return what + " is not fit to " + use + ": " + String.join("; ", causes) + ".";
        }
        String as = record && !periodic(look) ? " as noise only, for no channel holds a periodic wave" : "";
        return what + " is fit to " + use + as + warnings(look) + ".";
    }

    private static boolean periodic(Look look) {
        return look.channels().stream()
                .flatMap(c -> c.waveform().stream())
                .anyMatch(w -> Optional.ofNullable(w.get(WaveformQuantity.FREQUENCY))
                        .flatMap(Measured::asValue)
                        .isPresent());
    }

    private static String warnings(Look look) {
        String codes = look.doubts().stream()
                .filter(d -> d.severity() == Severity.WARNING)
                .map(d -> d.code().code())
                .distinct()
                .collect(Collectors.joining(", "));
        return codes.isEmpty() ? "" : "; mind the warnings above (" + codes + ")";
    }

    private static String inChannel(Reason reason) {
        boolean framed = reason.code() == FrameReason.IN_CHANNEL || reason.is(DoubtReason.MISSING_SAMPLES_CELLS);
        return framed && reason.arguments().get(0) instanceof Argument.Name name ? "in " + name.text() + " " : "";
    }

    /** The cause in plain words, and its remedy. */
    private static String cause(Doubt doubt) {
        if (doubt.reason().is(DoubtReason.UNEVEN_TIME_STRETCHES)) {
            return "stretches follow each other, and nothing says when each begins (export them one by one, or with their time)";
        }
        return switch (doubt.code()) {
            case OVER_RANGE ->
                "the wave runs into the end of the converter's range (capture it again with more volts a division)";
            case MISSING_SAMPLES ->
                "too many samples have no value (capture again at a range that holds the signal, and export all samples)";
            case REPEATED_TIME ->
                "the rows hold the extremes of intervals and no samples (capture again without peak detect)";
            case UNEVEN_TIME ->
                "the samples are not evenly spaced (export again with every sample, and each segment in a file of its own)";
            case FEW_PERIODS -> "there is less than one period of the tone (capture a longer record)";
            case UNDERSAMPLED -> "there are too few samples a period (capture again at a higher sample rate)";
            case NO_FUNDAMENTAL, WRONG_FREQUENCY -> "the expected tone is not there (capture again with the tone on)";
            default -> "there is the doubt " + doubt.code().code() + " (see above, and capture again)";
        };
    }
}
