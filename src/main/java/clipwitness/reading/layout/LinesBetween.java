package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Line;
import clipwitness.reading.file.Notes;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.List;
import java.util.regex.Pattern;

/** Lines between the headings and the first row that are neither: each is named. */
public final class LinesBetween {
    private static final int LONGEST_QUOTE = 40;
    /** What version control writes into a file where two versions contradict each other. */
    private static final Pattern MARK = Pattern.compile("(?:<{7}|>{7}|\\|{7})(?:\\s.*)?");

    /** A key and its value with a mark between them; cells side by side may as well be a damaged row. */
    private static final Pattern STATEMENT = Pattern.compile("[\"']?\\p{L}[^:=]*\\s*[:=].*");

    private static final Pattern JUNK = Pattern.compile("\\s*(?:[<>@=~^&|?$+-]{2,}|[-=_]{3,})");

    private LinesBetween() {}

    /** Refuses a file that holds two versions of itself, told by the marks between them. */
    public static void refuseMarks(String file, List<Line> before) throws InputException {
        for (Line line : before) {
            if (MARK.matcher(line.text()).matches()) {
                throw new InputException(
                        ErrorCode.DAMAGED,
                        Origin.of(file, line.number()),
                        "'" + quoted(line.text())
                                + "' is neither heading nor row: it marks two versions of the file in one",
                        "Copy the export from the instrument again");
            }
        }
    }

    /** Whether a line starts with marks that no heading, statement or comment starts with. */
    static boolean isJunk(Line line) {
        return JUNK.matcher(line.text()).lookingAt();
    }

    /**
     * Notes each such line.
     *
     * @param names number of the line of names
     * @param units number of the line of units, 0 for none
     */
    static void note(DataBlock block, int names, int units, Notes notes) {
        for (Line line : block.before()) {
            String text = Comments.stripped(line.text(), block.dialect()).strip();
            boolean own = line.text().strip().equals(text);
            boolean states = STATEMENT.matcher(text).matches();
            boolean unknown = own && !text.isEmpty() && !states;
            if (line.number() > names && line.number() != units && (unknown || isJunk(line))) {
                notes.evidence(LayoutRemark.LINE_BETWEEN, Argument.count(line.number()), Argument.name(quoted(text)));
            }
        }
    }

    private static String quoted(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }
}
