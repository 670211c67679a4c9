package clipwitness.report.words;

import clipwitness.quantity.Unit;

/**
 * A unit with a prefix.
 *
 * @param factor what one of it is in the unit itself
 * @param symbol for example mV
 */
record Scale(double factor, String symbol) {
    private static final String[] PREFIXES = {"n", "µ", "m", "", "k", "M"};
    private static final int NO_PREFIX = 3;

    /** The unit with the prefix that puts a magnitude between 1 and 1000. */
    static Scale of(Unit unit, double magnitude) {
        return switch (unit) {
            case VOLT, AMPERE, SECOND, OHM, HERTZ -> prefixed(unit, magnitude);
            case DEGREE -> new Scale(1, "°");
            case ONE -> new Scale(1, "");
            default -> new Scale(1, unit.symbol());
        };
    }

    private static Scale prefixed(Unit unit, double magnitude) {
        if (!(magnitude > 0)) {
            return new Scale(1, unit.symbol());
        }
        int step = (int) Math.floor(Math.log10(magnitude * (1 + 1e-12)) / 3);
        int index = Math.max(0, Math.min(PREFIXES.length - 1, step + NO_PREFIX));
        return new Scale(Math.pow(1000, index - NO_PREFIX), PREFIXES[index] + unit.symbol());
    }
}
