package clipwitness.figure.chart;

import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Places of the x axis with their names at the top of the plot; where names would touch, the later one is left out and its mark stays.
 *
 * @param places places, rising
 */
public record NamedPlaces(List<Axis.Tick> places) implements Layer {
    private static final double GAP = 3;
    private static final double ROOM = 2;

    /** Copies what it is given. */
    public NamedPlaces {
        places = List.copyOf(places);
    }

    @Override
    public void paint(Plot plot) {
        Graphics2D g = plot.canvas().graphics();
        double top = plot.area().y() + ROOM + Ink.SMALL;
        List<Span> spans = new ArrayList<>();
        for (Axis.Tick place : places) {
            double x = plot.px(place.value());
            g.setColor(Ink.LIMIT);
            g.setStroke(Ink.HAIR);
            g.draw(new Line2D.Double(x, top + GAP, x, plot.area().bottom()));
            double half = plot.canvas().textWidth(place.text(), Ink.SMALL, false) / 2 + GAP / 2;
            spans.add(new Span(x - half, x + half));
        }
        for (int i : Span.free(spans)) {
            Axis.Tick place = places.get(i);
            plot.canvas()
                    .text(
                            place.text(),
                            plot.px(place.value()),
                            plot.area().y() + ROOM + Ink.SMALL * Ink.CAP_HEIGHT,
                            Ink.SMALL,
                            false,
                            Canvas.Anchor.MIDDLE,
                            0,
                            Ink.TEXT);
        }
    }
}
