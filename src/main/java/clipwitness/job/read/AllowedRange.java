package clipwitness.job.read;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;

/**
 * Which quantities a key or a cell takes.
 *
 * @param unit     unit that must be written, save for pure numbers
 * @param bare     whether a number without unit is taken to be in it
 * @param least    smallest value in the unit
 * @param included whether the smallest value itself is allowed
 * @param most     largest value in the unit, or infinity
 * @param negative whether the negatives of these values are allowed, too
 *
 * <p>The constants are what the quantities of an audio bench can be: far wider than any bench needs (common practice), so that a value outside is a slip of
 * the pen or of the prefix, and so narrow that no calculation with it leaves the range of a double.
 */
record AllowedRange(Unit unit, boolean bare, double least, boolean included, double most, boolean negative) {
    static final AllowedRange FREQUENCY = between(1, 1e7, Unit.HERTZ);

    /** Mains of houses, railways and ships. */
    static final AllowedRange MAINS = between(10, 1000, Unit.HERTZ);

    static final AllowedRange LEVEL = between(1e-6, 1e3, Unit.VOLT);

    static final AllowedRange INTERVAL = between(1e-12, 1e3, Unit.SECOND);

    static final AllowedRange RESISTANCE = between(1e-3, 1e11, Unit.OHM);

    /** A probe's factor, or that of a current shunt. */
    static final AllowedRange PROBE = between(1e-6, 1e6, Unit.ONE);

    /** Magnitude of the gain behind a clipper, which may turn the wave over. */
    static final AllowedRange OUTPUT_GAIN = between(1e-6, 1e6, Unit.ONE).eitherSign();

    /** Both ends included. */
    static AllowedRange between(double least, double most, Unit unit) {
        return new AllowedRange(unit, unit == Unit.ONE, least, true, most, false);
    }

    static AllowedRange above(int least, Unit unit) {
        return new AllowedRange(unit, false, least, false, Double.POSITIVE_INFINITY, false);
    }

    static AllowedRange from(int least, Unit unit) {
        return new AllowedRange(unit, false, least, true, Double.POSITIVE_INFINITY, false);
    }

    /** Volts or amperes a count, or at the full scale of a sound file. */
    static AllowedRange scale(Unit unit) {
        return between(1e-15, 1e6, unit);
    }

    AllowedRange to(double most) {
        return new AllowedRange(unit, bare, least, included, most, negative);
    }

    AllowedRange orBare() {
        return new AllowedRange(unit, true, least, included, most, negative);
    }

    AllowedRange eitherSign() {
        return new AllowedRange(unit, bare, least, included, most, true);
    }

    boolean holds(double written) {
        double value = negative ? Math.abs(written) : written;
        boolean enough = included ? value >= least : value > least;
        return enough && value <= most;
    }

    /** The range in words: {@code above 0 Hz}, {@code from 0 to 100 %}, {@code from 1 mΩ to 1 GΩ}. */
    String words() {
        if (most == Double.POSITIVE_INFINITY) {
            return included ? written(least) + " or more" : "above " + written(least);
        }
        String range = included
                ? "from " + (least == 0 ? "0" : written(least)) + " to " + written(most)
                : "above " + written(least) + " and at most " + written(most);
        return negative ? range + ", or the negative of it" : range;
    }

    private String written(double value) {
        return NumberText.in("en").nominal(value, unit).replace('\u00a0', ' ').replace('\u2212', '-');
    }
}
