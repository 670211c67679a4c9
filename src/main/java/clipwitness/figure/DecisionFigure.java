package clipwitness.figure;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Figure;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Every judged item of a comparison as a strip: change, interval, limits, decision; one block a quantity. */
final class DecisionFigure implements Figure {
    private static final double NOMINAL_WIDTH = 482;
    private static final double COLUMN_GAP = 18;
    private static final double BLOCK_GAP = 8;

    private final Comparison comparison;
    private final FigureContext context;
    private final List<DecisionBlock> blocks;

    DecisionFigure(FigureContext context, Comparison comparison) {
        this.comparison = comparison;
        this.context = context;
        Map<ItemQuantity, List<Item>> byQuantity = new EnumMap<>(ItemQuantity.class);
        for (Item item : comparison.items()) {
            if (item.judged()) {
                byQuantity
                        .computeIfAbsent(item.quantity(), q -> new ArrayList<>())
                        .add(item);
            }
        }
        this.blocks = byQuantity.entrySet().stream()
                .map(e -> new DecisionBlock(e.getKey(), e.getValue(), context))
                .toList();
    }

    @Override
    public String title() {
        return context.say(
                "figure.decisions.title",
                "to",
                context.called(comparison.to()),
                "from",
                context.called(comparison.from()));
    }

    @Override
    public String finding() {
        long pass = count(Decision.PASS);
        long fail = count(Decision.FAIL);
        long open = count(Decision.UNDECIDED);
        String counts = context.say(
                "figure.decisions.says",
                "all",
                Long.toString(pass + fail + open),
                "pass",
                Long.toString(pass),
                "fail",
                Long.toString(fail),
                "undecided",
                Long.toString(open));
        return counts + named(Decision.FAIL) + named(Decision.UNDECIDED);
    }

    private String named(Decision decision) {
        List<String> names = comparison.items().stream()
                .filter(i -> i.judged() && i.decision() == decision)
                .map(this::name)
                .toList();
        return names.isEmpty()
                ? ""
                : " " + context.say("figure.decisions.named." + decision.code(), "list", String.join(", ", names));
    }

    private String name(Item item) {
        String at = context.place(item);
        String quantity = context.say("quantity.short." + item.quantity().key());
        return context.say("figure.value.at", "value", quantity, "condition", at);
    }

    private long count(Decision decision) {
        return comparison.items().stream()
                .filter(i -> i.judged() && i.decision() == decision)
                .count();
    }

    private int columns() {
        return Math.min(2, blocks.size());
    }

    @Override
    public double aspect() {
        double total = 0;
        for (int row = 0; row * columns() < blocks.size(); row++) {
            total += rowHeight(row) + (row == 0 ? 0 : BLOCK_GAP);
        }
        return total / NOMINAL_WIDTH;
    }

    private double rowHeight(int row) {
        int from = row * columns();
        return blocks.subList(from, Math.min(from + columns(), blocks.size())).stream()
                .mapToDouble(DecisionBlock::height)
                .max()
                .orElse(0);
    }

    @Override
    public void paint(Canvas canvas, double width, double height) {
        double column = (width - (columns() - 1) * COLUMN_GAP) / columns();
        double stretch = height / (aspect() * NOMINAL_WIDTH);
        double y = 0;
        for (int i = 0; i < blocks.size(); i++) {
            int place = i % columns();
            blocks.get(i).paint(canvas, place * (column + COLUMN_GAP), y, column, stretch);
            if (place == columns() - 1) {
                y += (rowHeight(i / columns()) + BLOCK_GAP) * stretch;
            }
        }
    }
}
