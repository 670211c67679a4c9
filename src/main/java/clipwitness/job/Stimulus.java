package clipwitness.job;

import java.util.OptionalDouble;

/**
 * The sheet's section {@code stimulus}.
 *
 * @param shape     shape as written; only a sine can be fitted
 * @param frequency in Hz
 * @param level     peak amplitude in V
 */
public record Stimulus(String shape, OptionalDouble frequency, OptionalDouble level) {
    /** The shape that is taken where the sheet has none, and the only one that can be fitted. */
    public static final String SINE = "sine";
}
