package clipwitness.bench;

/** The steps 1, 2, 5, 10 in which ranges and time bases are built. */
public final class Steps {
    private static final double ROUNDING = 1e-9;

    private Steps() {}

    /** The smallest step that is not below a value from 1e-6 to 10. */
    public static double atLeast(double value) {
        for (int decade = -6; decade <= 1; decade++) {
            for (int digit : new int[] {1, 2, 5}) {
                double step = Double.parseDouble(digit + "e" + decade);
                if (step >= value * (1 - ROUNDING)) {
                    return step;
                }
            }
        }
        throw new IllegalArgumentException("no step reaches " + value);
    }
}
