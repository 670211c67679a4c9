package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Figure;
import java.util.List;
import java.util.Optional;

/**
 * A figure of panels in a grid, their legend above them. Where the names of all lines find room at the lines of one panel, they stand there instead.
 */
public final class PanelFigure implements Figure {
    private final String title;
    private final String finding;
    private final PanelGrid grid;
    private final List<LegendEntry> states;
    private final List<LegendEntry> signs;

    /**
     * A figure.
     *
     * @param title   title
     * @param finding what it says
     * @param grid    panels
     * @param states  the states' legend entries
     * @param signs   legend entries of other signs, never written at lines
     */
    public PanelFigure(
            String title, String finding, PanelGrid grid, List<LegendEntry> states, List<LegendEntry> signs) {
        this.title = title;
        this.finding = finding;
        this.grid = grid;
        this.states = List.copyOf(states);
        this.signs = List.copyOf(signs);
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String finding() {
        return finding;
    }

    @Override
    public double aspect() {
        return grid.aspect(new Legend(Lists.joined(states, signs)));
    }

    @Override
    public void paint(Canvas canvas, double width, double height) {
        Box all = new Box(0, 0, width, height);
        Legend shorter = new Legend(signs);
        Optional<List<LineLabels.Placed>> labels = labels(canvas, all, shorter);
        Legend legend = labels.isPresent() ? shorter : new Legend(Lists.joined(states, signs));
        legend.paint(canvas, 0, 0, width);
        grid.paint(canvas, below(canvas, all, legend));
        labels.ifPresent(found -> found.forEach(label -> label.paint(canvas)));
    }

    private static Box below(Canvas canvas, Box all, Legend legend) {
        return all.inset(0, legend.height(canvas, all.width()), 0, 0);
    }

    private Optional<List<LineLabels.Placed>> labels(Canvas canvas, Box all, Legend legend) {
        return states.size() < 2 ? Optional.empty() : grid.labels(canvas, below(canvas, all, legend), states.size());
    }
}
