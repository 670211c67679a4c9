package clipwitness.capture;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * At which range of the instrument a channel was captured, as far as the export shows it.
 *
 * @param perDivision volts or amperes a division, where the preamble says it
 * @param codeStep    volts or amperes a converter code, where the samples show it
 */
public record VerticalRange(OptionalDouble perDivision, OptionalDouble codeStep) {
    /** A range of which nothing is known. */
    public static final VerticalRange UNKNOWN = new VerticalRange(OptionalDouble.empty(), OptionalDouble.empty());

    private static final double SAME_DIVISION = 1.01; // figures of a preamble, rounded
    private static final double SAME_STEP =
            1.2; // ranges follow in steps of 2 or more; steps found in samples err by less

    /** Checks that both parts are there. */
    public VerticalRange {
        Objects.requireNonNull(perDivision, "perDivision");
        Objects.requireNonNull(codeStep, "codeStep");
    }

    /** Whether two ranges are known to be different ones: by the preambles where both state one, else by the converter steps. */
    public boolean differsFrom(VerticalRange other) {
        if (perDivision.isPresent() && other.perDivision.isPresent()) {
            return differ(perDivision.getAsDouble(), other.perDivision.getAsDouble(), SAME_DIVISION);
        }
        return codeStep.isPresent()
                && other.codeStep.isPresent()
                && differ(codeStep.getAsDouble(), other.codeStep.getAsDouble(), SAME_STEP);
    }

    private static boolean differ(double a, double b, double ratio) {
        return a > b * ratio || b > a * ratio;
    }
}
