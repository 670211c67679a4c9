package clipwitness.job.read;

import clipwitness.quantity.Unit;

/**
 * Which quantities a key or a cell takes.
 *
 * @param unit     unit that must be written, save for pure numbers
 * @param bare     whether a number without unit is taken to be in it
 * @param least    smallest value in the unit, a whole number or negative infinity
 * @param included whether the smallest value itself is allowed
 * @param most     largest value in the unit, a whole number or infinity
 */
record AllowedRange(Unit unit, boolean bare, double least, boolean included, double most) {
    static AllowedRange above(int least, Unit unit) {
        return new AllowedRange(unit, false, least, false, Double.POSITIVE_INFINITY);
    }

    static AllowedRange from(int least, Unit unit) {
        return new AllowedRange(unit, false, least, true, Double.POSITIVE_INFINITY);
    }

    static AllowedRange below(int most, Unit unit) {
        return new AllowedRange(unit, false, Double.NEGATIVE_INFINITY, false, most);
    }

    static AllowedRange anyNumber() {
        return new AllowedRange(Unit.ONE, true, Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);
    }

    AllowedRange to(int most) {
        return new AllowedRange(unit, bare, least, included, most);
    }

    AllowedRange orBare() {
        return new AllowedRange(unit, true, least, included, most);
    }

    boolean holds(double value) {
        boolean enough = included ? value >= least : value > least;
        boolean notTooMuch = least == Double.NEGATIVE_INFINITY ? value < most : value <= most;
        return enough && notTooMuch;
    }

    /** The range in words: {@code above 0 Hz}, {@code from 0 to 100 %}. */
    String words() {
        String symbol = unit == Unit.ONE ? "" : " " + unit.symbol();
        String low = String.valueOf((long) least);
        String high = (long) most + symbol;
        if (least == Double.NEGATIVE_INFINITY) {
            return "below " + high;
        }
        if (most == Double.POSITIVE_INFINITY) {
            return included ? low + symbol + " or more" : "above " + low + symbol;
        }
        return included ? "from " + low + " to " + high : "above " + low + " and at most " + high;
    }
}
