package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Line;
import clipwitness.reading.number.Delimiter;
import clipwitness.reading.number.ValueText;
import clipwitness.reading.number.WrittenUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A line above the samples, its cells laid over the columns of numbers.
 *
 * @param line  number of the line
 * @param cells all cells
 * @param over  for each column of numbers the cell above it
 */
record HeaderRow(int line, List<String> cells, List<String> over) {
    private static final Pattern WIDE_GAP = Pattern.compile("\\t+| {2,}");
    private static final Pattern BLANK_BEFORE_BRACKET = Pattern.compile("\\s+(?=[(\\[])");
    private static final Pattern CHANNEL = Pattern.compile(
            "(?i)(?:ch|c|chan|channel|kanal|canal|canale|voie|trace|probe|math|ref|in|out|input|output)?[ ._-]?(?:\\d+|[A-D])?");
    private static final Pattern ANNOUNCEMENT =
            Pattern.compile("(?i).*(?:data|daten|waveform|values|samples|record|begin|start|header|[:*]).*");
    private static final Pattern OTHER_UNIT = Pattern.compile("[^\\s\\d]{1,6}");
    private static final List<String> COUNT_WORDS =
            List.of("count", "counts", "sequence", "sample", "samples", "points", "index", "-", "1");
    private static final List<Delimiter> OTHERS = List.of(Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA);

    HeaderRow {
        cells = List.copyOf(cells);
        over = List.copyOf(over);
    }

    /** Lays a line over the columns; where the file's delimiter does not fit the line, another one may. */
    static HeaderRow of(Line line, DataBlock block) {
        List<Integer> columns = block.columns();
        int last = columns.get(columns.size() - 1);
        String text = Markup.stripped(Comments.stripped(line.text(), block.dialect()));
        for (List<String> cells : splits(text, block.dialect(), columns.size())) {
            if (cells.size() > last) {
                return new HeaderRow(
                        line.number(), cells, columns.stream().map(cells::get).toList());
            }
            if (cells.size() == columns.size()) {
                return new HeaderRow(line.number(), cells, cells);
            }
        }
        return new HeaderRow(line.number(), block.dialect().split(text), List.of());
    }

    /** Whether the cells fit the columns at all. */
    boolean covers() {
        return !over.isEmpty() && over.stream().anyMatch(c -> !c.isEmpty());
    }

    /** Units over the columns and nothing else. */
    boolean isUnits() {
        return covers()
                && !statesUnit()
                && over.stream()
                        .allMatch(c -> c.isEmpty()
                                || isUnit(c)
                                || COUNT_WORDS.contains(c.toLowerCase(java.util.Locale.ROOT))
                                || isOtherUnit(c))
                && over.stream().anyMatch(HeaderRow::isUnit);
    }

    /** Whether a cell may be a unit that is not known here: behind a unit of time and beside volts or amperes, and no name. */
    boolean isOtherUnit(String cell) {
        Optional<WrittenUnit> first = over.isEmpty() ? Optional.empty() : WrittenUnit.parse(over.get(0));
        return first.filter(u -> u.unit() == Unit.SECOND).isPresent()
                && over.stream().anyMatch(c -> !Ampere.isDoubtful(c) && isVoltsOrAmperes(c))
                && OTHER_UNIT.matcher(cell).matches()
                && !isUnit(cell)
                && !CHANNEL.matcher(cell).matches()
                && !COUNT_WORDS.contains(cell.toLowerCase(java.util.Locale.ROOT))
                && ColumnRole.of(cell) == ColumnRole.UNKNOWN;
    }

    /** Of volts and amperes it names only amperes, by letters that may be a channel's name as well. */
    boolean mayBeChannels() {
        return over.stream().anyMatch(Ampere::isDoubtful)
                && over.stream()
                        .filter(c -> !Ampere.isDoubtful(c) || Ampere.isUnit(c, over))
                        .noneMatch(HeaderRow::isVoltsOrAmperes);
    }

    private static boolean isVoltsOrAmperes(String cell) {
        return WrittenUnit.parse(cell)
                .filter(u -> u.unit() == Unit.VOLT || u.unit() == Unit.AMPERE)
                .isPresent();
    }

