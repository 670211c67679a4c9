package clipwitness.report.words;

import clipwitness.compare.finding.Told;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberParts;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import java.util.Optional;

/**
 * A measured figure as text.
 *
 * @param parts  the value, or {@code < value} where noise bounds it; empty where there is none
 * @param reason why there is no value, where that is known
 */
public record Amount(NumberParts parts, Optional<Reason> reason) {
    private static final NumberParts NONE = new NumberParts("", "", "");

    /** No figure. */
    static Amount none(Optional<Reason> reason) {
        return new Amount(NONE, reason);
    }

    /** A figure with a prefix of its own. */
    public static Amount of(Measured measured, NumberText numbers) {
        return of(measured, 0, numbers, false);
    }

    /** A figure without prefix, to at most so many decimals. */
    static Amount coarse(Measured measured, int decimals, NumberText numbers) {
        return measured.asValue()
                .map(v -> new Amount(numbers.coarse(v.number(), v.unit(), v.expanded(), decimals), Optional.empty()))
                .orElseGet(() -> none(measured.reason()));
    }

    /** A figure as a change: with its sign. */
    public static Amount ofChange(Measured measured, NumberText numbers) {
        return of(measured, 0, numbers, true);
    }

    /** What the prefix of a row must suit for a figure to stand in it. */
    static double largest(Measured.Value value) {
        return NumberText.shown(value.shown(), value.unit(), value.expanded());
    }

    /** A figure with the prefix that suits the largest of a row. */
    static Amount of(Measured measured, double largest, NumberText numbers, boolean signed) {
        Measured told = signed ? Told.change(measured) : measured;
        return told.asValue()
                .map(v -> new Amount(parts(v, largest, numbers, signed), Optional.empty()))
                .orElseGet(() -> none(told.reason()));
    }

    private static NumberParts parts(Measured.Value value, double largest, NumberText numbers, boolean signed) {
        double uncertainty = value.expanded();
        if (signed && Told.isAtLeast(value)) {
            return atLeast(value, numbers);
        }
        if (!value.isUpperBound() || value.shown() == 0) { // nothing lies below 0
            return numbers.parts(value.number(), value.unit(), uncertainty, largest, signed);
        }
        NumberParts bound = numbers.bound(value.shown(), value.unit(), largest);
        return new NumberParts("< " + bound.number(), "", bound.unit());
    }

    /** {@code < −24 dB} or {@code > +28 dB}: what a change is at least, in whole decibels. */
    private static NumberParts atLeast(Measured.Value value, NumberText numbers) {
        double least = Told.least(Math.abs(value.number()), value.expanded());
        boolean fall = value.number() < 0;
        return new NumberParts(
                (fall ? "< " : "> ") + numbers.signed(fall ? -least : least, Unit.ONE, 0),
                "",
                value.unit().symbol());
    }

    /** The value, empty where there is none. */
    public String number() {
        return parts.number();
    }

    /** Its expanded uncertainty, empty where there is none. */
    public String uncertainty() {
        return parts.uncertainty();
    }

    /** Unit with its prefix. */
    public String unit() {
        return parts.unit();
    }

    /** Value, uncertainty and unit. */
    public String full() {
        return parts.full();
    }

    /** The same figure in another unit's name. */
    Amount named(String unit) {
        return new Amount(new NumberParts(number(), uncertainty(), unit), reason);
    }
}
