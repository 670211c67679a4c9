package clipwitness.measure.clipper;

/**
 * The sine at a clipper's source.
 *
 * @param amplitude           peak, V, above 0
 * @param relativeUncertainty standard uncertainty, a ratio
 * @param inputAmplitude      peak of the unit's input, V, above 0, on which onsets are counted
 */
public record Drive(double amplitude, double relativeUncertainty, double inputAmplitude) {
    /** Checks the ranges. */
    public Drive {
        if (!(amplitude > 0 && inputAmplitude > 0 && relativeUncertainty >= 0)) { // NaN lands here too
            throw new IllegalArgumentException("no drive: " + amplitude + " V from " + inputAmplitude
                    + " V, relative uncertainty " + relativeUncertainty);
        }
    }
}
