package clipwitness.measure.clipper;

/**
 * How well the voltages of a clipper's junctions are known.
 *
 * @param together of all of them at once, as of a temperature that all share; standard, a ratio
 * @param ofOneLeg of one leg against the other; standard, a ratio
 */
public record JunctionUncertainty(double together, double ofOneLeg) {
    /** Checks the ranges. */
    public JunctionUncertainty {
        if (!(together >= 0 && ofOneLeg >= 0)) { // NaN lands here too
            throw new IllegalArgumentException("uncertainties must be 0 or more");
        }
    }
}
