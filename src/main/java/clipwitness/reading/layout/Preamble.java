package clipwitness.reading.layout;

import clipwitness.reading.file.Line;
import clipwitness.reading.number.Delimiter;
import clipwitness.reading.number.ValueText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What an export states before and beside its samples.
 *
 * @param facts statements in the order of the file
 * @param lines the lines they stand on, comment marks removed
 * @param mark  decimal mark of the samples
 */
public record Preamble(List<Statement> facts, List<Line> lines, char mark) {
    private static final int LONGEST_STATEMENT = 300;
    private static final int LONGEST_LINE = 2_000;
    private static final List<Delimiter> OTHERS = List.of(Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA);
    private static final Pattern KEY_MARK_VALUE =
            Pattern.compile("(?<key>[^:=]*\\p{L}[^:=]*?)\\s*[:=]\\s*(?<value>\\S.*)");
    private static final Pattern KEY_NUMBER =
            Pattern.compile("(?<key>\\p{L}[\\p{L} _/.-]*?)\\s+(?<value>[+-]?[\\d.]\\S*.*)");

    public Preamble {
        facts = List.copyOf(facts);
        lines = List.copyOf(lines);
    }

    /** Reads statements from lines in front of the samples. */
    public static Preamble of(List<Line> before, Dialect dialect) {
        List<Statement> facts = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (Line line : before) {
            String text = Comments.stripped(line.text(), dialect).strip();
            if (!text.isEmpty() && text.length() <= LONGEST_LINE) {
                lines.add(new Line(line.number(), text));
                facts.addAll(factsOf(cells(text, dialect), line.number()));
            }
        }
        return new Preamble(facts, lines, dialect.mark());
    }

    /** The same with more statements, from elsewhere in the file. */
    public Preamble with(List<Statement> more) {
        return new Preamble(Stream.concat(facts.stream(), more.stream()).toList(), lines, mark);
    }

    /** Statements of one row of cells: key and values, and pairs of a key and a number further on. */
    static List<Statement> factsOf(List<String> cells, int line) {
        List<String> filled = cells.stream()
                .filter(c -> !c.isEmpty() && c.length() <= LONGEST_STATEMENT)
                .toList();
        List<Statement> facts = new ArrayList<>();
        for (int i = 0; i < filled.size(); i++) {
            Matcher inside = KEY_MARK_VALUE.matcher(filled.get(i));
            Matcher number = KEY_NUMBER.matcher(filled.get(i));
            if (inside.matches()) {
                List<String> values = new ArrayList<>(List.of(inside.group("value")));
                values.addAll(i == 0 ? filled.subList(1, filled.size()) : List.of());
                facts.add(new Statement(inside.group("key"), values, line));
            } else if (filled.size() == 1 && number.matches()) {
                facts.add(new Statement(number.group("key"), List.of(number.group("value")), line));
            } else if (i + 1 < filled.size() && (i == 0 || startsWithNumber(filled.get(i + 1)))) {
                facts.add(new Statement(withoutColon(filled.get(i)), filled.subList(i + 1, filled.size()), line));
            }
        }
        return facts;
    }

    private static List<String> cells(String text, Dialect dialect) {
        List<String> cells = dialect.delimiter().blanks() ? List.of(text) : dialect.split(text);
        if (cells.size() > 1
                || text.length() > LONGEST_STATEMENT
                || KEY_MARK_VALUE.matcher(text).matches()) {
            return cells;
        }
        return OTHERS.stream()
                .map(d -> new Dialect(d, dialect.mark()).split(text))
                .filter(c -> c.size() > 1)
                .findFirst()
                .orElse(cells);
    }

    private static boolean startsWithNumber(String cell) {
        return ValueText.parse(cell).isPresent();
    }

    private static String withoutColon(String key) {
        return key.replaceFirst("\\s*[:=]\\s*$", "");
    }
}