    /** Names over the columns: text, or bare channel numbers after the name of a time or an index. */
    boolean isNames(Dialect dialect) {
        boolean axis = covers() && ColumnRole.of(Heading.of(over.get(0)).name()).isOfSamples();
        return covers()
                && IntStream.range(0, over.size())
                        .allMatch(i -> over.get(i).isEmpty() || !isValue(over.get(i), dialect) || (axis && i > 0));
    }

    /** Whether a cell names time, voltage, current, an index, a channel or a unit. */
    boolean speaksOfColumns() {
        return over.stream()
                .anyMatch(c -> !c.isEmpty()
                        && (isUnit(c)
                                || Heading.of(c).unit().isPresent()
                                || ColumnRole.of(c).isOfSamples()
                                || ColumnRole.of(c) == ColumnRole.FREQUENCY
                                || ColumnRole.isAbscissa(c)
                                || CHANNEL.matcher(c).matches()));
    }

    /** Nothing but a time and further names, each with its unit: headings, whatever stands between them and the samples. */
    boolean isSureOfTime(Dialect dialect) {
        List<Heading> headings = over.stream().map(Heading::of).toList();
        return isNames(dialect)
                && over.size() > 1
                && cells.size() == over.size()
                && headings.get(0).role() == ColumnRole.TIME
                && headings.stream()
                        .allMatch(h -> !h.name().isEmpty() && h.unit().isPresent());
    }

    /** A statement of the preamble about units, which might pass for names or for the units themselves. */
    boolean statesUnit() {
        return cells.stream()
                .filter(c -> !c.isEmpty())
                .findFirst()
                .filter(Units::isKey)
                .isPresent();
    }

    /** Number of cells that are neither empty nor a statement. */
    int filled() {
        return (int)
                cells.stream().filter(c -> !c.isEmpty() && c.indexOf('=') < 0).count();
    }

    /** A name over each column. */
    boolean namesAll() {
        boolean one = over.size() == 1;
        return covers() && !isUnits() && (one ? isOneName() : over.stream().noneMatch(String::isEmpty));
    }

    /** One name over the only column, and not a word that announces the samples. */
    boolean isOneName() {
        return over.size() == 1
                && filled() == 1
                && !ANNOUNCEMENT.matcher(over.get(0)).matches();
    }

    static boolean isUnit(String cell) {
        return WrittenUnit.parse(cell).isPresent();
    }

    private static boolean isValue(String cell, Dialect dialect) {
        return dialect.isNumber(cell)
                || ValueText.parse(cell).flatMap(ValueText::unit).isPresent();
    }

    /** The cells, those joined again that a delimiter inside brackets has parted: {@code V(1,2)}. */
    private static List<String> withinBrackets(List<String> cells, char delimiter) {
        List<String> whole = new ArrayList<>();
        boolean open = false;
        for (String cell : cells) {
            int last = whole.size() - 1;
            if (open) {
                whole.set(last, whole.get(last) + delimiter + cell);
            } else {
                whole.add(cell);
            }
            String latest = whole.get(whole.size() - 1);
            open = latest.lastIndexOf('(') > latest.lastIndexOf(')');
        }
        return whole;
    }

    private static List<List<String>> splits(String text, Dialect dialect, int columns) {
        List<List<String>> splits = new ArrayList<>();
        if (dialect.delimiter().blanks()) {
            splits.add(List.of(WIDE_GAP.split(text.strip(), -1)));
            splits.add(dialect.split(BLANK_BEFORE_BRACKET.matcher(text).replaceAll("")));
            splits.removeIf(cells -> cells.size() != columns);
        }
        List<String> plain = dialect.split(text);
        List<String> whole = withinBrackets(plain, dialect.delimiter().first());
        if (whole.size() < plain.size() && whole.size() == columns) {
            splits.add(whole);
        }
        splits.add(plain);
        for (Delimiter other : OTHERS) {
            List<String> cells = new Dialect(other, dialect.mark()).split(text);
            if (cells.size() == columns) {
                splits.add(cells);
            }
        }
        return splits;
    }
}
