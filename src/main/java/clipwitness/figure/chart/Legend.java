package clipwitness.figure.chart;

import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Entries side by side in as many rows as they need; an entry too long for a row is cut with an ellipsis.
 *
 * @param entries entries
 */
record Legend(List<LegendEntry> entries) {
    private static final double SAMPLE_GAP = 4;
    private static final double ENTRY_GAP = 14;
    private static final double ROW = Ink.SMALL * 1.45;
    private static final double BELOW = 3;

    /** Width of a letter over the size of the text, of the widest usual words. */
    private static final double LETTER = 0.55;

    /** Copies what it is given. */
    Legend {
        entries = List.copyOf(entries);
    }

    /** Height that the legend takes at a width, room below it included; nothing where it is empty. */
    double height(Canvas canvas, double width) {
        return height(places(canvas, width));
    }

    /** The same before anything is drawn, with letters of one width. */
    double likelyHeight(double width) {
        return height(places(text -> text.length() * LETTER * Ink.SMALL, width));
    }

    private static double height(List<Place> places) {
        int rows = places.stream().mapToInt(Place::row).max().orElse(-1) + 1;
        return rows == 0 ? 0 : rows * ROW + BELOW;
    }

    /** Paints it with its upper left corner at a point. */
    void paint(Canvas canvas, double x, double y, double width) {
        for (Place place : places(canvas, width)) {
            double middle = y + place.row() * ROW + ROW / 2;
            double left = x + place.x();
            place.entry().sample().paint(canvas.graphics(), left, middle);
            String text =
                    Texts.fitted(canvas, place.entry().text(), Ink.SMALL, false, width - textStart(place.entry()));
            double base = Ink.centred(middle, Ink.SMALL);
            canvas.text(
                    text, left + textStart(place.entry()), base, Ink.SMALL, false, Canvas.Anchor.START, 0, Ink.TEXT);
        }
    }

    private static double textStart(LegendEntry entry) {
        return entry.width() + SAMPLE_GAP;
    }

    private List<Place> places(Canvas canvas, double width) {
        return places(text -> canvas.textWidth(text, Ink.SMALL, false), width);
    }

    private List<Place> places(ToDoubleFunction<String> widths, double width) {
        List<Place> places = new ArrayList<>();
        double x = 0;
        int row = 0;
        for (LegendEntry entry : entries) {
            double needs = textStart(entry) + widths.applyAsDouble(entry.text());
            if (x > 0 && x + needs > width) {
                row++;
                x = 0;
            }
            places.add(new Place(entry, x, row));
            x += needs + ENTRY_GAP;
        }
        return places;
    }

    private record Place(LegendEntry entry, double x, int row) {}
}
