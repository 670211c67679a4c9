package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.Line;
import clipwitness.reading.file.Notes;
import clipwitness.reading.number.Delimiter;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Decides delimiter and decimal mark together, once for the whole file: the pair under which most lines look alike and hold nothing
 * but numbers.
 */
public final class DialectFinder {
    private static final int LINES_FROM_EACH_PART = 100;
    private static final int LEAST_ROWS_WITH_TEXT = 3;
    private static final int MOST_EMPTY = 20; // a column filled in one row of twenty is still a column

    private static final Pattern ANNOTATED =
            Pattern.compile("\\d:\\d\\d[.:]|\\d\\s?[^\\d\\s.,;:]{0,5}[vVaAsS](?![A-Za-z])|(?i)\\d\\s?(?:volt|amp|sec)");

    /** In the order in which they are preferred where nothing else tells them apart. */
    private static final List<Dialect> CANDIDATES = List.of(
            new Dialect(Delimiter.TAB, '.'),
            new Dialect(Delimiter.TAB, ','),
            new Dialect(Delimiter.SEMICOLON, '.'),
            new Dialect(Delimiter.SEMICOLON, ','),
            new Dialect(Delimiter.COMMA, '.'),
            new Dialect(Delimiter.COMMA, ','),
            new Dialect(Delimiter.BLANKS, '.'),
            new Dialect(Delimiter.BLANKS, ','),
            new Dialect(Delimiter.MIXED, '.'));

    /** Styles without text first, unless they fit few lines only. */
    private static final Comparator<RowStyle> BETTER = Comparator.comparing(RowStyle::plain)
            .thenComparing(RowStyle::rows)
            .thenComparing(s -> Math.min(s.numbers(), 2))
            .thenComparing(s -> s.pure() ? Integer.MAX_VALUE : s.numbers());

    private DialectFinder() {}

    /** The style of the file's rows. */
    public static RowStyle find(String file, Head head, Notes notes) throws InputException {
        List<Line> lines = head.lines();
        List<Line> sample = sample(lines, head.last());
        Thousands.refuse(file, sample);
        List<Dialect> candidates = told(sample);
        RowStyle best = best(candidates, sample);
        if (mayBeAnnotated(sample)) {
            RowStyle annotated =
                    best(candidates.stream().map(Dialect::withAnnotated).toList(), sample);
            best = isBetter(annotated, best) ? annotated : best;
        }
        if (best == null) {
            throw noNumbers(file, lines.size());
        }
        RowStyle found = CommaTwice.settle(file, sample, withDelimiterOfHeader(best, sample));
        notes.evidence(evidence(found, sample.size()));
        return found;
    }

    /** The candidates without those that see every line as one cell, as the tab before them does. */
    private static List<Dialect> told(List<Line> sample) {
        if (holdsAny(sample, Delimiter.TAB)) {
            return CANDIDATES;
        }
        Set<Delimiter> held = EnumSet.of(Delimiter.TAB);
        Stream.of(Delimiter.values()).filter(d -> holdsAny(sample, d)).forEach(held::add);
        return CANDIDATES.stream().filter(c -> held.contains(c.delimiter())).toList();
    }

    private static boolean holdsAny(List<Line> lines, Delimiter delimiter) {
        return lines.stream().anyMatch(l -> delimiter.within(l.text()));
    }

    private static Remark evidence(RowStyle found, int looked) {
        Argument dialect = Argument.inner(found.dialect().evidence());
        return found.numbers() == 1
                ? Remark.of(LayoutRemark.ROWS_OF_ONE, dialect, Argument.count(found.rows()), Argument.count(looked))
                : Remark.of(
                        LayoutRemark.ROWS,
                        dialect,
                        Argument.count(found.rows()),
                        Argument.count(looked),
                        Argument.count(found.numbers()));
    }

    private static RowStyle best(List<Dialect> candidates, List<Line> sample) {
        RowStyle best = null;
        for (Dialect candidate : candidates) {
            if (candidate.delimiter() == Delimiter.MIXED && best != null && 2 * best.rows() >= sample.size()) {
                continue; // a mixture fits almost anything, so it is the last resort
            }
            Optional<RowStyle> style = style(candidate, sample);
            if (style.isPresent() && (best == null || BETTER.compare(style.get(), best) > 0)) {
                best = style.get();
            }
        }
        return best;
    }

    /** Whether rows look better with their numbers annotated: more of the cells are numbers then, or no text is left. */
    private static boolean isBetter(RowStyle annotated, RowStyle plain) {
        if (annotated == null || plain == null) {
            return annotated != null;
        }
        boolean beside = !plain.pure() && annotated.numbers() > plain.numbers(); // text besides, a date for instance
        boolean asMany = annotated.rows() >= plain.rows() && (annotated.pure() || beside);
        boolean more = annotated.numbers() > plain.numbers()
                || (annotated.numbers() == plain.numbers() && annotated.rows() > plain.rows());
        return asMany && (!plain.pure() || more);
    }

