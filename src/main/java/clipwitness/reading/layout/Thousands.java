package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Line;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds numbers with separators between the thousands, which are never guessed at: they might as well be two columns. */
final class Thousands {
    private static final int LEAST = 2;
    private static final String GROUPS = "[+-]?\\d{1,3}(?:[ \\u00a0\\u202f'\\u2019]\\d{3})+(?:[.,]\\d+)?";
    private static final String GROUPS_AND_MARK = "[+-]?\\d{1,3}(?:,\\d{3})+\\.\\d+|[+-]?\\d{1,3}(?:\\.\\d{3})+,\\d+";
    /** Between commas only with a decimal point: there blanks may well separate two numbers with decimal comma. */
    private static final String WITH_POINT = GROUPS.replace("(?:[.,]\\d+)?", "\\.\\d+");

    private static final String EITHER = GROUPS + "|" + GROUPS_AND_MARK;
    private static final Pattern CELL = Pattern.compile("(?:[\\t;]\\s*|^)(?<bare>" + EITHER + ")\\s*(?=[\\t;])"
            + "|[\\t;]\\s*(?<last>" + EITHER + ")\\s*$"
            + "|(?:,\\s*|^)(?<point>" + WITH_POINT + ")\\s*(?=,|$)"
            + "|\"(?<quoted>" + EITHER + ")\"");
    private static final Pattern STATEMENT = Pattern.compile("[\\s\"]*\\p{L}.*");

    private Thousands() {}

    /** Refuses a file with such numbers on two lines or more. */
    static void refuse(String file, List<Line> lines) throws InputException {
        int found = 0;
        Line first = null;
        String cell = "";
        for (Line line : lines) {
            if (!mayHold(line.text())) {
                continue;
            }
            Matcher m = CELL.matcher(line.text());
            boolean row = !Comments.isComment(line.text())
                    && !STATEMENT.matcher(line.text()).matches();
            if (row && m.find()) {
                found++;
                first = first == null ? line : first;
                cell = found == 1 ? cell(m) : cell;
            }
        }
        if (found >= LEAST) {
            throw new InputException(
                    ErrorCode.BAD_NUMBER,
                    Origin.of(file, first.number()),
                    "'" + cell + "' has separators between the thousands",
                    "Export it again without them");
        }
    }

    /** Whether a line has a separator of groups, a quote, or a delimiter beside which a comma may separate groups: every form has one. */
    private static boolean mayHold(String line) {
        for (int i = 0; i < line.length(); i++) {
            switch (line.charAt(i)) {
                case ' ', '\u00a0', '\u202f', '\'', '\u2019', ';', '\t', '"' -> {
                    return true;
                }
                default -> {}
            }
        }
        return false;
    }

    private static String cell(Matcher m) {
        return Stream.of("bare", "last", "point", "quoted")
                .map(m::group)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow();
    }
}
