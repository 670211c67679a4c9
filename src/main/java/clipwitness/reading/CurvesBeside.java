package clipwitness.reading;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Column;
import java.util.List;
import java.util.regex.Pattern;

/** Curves side by side: pairs of voltage and current that are called alike but for a number or a letter set apart. */
final class CurvesBeside {
    /** What tells columns of one kind apart: digits, signs, and a letter behind a blank; not the terminals of a transistor, Vb and Vc. */
    private static final Pattern NUMBERING = Pattern.compile("(?i)[ -][a-d]$|[^\\p{L}]");

    private static final int PAIR = 2;

    private CurvesBeside() {}

    /**
     * Refuses a file in which one curve stands beside another.
     *
     * @param columns columns of the curve, in the order of the file
     */
    static void refuse(String file, List<Column> columns) throws InputException {
        for (int i = PAIR; i + 1 < columns.size(); i++) {
            Column first = columns.get(i);
            boolean pair = alike(columns.get(i - PAIR), first) && alike(columns.get(i - PAIR + 1), columns.get(i + 1));
            boolean curve = (is(first, Unit.VOLT) && is(columns.get(i + 1), Unit.AMPERE))
                    || (is(first, Unit.AMPERE) && is(columns.get(i + 1), Unit.VOLT));
            if (pair && curve) {
                throw new InputException(
                        ErrorCode.SEVERAL_RECORDS,
                        new Origin(file, 0, "column " + first.called()),
                        "a second pair of voltage and current begins in cell " + (first.place() + 1)
                                + " of the rows: two curves stand side by side",
                        "Export one curve a file");
            }
        }
    }

    private static boolean alike(Column one, Column other) {
        boolean sameKind = is(one, Unit.VOLT) == is(other, Unit.VOLT) && is(one, Unit.AMPERE) == is(other, Unit.AMPERE);
        return sameKind && stem(one).equalsIgnoreCase(stem(other));
    }

    private static String stem(Column column) {
        return NUMBERING.matcher(column.heading().name().strip()).replaceAll("");
    }

    private static boolean is(Column column, Unit unit) {
        return column.heading()
                .unit()
                .map(u -> u.unit() == unit)
                .orElseGet(() ->
                        column.heading().unitByName().filter(u -> u == unit).isPresent());
    }
}
