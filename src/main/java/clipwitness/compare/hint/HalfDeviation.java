package clipwitness.compare.hint;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Halves that clip higher or lower than predicted.
 *
 * @param state   state that deviates
 * @param highest its prediction at the highest gain
 * @param upper   1 where the upper half clips higher than predicted, -1 where lower, 0 where as predicted
 * @param lower   the same of the lower half
 */
record HalfDeviation(State state, StatePrediction highest, int upper, int lower) implements Deviation {
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final int DIGITS = 3;
    private static final String TRACE = ", or a trace of a device that was still warm";

    @Override
    public String finding() {
        if (upper == 0 || lower == 0) {
            boolean higher = upper + lower > 0;
            return clips(upper != 0 ? ClipHalf.UPPER : ClipHalf.LOWER) + " than the traced devices make it: "
                    + (higher
                            ? "look for an open leg, a device the wrong way round, or other devices than the traced ones in"
                                    + " this leg"
                            : "look for a shorted device or switch, or other devices than the traced ones in this leg")
                    + TRACE + ".";
        }
        return upper == lower
                ? "the wave clips " + word(upper) + " than the traced devices make it: look for other devices than the"
                        + " traced ones, another source resistance, or another gain behind the clipper than the sheet states"
                        + TRACE + "."
                : clips(ClipHalf.UPPER) + " and " + clips(ClipHalf.LOWER)
                        + " than the traced devices make it: look for a pair fitted the other way round, or legs named in"
                        + " the other order in the sheet.";
    }

    private String clips(ClipHalf half) {
        return "the " + half.word() + " half clips " + word(half == ClipHalf.UPPER ? upper : lower);
    }

    private static String word(int direction) {
        return direction > 0 ? "higher" : "lower";
    }

    @Override
    public String evidence() {
        return Evidence.place(highest.condition().gainPercent()) + " "
                + Stream.of(ClipHalf.UPPER, ClipHalf.LOWER)
                        .filter(h -> (h == ClipHalf.UPPER ? upper : lower) != 0)
                        .map(this::level)
                        .collect(Collectors.joining(" and "))
                + highest.source().map(s -> "; " + s).orElse("");
    }

    private String level(ClipHalf half) {
        Prediction figure = half.told(highest).orElseThrow();
        return "the " + half.word() + (half.tellsClipLevel(highest) ? " clip level" : " peak") + " is "
                + volts(figure.measured()) + " instead of " + volts(figure.predicted()) + " (± "
                + NUMBERS.rounded(figure.expandedUncertainty().orElseThrow(), Unit.VOLT, 2) + " on the difference)";
    }

    private static String volts(Measured measured) {
        return NUMBERS.rounded(measured.value().orElseThrow(), Unit.VOLT, DIGITS);
    }
}
