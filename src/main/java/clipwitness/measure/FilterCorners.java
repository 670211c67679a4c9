package clipwitness.measure;

import clipwitness.measure.transfer.Corners;
import java.util.OptionalDouble;

/**
 * Corners of the filters that were taken off a wave to straighten its transfer curve.
 *
 * @param lowPass  of the low-pass, Hz; empty where none was needed
 * @param highPass of the high-pass, Hz; empty where none was needed
 */
public record FilterCorners(OptionalDouble lowPass, OptionalDouble highPass) {
    /** Corners as multiples of a fundamental in Hz. */
    public static FilterCorners of(Corners corners, double fundamental) {
        return new FilterCorners(
                corners.low() > 0 ? OptionalDouble.of(fundamental / corners.low()) : OptionalDouble.empty(),
                corners.high() > 0 ? OptionalDouble.of(fundamental * corners.high()) : OptionalDouble.empty());
    }
}
