package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Names written beside their lines. A name goes where nothing lies under it, where its own line is near and every other line is
 * clearly farther; where lines run together no such place exists, and a legend must say it.
 */
final class LineLabels {
    private static final double NEAR = 2.5;
    private static final double TOUCHING = 2;
    private static final double CLEAR = 11;
    private static final int PLACES = 60;

    private final Canvas canvas;
    private final Box area;
    private final List<DenseLine> lines;

    private LineLabels(Canvas canvas, Box area, List<Trace> traces) {
        this.canvas = canvas;
        this.area = area;
        this.lines = traces.stream().map(DenseLine::of).toList();
    }

    /**
     * Places for the names of all lines, or nothing where one finds no place.
     *
     * @param area what the names must stay inside
     */
    static Optional<List<Placed>> place(Canvas canvas, Box area, List<Trace> traces) {
        return new LineLabels(canvas, area, traces).placeAll();
    }

    private Optional<List<Placed>> placeAll() {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Optional<Placed> found = placeOne(i, placed);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            placed.add(found.get());
        }
        return Optional.of(placed);
    }

    private Optional<Placed> placeOne(int own, List<Placed> taken) {
        DenseLine line = lines.get(own);
        double width = canvas.textWidth(line.label(), Ink.SMALL, false);
        double height = Ink.SMALL * (Ink.CAP_HEIGHT + Ink.DEPTH);
        for (int place = PLACES; place >= 0; place--) { // from the right, where lines end
            int at = (line.size() - 1) * place / PLACES;
            for (double rise : new double[] {-height - NEAR, NEAR}) {
                for (double shift : new double[] {0, -width / 2, -width}) {
                    Box box = new Box(line.x(at) + shift, line.y(at) + rise, width, height);
                    if (isFree(box, own, taken)) {
                        return Optional.of(new Placed(line.label(), line.color(), box));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private boolean isFree(Box box, int own, List<Placed> taken) {
        return area.contains(box)
                && taken.stream().noneMatch(t -> t.box().grown(NEAR).overlaps(box))
                && IntStream.range(0, lines.size())
                        .allMatch(i -> lines.get(i).isApart(box, i == own ? TOUCHING : CLEAR));
    }

    /**
     * A name in its place.
     *
     * @param text  name
     * @param color colour of its line
     * @param box   what it covers
     */
    record Placed(String text, Color color, Box box) {
        /** On white, so that no line of the grid crosses it. */
        void paint(Canvas canvas) {
            canvas.graphics().setColor(Color.WHITE);
            canvas.graphics().fill(box.shape());
            double base = box.y() + Ink.SMALL * Ink.CAP_HEIGHT;
            canvas.text(text, box.x(), base, Ink.SMALL, false, Canvas.Anchor.START, 0, color);
        }
    }
}
