package clipwitness.figure;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;

/** Measured values as they stand in a figure's sentence. */
final class ValueWords {
    private static final int MOST_DIGITS = 3;

    private ValueWords() {}

    /** A value with its unit, to the digits that its uncertainty leaves and at most three; of a bound, what it lies below. */
    static String of(Measured.Value value) {
        double shown = value.isUpperBound() ? value.number() + 2 * value.standardUncertainty() : value.number();
        return (value.isUpperBound() ? "below " : "") + withUnit(shown, value, false);
    }

    /** A change with its sign. */
    static String change(Measured.Value value) {
        return withUnit(value.number(), value, true);
    }

    /** The size of a change, without sign. */
    static String size(Measured.Value value) {
        return withUnit(Math.abs(value.number()), value, false);
    }

    private static String withUnit(double number, Measured.Value value, boolean signed) {
        AxisUnit written = AxisUnit.of(value.unit(), Math.abs(number));
        double power = Math.pow(10, written.exponent());
        double scaled = number / power;
        int decimals = decimals(scaled, 2 * value.standardUncertainty() / power, value.unit());
        String text = signed ? NumberForms.signed(scaled, decimals) : NumberForms.plain(scaled, decimals);
        String symbol = value.unit() == Unit.PERCENT && signed ? "points" : written.symbol();
        return symbol.isEmpty() ? text : text + " " + symbol;
    }

    private static int decimals(double scaled, double uncertainty, Unit unit) {
        boolean level = unit == Unit.DECIBEL || unit == Unit.DBC;
        int most = level || scaled == 0 ? 2 : NumberForms.decimalsFor(scaled, MOST_DIGITS);
        return uncertainty > 0 ? Math.min(most, NumberForms.decimalsFor(uncertainty, 2)) : most;
    }

    /** A state's label in a sentence. */
    static String quoted(String label) {
        return "“" + label + "”";
    }

    /** Parts of a sentence, separated by semicolons, closed by a full stop. */
    static String sentence(String opening, List<String> parts) {
        return opening + String.join("; ", parts) + ".";
    }
}
