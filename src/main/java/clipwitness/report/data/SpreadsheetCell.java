package clipwitness.report.data;

import java.util.regex.Pattern;

/**
 * A cell that a spreadsheet takes for what it is. A text that begins with {@code = + - @}, a tab or a carriage return may be run as a formula (CWE-1236);
 * such a text gets an apostrophe before it, which spreadsheets read as "this is text". Numbers stay as they are.
 */
final class SpreadsheetCell {
    private static final Pattern FORMULA = Pattern.compile("[=+\\-@\\t\\r\uff1d\uff0b\uff0d\uff20].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?");

    private SpreadsheetCell() {}

    static String harmless(String cell) {
        if (cell.isEmpty() || (cell.charAt(0) >= '0' && cell.charAt(0) <= '9')) {
            return cell;
        }
        boolean formula =
                FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches();
        return formula ? "'" + cell : cell;
    }
}