    /** Whether every third line at least holds what might be a number with a unit or a time of day. */
    private static boolean mayBeAnnotated(List<Line> lines) {
        long found = lines.stream()
                .map(Line::text)
                .filter(l -> mayBeAnnotated(l) && ANNOTATED.matcher(l).find())
                .count();
        return found * 3 >= lines.size();
    }

    /** Each annotation has one of these: looked for first, as most lines have none. */
    private static boolean mayBeAnnotated(String line) {
        for (int i = 0; i < line.length(); i++) {
            switch (line.charAt(i)) {
                case ':', 'v', 'V', 'a', 'A', 's', 'S' -> {
                    return true;
                }
                default -> {}
            }
        }
        return false;
    }

    /** Lines from the start and the end of the head, and from the end of the file. */
    private static List<Line> sample(List<Line> lines, List<Line> last) {
        List<Line> filled = new ArrayList<>(lines);
        filled.addAll(last);
        filled.removeIf(Line::blank);
        if (filled.size() <= 3 * LINES_FROM_EACH_PART) {
            return filled;
        }
        List<Line> sample = new ArrayList<>(filled.subList(0, LINES_FROM_EACH_PART));
        int half = filled.size() / 2;
        sample.addAll(filled.subList(half, half + LINES_FROM_EACH_PART));
        sample.addAll(filled.subList(filled.size() - LINES_FROM_EACH_PART, filled.size()));
        return sample;
    }

    private static Optional<RowStyle> style(Dialect dialect, List<Line> lines) {
        Map<String, Integer> counts = new HashMap<>();
        if (dialect.delimiter() == Delimiter.COMMA && dialect.mark() == ',' && !commaInNumber(dialect, lines)) {
            return Optional.empty(); // only quotes distinguish a comma inside a number from a delimiter
        }
        for (Line line : lines) {
            counts.merge(dialect.signature(line.text().getBytes(StandardCharsets.UTF_8)), 1, Integer::sum);
        }
        counts.keySet().removeIf(s -> Signature.numbers(s) == 0);
        return counts.entrySet().stream()
                .map(e -> new RowStyle(dialect, e.getKey(), e.getValue(), lines.size()))
                .filter(s -> s.pure() || (s.rows() >= LEAST_ROWS_WITH_TEXT && s.numbers() > 1))
                .max(BETTER.thenComparing(RowStyle::signature))
                .map(s -> withSparseColumns(s, counts))
                .map(s -> LaterColumns.added(s, lines));
    }

    private static boolean commaInNumber(Dialect dialect, List<Line> lines) {
        return lines.stream()
                .filter(l -> l.text().indexOf('"') >= 0)
                .flatMap(l -> dialect.split(l.text()).stream())
                .anyMatch(c -> c.indexOf(',') >= 0 && dialect.isNumber(c));
    }

    /** A column that many rows leave empty, in a channel that ends earlier for instance, is a column all the same. */
    private static RowStyle withSparseColumns(RowStyle style, Map<String, Integer> counts) {
        String signature = style.signature();
        for (Map.Entry<String, Integer> other : counts.entrySet()) {
            boolean many = other.getValue() >= LEAST_ROWS_WITH_TEXT && other.getValue() * MOST_EMPTY >= style.rows();
            if (style.pure() && many && Signature.pure(other.getKey())) {
                signature = Signature.joined(signature, other.getKey());
            }
        }
        return new RowStyle(style.dialect(), signature, style.rows(), style.lines());
    }

    /** Rows of one number do not show the delimiter: it is the one that the other lines use most. */
    private static RowStyle withDelimiterOfHeader(RowStyle style, List<Line> lines) {
        if (style.signature().length() > 1) {
            return style;
        }
        Delimiter best = style.dialect().mark() == ',' ? Delimiter.SEMICOLON : Delimiter.COMMA;
        long most = 0;
        for (Delimiter delimiter : List.of(Delimiter.COMMA, Delimiter.SEMICOLON, Delimiter.TAB)) {
            boolean taken = delimiter == Delimiter.COMMA && style.dialect().mark() == ',';
            long count = lines.stream()
                    .flatMapToInt(l -> l.text().chars())
                    .filter(delimiter::ends)
                    .count();
            if (!taken && count > most) {
                most = count;
                best = delimiter;
            }
        }
        return new RowStyle(
                new Dialect(best, style.dialect().mark(), style.dialect().annotated()),
                style.signature(),
                style.rows(),
                style.lines());
    }

    private static InputException noNumbers(String file, int lines) {
        return new InputException(
                ErrorCode.NOT_AN_EXPORT,
                Origin.of(file),
                lines == 1
                        ? "its only line is no row of numbers"
                        : "none of its first " + lines + " lines is a row of numbers",
                "Is this the export itself? Export the samples, not the settings or a picture");
    }
}
