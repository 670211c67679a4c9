package clipwitness.reading.rows;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.ForeignFormat;
import clipwitness.reading.layout.Dialect;
import java.nio.charset.StandardCharsets;

/** What the user is told about a row that cannot be read. */
final class RowFaults {
    private static final int LONGEST_QUOTE = 40;
    private static final String REPAIR = "Is the row damaged? Export the capture again; no row is ever skipped";
    private static final String SWEPT =
            "If it is a voltage that is swept, write headings with units above the columns, or state"
                    + " the units, one for each column: the column unit of captures.csv or the option --unit of look, V,A";
    private static final String ONE_RECORD = "If a further record starts here, export one record a file";

    private final String file;
    private final RowPlan plan;

    RowFaults(String file, RowPlan plan) {
        this.file = file;
        this.plan = plan;
    }

    InputException notANumber(byte[] bytes, int from, int to, int line, int column) {
        String text = quoted(bytes, from, to);
        if (text.indexOf('\0') >= 0) {
            return ForeignFormat.zeroBytes(file, line);
        }
        Origin where = new Origin(file, line, "column " + plan.names().get(column));
        char mark = plan.dialect().mark();
        char other = mark == '.' ? ',' : '.';
        if (text.indexOf(mark) >= 0 && text.indexOf(other) >= 0) {
            return new InputException(
                    ErrorCode.BAD_NUMBER,
                    where,
                    "'" + text + "' has point and comma",
                    "Export it again without separators between the thousands");
        }
        if (new Dialect(plan.dialect().delimiter(), other).isNumber(text)) {
            String used = mark == '.' ? "a decimal point" : "a decimal comma";
            return new InputException(
                    ErrorCode.BAD_NUMBER,
                    where,
                    "'" + text + "' is not a number: the file writes " + used,
                    "Export it again with one decimal mark");
        }
        return new InputException(
                ErrorCode.BAD_NUMBER, where, "'" + text + "' is not a number", column == 0 ? ONE_RECORD : REPAIR);
    }

    InputException otherUnit(byte[] bytes, int from, int to, int line, int column) {
        return new InputException(
                ErrorCode.BAD_NUMBER,
                new Origin(file, line, "column " + plan.names().get(column)),
                "'" + quoted(bytes, from, to) + "' does not have the unit of the other cells in its column",
                REPAIR);
    }

    InputException text(byte[] bytes, int from, int to, int line) {
        return new InputException(
                ErrorCode.BAD_ROW,
                Origin.of(file, line),
                "'" + quoted(bytes, from, to) + "' is found where a row is expected",
                ONE_RECORD);
    }

    InputException tooShort(int line, int cells) {
        return new InputException(
                ErrorCode.BAD_ROW,
                Origin.of(file, line),
                "the row has " + cells + " of the " + plan.places().size() + " values that other rows have",
                REPAIR);
    }

    InputException tooLong(int line) {
        return new InputException(
                ErrorCode.BAD_ROW,
                Origin.of(file, line),
                "the row has more than the " + plan.cells() + " cells that other rows have",
                REPAIR);
    }

    InputException noTime(int line) {
        return new InputException(ErrorCode.BAD_TIME, timeAt(line), "the time stamp has no value", REPAIR);
    }

    InputException timeRunsBack(int line, double before, double time) {
        return plan.assumed()
                ? new InputException(
                        ErrorCode.BAD_TIME,
                        timeAt(line),
                        "the column runs back from " + before + " to " + time + ", and no heading says what it is",
                        SWEPT + ". " + ONE_RECORD)
                : new InputException(
                        ErrorCode.BAD_TIME,
                        timeAt(line),
                        "the time runs back from " + before + " to " + time,
                        ONE_RECORD);
    }

    private Origin timeAt(int line) {
        return new Origin(file, line, "column " + plan.names().get(plan.time()));
    }

    private static String quoted(byte[] bytes, int from, int to) {
        return new String(bytes, from, Math.min(to - from, LONGEST_QUOTE), StandardCharsets.UTF_8);
    }
}
