package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Panels in rows and columns, plots of one size, over the whole width. The lowest panel of each column carries the numbers of the x axis,
 * whose label is written once; the numbers of the y axis stand left of the first column, or left of every panel where the panels' y axes
 * differ.
 *
 * @param panels    panels, row by row
 * @param columns   panels a row
 * @param sharedY   whether all panels have the same y axes
 * @param plotShape height over width of a panel, headings and numbers left out
 */
public record PanelGrid(List<Panel> panels, int columns, boolean sharedY, double plotShape) {
    private static final double NOMINAL_WIDTH = 482;
    private static final double MOST_ASPECT = 1.36;
    private static final double NOMINAL_LEFT = 34;
    private static final double RIGHT = 10;
    private static final double GAP = 12;
    private static final double ROW_GAP = 7;
    private static final double TIER_GAP = 7;
    private static final double BESIDE_TIER = TIER_GAP / 2 - 1;
    private static final double TOP = 4;
    private static final double LEAST_PLOT = 6;
    private static final int MOST_COLUMNS = 6;

    /** Size of a heading that is too long for its panel at the usual one, points. */
    private static final double LEAST_HEADING = 6.6;

    /** Height of panels in two rows over that of panels in one, of those in three, and of those in more. */
    private static final double OF_TWO_ROWS = 0.72;

    private static final double OF_THREE_ROWS = 0.5;

    private static final double OF_MORE_ROWS = 0.44;

    /** Copies what it is given. */
    public PanelGrid {
        panels = List.copyOf(panels);
    }

    /** A figure of one panel. */
    public static PanelGrid single(Panel panel, double plotShape) {
        return new PanelGrid(List.of(panel), 1, true, plotShape);
    }

    /**
     * Panels side by side in as few rows as they find room in, all rows alike as far as their number permits.
     *
     * @param height height of a panel's plots, points at the nominal width
     * @param most   columns at most
     */
    public static PanelGrid inRows(List<Panel> panels, boolean sharedY, double height, int most) {
        int columns = columns(panels.size(), most);
        int rows = (panels.size() + columns - 1) / columns;
        double less = switch (rows) {
            case 1 -> 1;
            case 2 -> OF_TWO_ROWS;
            case 3 -> OF_THREE_ROWS;
            default -> OF_MORE_ROWS;
        };
        return new PanelGrid(panels, columns, sharedY, less * height / plotWidth(columns, sharedY));
    }

    /** The same with as many columns as a page is wide enough for. */
    public static PanelGrid inRows(List<Panel> panels, boolean sharedY, double height) {
        return inRows(panels, sharedY, height, panels.size() > 2 * MOST_COLUMNS ? MOST_COLUMNS + 1 : MOST_COLUMNS);
    }

    private static int columns(int panels, int most) {
        int rows = (panels + most - 1) / most;
        return (panels + rows - 1) / rows;
    }

    private static double plotWidth(int columns, boolean sharedY) {
        double lefts = sharedY ? NOMINAL_LEFT : columns * NOMINAL_LEFT;
        return (NOMINAL_WIDTH - lefts - RIGHT - (columns - 1) * GAP) / columns;
    }

    private int rows() {
        return (panels.size() + columns - 1) / columns;
    }

    private boolean hasHeadings() {
        return panels.stream().anyMatch(p -> !p.heading().isEmpty());
    }

    private double headingHeight() {
        return hasHeadings() ? Ink.HEADING * Ink.LEADING + 2 : TOP;
    }

    /**
     * Height over width of a figure with this grid and a legend; never more than a page has room for. At half of a page's width, where the
     * legend needs more rows, there is still room for it.
     */
    double aspect(Legend legend) {
        double row = headingHeight() + plotWidth(columns, sharedY) * plotShape;
        double least = headingHeight() + LEAST_PLOT;
        double whole = height(row) + legend.likelyHeight(NOMINAL_WIDTH);
        double half = height(least) + legend.likelyHeight(NOMINAL_WIDTH / 2);
        return Math.min(Math.max(whole / NOMINAL_WIDTH, half / (NOMINAL_WIDTH / 2)), MOST_ASPECT);
    }

    private double height(double row) {
        return rows() * row + (rows() - 1) * ROW_GAP + Plot.bottomMargin();
    }

    /**
     * Places for the names of all lines in one panel, which stand for the same lines in the others: the last panel, or the next before it, in which each
     * of so many states has a line and each name finds its place.
     */
    Optional<List<LineLabels.Placed>> labels(Canvas canvas, Box box, int states) {
        List<List<Plot>> plots = plots(canvas, box);
        for (int i = panels.size() - 1; i >= 0; i--) {
            Plot plot = plots.get(i).get(0);
            List<Trace> traces = traces(panels.get(i), plot);
            Optional<List<LineLabels.Placed>> placed = traces.size() == states
                    ? LineLabels.place(canvas, plot.area().grown(-2), traces)
                    : Optional.empty();
            if (placed.isPresent()) {
                return placed;
            }
        }
        return Optional.empty();
    }

    /** The lines of a panel's first plot. */
    private static List<Trace> traces(Panel panel, Plot plot) {
        return panel.tiers().get(0).layers().stream()
                .flatMap(layer -> layer.traces(plot).stream())
                .toList();
    }

