package clipwitness.reading.layout;

import clipwitness.reading.file.Line;
import java.util.List;

/**
 * Columns that are filled further down only: rows with empty cells beside their only number, and below them rows with numbers in these.
 * Channels have values later there, however few of the lines looked at.
 */
final class LaterColumns {
    private static final int LEAST_ROWS = 2;

    private LaterColumns() {}

    /** The style with such columns among the others. */
    static RowStyle added(RowStyle style, List<Line> lines) {
        if (style.numbers() > 1 || !style.pure()) {
            return style;
        }
        boolean alone = false;
        int later = 0;
        String joined = style.signature();
        for (Line line : lines) {
            List<String> cells = style.dialect().split(line.text());
            String signature = Signature.of(cells, style.dialect());
            boolean wider = alone && Signature.numbers(signature) > 1 && continues(style, signature);
            later += wider ? 1 : 0;
            joined = wider ? Signature.joined(joined, signature) : joined;
            alone |= signature.equals(style.signature()) && cells.size() > signature.length();
        }
        return later < LEAST_ROWS ? style : new RowStyle(style.dialect(), joined, style.rows(), style.lines());
    }

    private static boolean continues(RowStyle style, String signature) {
        return Signature.pure(signature) && signature.startsWith(style.signature());
    }
}
