package clipwitness.measure.junction;

/**
 * Currents over which devices are compared.
 *
 * @param lowest  A, above 0
 * @param highest A, above the lowest
 */
public record CurrentRange(double lowest, double highest) {
    /** Checks the order. */
    public CurrentRange {
        if (!(lowest > 0 && highest > lowest)) { // NaN lands here too
            throw new IllegalArgumentException("no range of currents: " + lowest + " A to " + highest + " A");
        }
    }

    /** Whether it spans a decade; a millionth of it to spare. */
    public boolean spansADecade() {
        return highest >= 10 * lowest * (1 - 1e-6);
    }
}
