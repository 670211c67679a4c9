package clipwitness.report.data;

import java.util.regex.Pattern;

/**
 * A cell that a spreadsheet takes for what it is. A text that begins with {@code = + - @}, a tab or a carriage return may be run as a formula (CWE-1236);
 * such a text gets an apostrophe before it, which spreadsheets read as "this is text". Numbers stay as they are.
 */
final class SpreadsheetCell {
    /** What a formula may begin with; the last four are the wide forms of the first. */
    private static final String FORMULA = "=+-@\t\r\uff1d\uff0b\uff0d\uff20";

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?");

    private SpreadsheetCell() {}

    static String harmless(String cell) {
        boolean formula = !cell.isEmpty()
                && FORMULA.indexOf(cell.charAt(0)) >= 0
                && !NUMBER.matcher(cell).matches();
        return formula ? "'" + cell : cell;
    }
}
