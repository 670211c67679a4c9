package clipwitness.figure;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.Texts;
import clipwitness.figure.chart.Axes;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Plot;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberParts;
import clipwitness.quantity.Unit;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The judged items of one quantity: a row each over one scale, the limit's band behind them. */
final class DecisionBlock {
    private static final double HEADING = Ink.HEADING * Ink.LEADING + 2;
    private static final double ROW = 9.6;
    private static final double FOOT = 13;
    private static final double GAP = 5;
    private static final double MOST_NAME = 0.55;
    private static final double AFTER_SIGN = 3;
    private static final double FARTHEST = 3;
    private static final int BRIEF = 20;

    private final ItemQuantity quantity;
    private final List<Item> items;
    private final FigureContext context;

    /**
     * A block.
     *
     * @param quantity what was judged
     * @param items    its judged items, one or more
     * @param context  what the job's figures have in common
     */
    DecisionBlock(ItemQuantity quantity, List<Item> items, FigureContext context) {
        this.quantity = quantity;
        this.items = List.copyOf(items);
        this.context = context;
    }

    /** Whether the names of its rows are short enough for a narrow column. */
    boolean isBrief() {
        return items.stream().allMatch(i -> name(i).length() <= BRIEF);
    }

    /** Height at its natural size, points. */
    double height() {
        return HEADING + items.size() * ROW + FOOT;
    }

    /**
     * Paints the block.
     *
     * @param stretch height of its rows over their natural one
     */
    void paint(Canvas canvas, double x, double y, double width, double stretch) {
        String heading = Texts.fitted(canvas, heading(), Ink.HEADING, true, width);
        canvas.text(heading, x, y + Ink.HEADING, Ink.HEADING, true, Canvas.Anchor.START, 0, Ink.TEXT);
        double names = nameWidth(canvas, width);
        Box strip = new Box(
                x + names + GAP,
                y + HEADING,
                width - names - verdictWidth(canvas) - 2 * GAP,
                items.size() * ROW * stretch);
        Axis axis = axis();
        Plot plot = new Plot(canvas, strip, axis, Axis.named("", new Extent(0, 1), List.of()));
        paintBand(plot);
        for (int i = 0; i < items.size(); i++) {
            double middle = strip.y() + (i + 0.5) * ROW * stretch;
            paintRow(plot, items.get(i), middle, x, names);
        }
        plot.paintXNumbers();
    }

    private String heading() {
        OptionalDouble limit = limit();
        return context.say(
                "figure.decisions.heading",
                "quantity",
                Sentences.capital(context.say("quantity.short." + quantity.key())),
                "limit",
                limit.isPresent() ? limitWords(limit.getAsDouble()) : "");
    }

    private String limitWords(double limit) {
        String number = (oneSided() ? "" : "±") + context.axes().numbers().nominal(limit, Unit.ONE);
        return new NumberParts(number, "", context.unit(quantity)).text();
    }

    private OptionalDouble limit() {
        return items.get(0).limit();
    }

    private boolean oneSided() {
        return quantity.limit().filter(DecisionStyle::isOneSided).isPresent();
    }

    private double nameWidth(Canvas canvas, double width) {
        double widest = 0;
        for (Item item : items) {
            widest = Math.max(widest, canvas.textWidth(name(item), Ink.SMALL, false));
        }
        return Math.min(widest, width * MOST_NAME);
    }

    /** Room for the sign and the longest word of a decision. */
    private double verdictWidth(Canvas canvas) {
        double widest = 0;
        for (Decision decision : List.of(Decision.PASS, Decision.FAIL, Decision.UNDECIDED)) {
            String word = context.say("figure.decisions." + decision.code());
            widest = Math.max(widest, canvas.textWidth(word, Ink.SMALL, false));
        }
        return DecisionStyle.WIDTH + AFTER_SIGN + widest;
    }

    private String name(Item item) {
        return context.place(item);
    }

    private Axis axis() {
        Extent shown = range();
        return limit().isPresent() && !oneSided()
                ? Axis.named("", shown, limitTicks(Math.abs(limit().getAsDouble())))
                : context.axes().exact("", quantity.unit(), shown, 5);
    }

    /** The limit with some room, and the intervals as far as they lie within a few limits of it. */
    private Extent range() {
        double limit = limit().orElse(0);
        double size = Math.abs(limit);
        Extent band = oneSided() ? new Extent(limit, limit) : new Extent(-size, size);
        Extent farthest = limit().isPresent() && !oneSided()
                ? new Extent(-FARTHEST * size, FARTHEST * size)
                : new Extent(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        double room = size * (oneSided() ? 0.2 : 0.5);
        Extent shown = new Extent(band.low() - room, band.high() + room);
        for (Item item : items) {
            Optional<Measured.Value> value = item.change().asValue();
            if (value.isPresent()) {
                double u = value.get().expanded();
                double high = value.get().number() + u;
                double low =
                        value.get().isUpperBound() ? high - room : value.get().number() - u;
                shown = shown.with(farthest.nearest(low));
                shown = shown.with(farthest.nearest(high));
            }
        }
        return shown.widened(0).padded(0.02);
    }

    private List<Axis.Tick> limitTicks(double limit) {
        Axes axes = context.axes();
        return List.of(axes.tick(-limit), axes.tick(0), axes.tick(limit));
    }

    private void paintBand(Plot plot) {
        Graphics2D g = plot.canvas().graphics();
        Box area = plot.area();
        if (limit().isEmpty()) {
            return;
        }
        double limit = limit().getAsDouble();
        double left = oneSided() ? area.x() : plot.px(-Math.abs(limit));
        double right = plot.px(oneSided() ? limit : Math.abs(limit));
        g.setColor(Ink.BAND);
        g.fill(new Box(left, area.y(), right - left, area.height()).shape());
        g.setColor(Ink.LIMIT);
        g.setStroke(Ink.FINE);
        g.draw(new Line2D.Double(right, area.y(), right, area.bottom()));
        if (!oneSided()) {
            g.draw(new Line2D.Double(left, area.y(), left, area.bottom()));
        }
    }

    private void paintRow(Plot plot, Item item, double middle, double x, double names) {
        Canvas canvas = plot.canvas();
        Box strip = plot.area();
        double base = Ink.centred(middle, Ink.SMALL);
        String name = Texts.fitted(canvas, name(item), Ink.SMALL, false, names);
        canvas.text(name, x, base, Ink.SMALL, false, Canvas.Anchor.START, 0, Ink.TEXT);
        DecisionStyle style = DecisionStyle.of(item.decision());
        if (item.change() instanceof Measured.Value value) {
            new DecisionInterval(value, context.unit(quantity), style, context.values()).paint(plot, middle);
        } else {
            String reason = context.speech().clause(item.change().reason()).orElse("");
            if (canvas.textWidth(reason, Ink.SMALL, false) <= strip.width() - GAP) {
                canvas.text(reason, strip.middleX(), base, Ink.SMALL, false, Canvas.Anchor.MIDDLE, 0, Ink.TEXT);
            }
        }
        double sign = strip.right() + GAP;
        style.paintSign(canvas.graphics(), sign, middle);
        double word = sign + DecisionStyle.WIDTH + AFTER_SIGN;
        canvas.text(
                context.say("figure.decisions." + item.decision().code()),
                word,
                base,
                Ink.SMALL,
                false,
                Canvas.Anchor.START,
                0,
                style.color());
    }
}
