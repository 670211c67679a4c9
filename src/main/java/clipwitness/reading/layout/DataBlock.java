package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Line;
import clipwitness.reading.number.AnnotatedNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Where the samples begin in the first lines of a file.
 *
 * @param style   how their rows look
 * @param columns places of the cells that hold numbers, from 0
 * @param before  lines in front of the first row
 * @param rows    rows within the head, blank lines left out
 * @param firstRows the cells of the first rows, from the first one on in which all columns are filled; a row may be shorter than others
 */
public record DataBlock(
        RowStyle style, List<Integer> columns, List<Line> before, List<Line> rows, List<List<String>> firstRows) {
    private static final Pattern UNDERLINE = Pattern.compile("[\\s,;|+]*(?:-{4,}[\\s,;|+]*)+");
    private static final int ROWS_LOOKED_AT = 300;
    private static final int STATEMENTS_REACH = 1_000;

    public DataBlock {
        columns = List.copyOf(columns);
        before = List.copyOf(before);
        rows = List.copyOf(rows);
        firstRows = List.copyOf(firstRows);
    }

    private DataBlock(RowStyle style, List<Integer> columns, List<Line> before, List<Line> rows) {
        this(style, columns, before, rows, firstRows(style, columns, rows));
    }

    /** Finds the rows. */
    public static DataBlock find(String file, List<Line> lines, RowStyle style) throws InputException {
        List<Integer> columns = IntStream.range(0, style.signature().length())
                .filter(style::isNumber)
                .boxed()
                .toList();
        List<Line> filled = new ArrayList<>(lines);
        filled.removeIf(Line::blank);
        List<Line> plain = new ArrayList<>(filled);
        plain.removeIf(l -> Comments.isComment(l.text()));
        int first = new RowFinder(plain, style, columns).first();
        if (first < 0) {
            throw new InputException(
                    ErrorCode.NOT_AN_EXPORT,
                    Origin.of(file),
                    "no two rows of numbers follow each other",
                    "Is this the export itself? Export the samples, not the settings or a picture");
        }
        first += isUnderline(plain, first) ? 1 : 0;
        int line = plain.get(first).number();
        List<Line> before = filled.stream().takeWhile(l -> l.number() < line).toList();
        return new DataBlock(style, columns, before, plain.subList(first, plain.size()));
    }

    /** Whether the first row is but a line drawn below the headings, its strokes taken for marks of missing values. */
    private static boolean isUnderline(List<Line> lines, int first) {
        return first > 0
                && first + 1 < lines.size()
                && UNDERLINE.matcher(lines.get(first).text()).matches();
    }

    public Dialect dialect() {
        return style.dialect();
    }

    /** Number of the line with the first row. */
    public int firstLine() {
        return rows.get(0).number();
    }

    /** Number of cells that a row may have: those of most rows, or of the first where statements stand to the right. */
    public int widest() {
        List<String> first = dialect().split(rows.get(0).text());
        int usual = style.signature().length();
        boolean stated = first.stream()
                        .skip(usual)
                        .anyMatch(c -> !c.isEmpty() && !dialect().isNumber(c))
                || IntStream.range(usual, first.size()).anyMatch(this::isNamed);
        return stated ? Math.max(Signature.of(first, dialect()).length(), usual) : usual;
    }

    /** Whether a line above the rows has a cell at this place, from 0, which may be the name of a statement. */
    private boolean isNamed(int place) {
        return before.stream()
                .map(line -> dialect().split(line.text()))
                .anyMatch(cells -> place < cells.size() && !cells.get(place).isEmpty());
    }

    /** The unit that is written with the numbers at a place of the rows, from 0: seconds for times of day. */
    public Optional<Unit> unitWithin(int place) {
        return dialect().annotated()
                ? firstRows().stream()
                        .filter(r -> place < r.size())
                        .map(r -> AnnotatedNumber.parse(r.get(place)))
                        .flatMap(Optional::stream)
                        .map(AnnotatedNumber::unit)
                        .findFirst()
                : Optional.empty();
    }

    /**
     * About how many rows so many bytes hold, if the others are as long as those of the head.
     *
     * @param bytes the bytes
     * @param head  how many bytes the rows of the head take, above 0
     */
    public long rowsIn(long bytes, long head) {
        return (long) (1.01 * bytes / head * rows.size()) + 1;
    }

    private static List<List<String>> firstRows(RowStyle style, List<Integer> columns, List<Line> rows) {
        return rows.stream()
                .skip(firstFull(style.dialect(), columns, rows))
                .limit(ROWS_LOOKED_AT)
                .map(r -> style.dialect().split(r.text()))
                .toList();
    }

    /** The cells of the first row in which all columns are filled; of the first row where there is none. */
    List<String> firstRow() {
        return firstRows.get(0);
    }

    private static int firstFull(Dialect dialect, List<Integer> columns, List<Line> rows) {
        return IntStream.range(0, rows.size())
                .filter(i -> {
                    List<String> cells = dialect.split(rows.get(i).text());
                    return columns.stream()
                            .allMatch(c -> c < cells.size() && !cells.get(c).isEmpty());
                })
                .findFirst()
                .orElse(0);
    }

    /**
     * Statements that stand beside the samples, in columns which further down are empty. Where two records stand side by side, each
     * with its statements in front, statements of one key on one line become one, with a value for each record.
     */
    public List<Statement> besideRows() {
        List<Statement> facts = new ArrayList<>();
        for (Line row : rows.subList(0, Math.min(rows.size(), STATEMENTS_REACH))) {
            if (holdsSamplesOnly(row.text())) {
                continue;
            }
            Map<String, List<String>> byKey = new LinkedHashMap<>();
            for (List<String> group : groupsBeside(dialect().split(row.text()))) {
                for (Statement fact : Preamble.factsOf(group, row.number())) {
                    byKey.computeIfAbsent(fact.key(), k -> new ArrayList<>()).addAll(fact.values());
                }
            }
            byKey.forEach((key, values) -> facts.add(new Statement(key, values, row.number())));
        }
        return facts;
    }

    /** Whether a row has no more cells than samples have columns, seen from its delimiters alone. */
    private boolean holdsSamplesOnly(String row) {
        return style.signature().indexOf(Signature.EMPTY) < 0
                && dialect().delimiter().count(row) < style.signature().length();
    }

    /** Cells outside the columns of samples, those between two columns together. */
    private List<List<String>> groupsBeside(List<String> cells) {
        List<List<String>> groups = new ArrayList<>();
        boolean open = false;
        for (int place = 0; place < cells.size(); place++) {
            boolean beside = place >= style.signature().length() || style.isEmpty(place);
            if (beside && !open) {
                groups.add(new ArrayList<>());
            }
            if (beside) {
                groups.get(groups.size() - 1).add(cells.get(place));
            }
            open = beside;
        }
        return groups;
    }
}