    /** Paints the panels into a rectangle. */
    void paint(Canvas canvas, Box box) {
        List<List<Plot>> plots = plots(canvas, box);
        for (int i = 0; i < panels.size(); i++) {
            paintHeading(canvas, panels.get(i), plots.get(i).get(0).area());
            paintPanel(plots.get(i), panels.get(i), i);
        }
        paintXLabel(plots);
    }

    /** The label of the x axis, once below the last row. */
    private void paintXLabel(List<List<Plot>> plots) {
        List<Plot> first = plots.get((rows() - 1) * columns);
        Plot lowest = first.get(first.size() - 1);
        Box last = plots.get(panels.size() - 1).get(0).area();
        Box row = new Box(
                lowest.area().x(),
                lowest.area().y(),
                last.right() - lowest.area().x(),
                lowest.area().height());
        lowest.paintXLabel(row);
    }

    private void paintPanel(List<Plot> plots, Panel panel, int index) {
        for (int t = 0; t < plots.size(); t++) {
            Plot plot = plots.get(t);
            plot.paintGround();
            panel.tiers().get(t).layers().forEach(layer -> layer.paint(plot));
            if (!sharedY || index % columns == 0) {
                plot.paintYTexts(labelRoom(plots, t, index));
            }
        }
        if (index + columns >= panels.size()) {
            plots.get(plots.size() - 1).paintXNumbers();
        }
    }

    /** Room for the label of a y axis: its plot, and above and below it what stands free beside the heading, the next plot or the x axis. */
    private Span labelRoom(List<Plot> plots, int tier, int index) {
        Box area = plots.get(tier).area();
        boolean lowest = tier == plots.size() - 1;
        double above = tier == 0 ? headingHeight() : BESIDE_TIER;
        double below = lowest ? belowLabel(index) : BESIDE_TIER;
        return new Span(area.y() - above, area.bottom() + below);
    }

    /** Left of the first column the label of the x axis never stands. */
    private double belowLabel(int index) {
        if (index / columns < rows() - 1) {
            return ROW_GAP / 2;
        }
        return index % columns == 0 ? Plot.bottomMargin() : Plot.numbersMargin();
    }

    private static void paintHeading(Canvas canvas, Panel panel, Box area) {
        double room = area.width() + RIGHT - 2;
        boolean fits = canvas.textWidth(panel.heading(), Ink.HEADING, true) <= room;
        double size = fits ? Ink.HEADING : LEAST_HEADING;
        String heading = Texts.fitted(canvas, panel.heading(), size, true, room);
        if (!heading.isEmpty()) {
            canvas.text(heading, area.x(), area.y() - 4, size, true, Canvas.Anchor.START, 0, Ink.TEXT);
        }
    }

    private List<List<Plot>> plots(Canvas canvas, Box box) {
        double[] lefts = lefts(canvas);
        double allLefts = 0;
        for (double left : lefts) {
            allLefts += left;
        }
        double gap = gap(canvas);
        double width = (box.width() - allLefts - RIGHT - (columns - 1) * gap) / columns;
        double rowHeight = (box.height() - Plot.bottomMargin() - (rows() - 1) * ROW_GAP) / rows();
        List<List<Plot>> plots = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            int column = i % columns;
            int row = i / columns;
            double x = box.x() + column * (width + gap);
            for (int c = 0; c <= column; c++) {
                x += lefts[c];
            }
            double y = box.y() + row * (rowHeight + ROW_GAP);
            Box cell = new Box(x, y, width, rowHeight).inset(0, headingHeight(), 0, 0);
            plots.add(tiers(canvas, panels.get(i), cell));
        }
        return plots;
    }

    /** Room between columns: the numbers at the ends of two neighbouring x axes must not meet. */
    private double gap(Canvas canvas) {
        List<Axis.Tick> ticks = panels.get(0).x().ticks();
        double widest = 0;
        for (Axis.Tick tick : ticks) {
            widest = Math.max(widest, canvas.textWidth(tick.text(), Ink.SMALL, false));
        }
        return sharedY ? Math.max(GAP, widest + ROW_GAP) : GAP;
    }

    private static List<Plot> tiers(Canvas canvas, Panel panel, Box cell) {
        double weights = panel.tiers().stream().mapToDouble(Panel.Tier::weight).sum();
        double room = cell.height() - (panel.tiers().size() - 1) * TIER_GAP;
        List<Plot> plots = new ArrayList<>();
        double y = cell.y();
        for (Panel.Tier tier : panel.tiers()) {
            double height = room * tier.weight() / weights;
            plots.add(new Plot(canvas, new Box(cell.x(), y, cell.width(), height), panel.x(), tier.y()));
            y += height + TIER_GAP;
        }
        return plots;
    }

    private double[] lefts(Canvas canvas) {
        double[] lefts = new double[columns];
        for (int i = 0; i < panels.size(); i++) {
            if (!sharedY || i % columns == 0) {
                for (Panel.Tier tier : panels.get(i).tiers()) {
                    lefts[i % columns] = Math.max(lefts[i % columns], Plot.leftMargin(canvas, tier.y()));
                }
            }
        }
        return lefts;
    }
}
