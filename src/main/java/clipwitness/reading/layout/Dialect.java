package clipwitness.reading.layout;

import clipwitness.reading.number.CellReader;
import clipwitness.reading.number.CellSplitter;
import clipwitness.reading.number.Delimiter;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * How rows are written throughout a file: what separates the cells, and which decimal mark the numbers have.
 *
 * @param delimiter what stands between cells
 * @param mark      decimal mark, a point or a comma
 * @param annotated whether numbers may have a unit or be times of day
 */
public record Dialect(Delimiter delimiter, char mark, boolean annotated) {
    /** Plain numbers only. */
    public Dialect(Delimiter delimiter, char mark) {
        this(delimiter, mark, false);
    }

    /** The same, but numbers may have a unit or be times of day. */
    Dialect withAnnotated() {
        return new Dialect(delimiter, mark, true);
    }

    /** A reader of its numbers. */
    public CellReader reader() {
        return new CellReader(mark, annotated);
    }

    /** What the cells of a line look like. */
    String signature(byte[] line) {
        CellSplitter splitter = new CellSplitter(delimiter);
        CellReader reader = reader();
        StringBuilder letters = new StringBuilder();
        splitter.row(line, 0, line.length);
        while (splitter.next()) {
            int from = splitter.from();
            int to = splitter.to();
            boolean number = to > from && reader.read(line, from, to);
            letters.append(Signature.letter(to == from, number));
        }
        return Signature.of(letters);
    }

    /** The cells of a line, quotes and surrounding blanks removed. */
    List<String> split(String line) {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        CellSplitter splitter = new CellSplitter(delimiter);
        splitter.row(bytes, 0, bytes.length);
        List<String> cells = new ArrayList<>();
        while (splitter.next()) {
            int length = splitter.to() - splitter.from();
            cells.add(new String(bytes, splitter.from(), length, StandardCharsets.UTF_8));
        }
        return cells;
    }

    /** Whether a cell holds a number, or a mark that stands for no value. */
    public boolean isNumber(String cell) {
        byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
        return bytes.length > 0 && reader().read(bytes, 0, bytes.length);
    }

    /** The number in a cell; NaN where the cell holds none. */
    public double number(String cell) {
        byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
        CellReader reader = reader();
        return bytes.length > 0 && reader.read(bytes, 0, bytes.length) ? reader.value() : Double.NaN;
    }

    /** As the evidence says it. */
    Remark evidence() {
        boolean comma = mark == ',';
        LayoutRemark plain = comma ? LayoutRemark.CELLS_COMMA : LayoutRemark.CELLS_POINT;
        LayoutRemark more = comma ? LayoutRemark.CELLS_COMMA_ANNOTATED : LayoutRemark.CELLS_POINT_ANNOTATED;
        return Remark.of(annotated ? more : plain, Argument.word(separator()));
    }

    private LayoutRemark separator() {
        return switch (delimiter) {
            case TAB -> LayoutRemark.DELIMITER_TAB;
            case SEMICOLON -> LayoutRemark.DELIMITER_SEMICOLON;
            case COMMA -> LayoutRemark.DELIMITER_COMMA;
            case BLANKS -> LayoutRemark.DELIMITER_BLANKS;
            case MIXED -> LayoutRemark.DELIMITER_MIXED;
        };
    }
}
