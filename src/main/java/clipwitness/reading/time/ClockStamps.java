package clipwitness.reading.time;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Column;
import clipwitness.reading.number.WrittenUnit;

/** Time stamps out of two columns: whole seconds and their fraction. */
public final class ClockStamps {
    private static final int MOST_DIGITS = 9;
    private static final WrittenUnit SECONDS = new WrittenUnit(Unit.SECOND, 0);

    private ClockStamps() {}

    /**
     * Joins them.
     *
     * @param whole    whole seconds; the fractions are added to them in place
     * @param digits   most significant digits of one of these
     * @param fraction the column of fractions, and its unit
     * @param parts    fractions as written
     * @return most significant digits that one of the stamps is written with
     * @throws InputException if one is missing, or the time runs back
     */
    public static int join(String file, double[] whole, int digits, Column fraction, double[] parts)
            throws InputException {
        WrittenUnit unit = fraction.heading().unit().orElse(SECONDS);
        int places = 0;
        for (int i = 0; i < whole.length; i++) {
            double part = unit.resolve(parts[i]);
            places = places(part, places);
            whole[i] += part;
            if (!(part >= 0 && part < 1) || (i > 0 && whole[i] < whole[i - 1])) { // NaN lands here too
                throw new InputException(
                        ErrorCode.BAD_TIME,
                        new Origin(file, 0, "column " + fraction.called()),
                        "with this fraction of a second the time of sample " + (i + 1) + " does not go on",
                        "If a further record starts there, export one record a file");
            }
        }
        return digits + places;
    }

    /** Places behind the decimal mark that a fraction needs, at least as many as others need. */
    private static int places(double part, int atLeast) {
        int places = atLeast;
        while (places < MOST_DIGITS && Math.abs(shifted(part, places) - Math.rint(shifted(part, places))) > 1e-6) {
            places++;
        }
        return places;
    }

    private static double shifted(double part, int places) {
        return part * Math.pow(10, places);
    }
}
