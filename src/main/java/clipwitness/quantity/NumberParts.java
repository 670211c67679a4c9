package clipwitness.quantity;

/**
 * A number on paper in its parts, for tables that set them apart.
 *
 * @param number      the value
 * @param uncertainty its expanded uncertainty with the same decimals, empty where there is none
 * @param unit        unit with its prefix, empty for a pure number
 */
public record NumberParts(String number, String uncertainty, String unit) {
    private static final String SPACE = "\u00a0";
    private static final String ANGLE = "°";

    /** Value and unit: {@code 23.1 mV}. */
    public String text() {
        return withUnit(number);
    }

    /** Value, uncertainty and unit: {@code 23.1 ± 1.1 mV}. */
    public String full() {
        return withUnit(uncertainty.isEmpty() ? number : number + SPACE + "±" + SPACE + uncertainty);
    }

    private String withUnit(String what) {
        boolean apart = !unit.isEmpty() && !unit.equals(ANGLE);
        return what + (apart ? SPACE : "") + unit;
    }
}
