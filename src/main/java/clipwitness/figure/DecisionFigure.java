package clipwitness.figure;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Figure;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Every judged item of a comparison as a strip: change, interval, limits, decision; one block a quantity and limit. */
final class DecisionFigure implements Figure {
    private static final double NOMINAL_WIDTH = 482;
    private static final double COLUMN_GAP = 18;
    private static final double BLOCK_GAP = 8;
    private static final int COLUMNS = 2;
    private static final int BRIEF_COLUMNS = 3;

    private final Comparison comparison;
    private final FigureContext context;
    private final List<DecisionBlock> blocks;

    DecisionFigure(FigureContext context, Comparison comparison) {
        this.comparison = comparison;
        this.context = context;
        Map<Judged, List<Item>> blocksOf = new LinkedHashMap<>();
        comparison.items().stream()
                .filter(Item::judged)
                .sorted(Comparator.comparing(Item::quantity))
                .forEach(i -> blocksOf.computeIfAbsent(new Judged(i.quantity(), i.limit()), q -> new ArrayList<>())
                        .add(i));
        this.blocks = blocksOf.entrySet().stream()
                .map(e -> new DecisionBlock(e.getKey().quantity(), e.getValue(), context))
                .toList();
    }

    /** What the items of a block have in common. */
    private record Judged(ItemQuantity quantity, OptionalDouble limit) {}

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
        Map<ItemQuantity, List<Item>> byQuantity = new LinkedHashMap<>();
        comparison.items().stream()
                .filter(i -> i.judged() && i.decision() == decision)
                .forEach(i -> byQuantity
                        .computeIfAbsent(i.quantity(), q -> new ArrayList<>())
                        .add(i));
        List<String> names = new ArrayList<>();
        byQuantity.forEach((quantity, items) -> names.add(name(quantity, items)));
        return names.isEmpty()
                ? ""
                : " " + context.say("figure.decisions.named." + decision.code(), "list", String.join("; ", names));
    }

    private String name(ItemQuantity quantity, List<Item> items) {
        return context.say(
                "figure.value.at",
                "value",
                context.say("quantity.short." + quantity.key()),
                "condition",
                context.places(items));
    }

    private long count(Decision decision) {
        return comparison.items().stream()
                .filter(i -> i.judged() && i.decision() == decision)
                .count();
    }

    /** Room for blocks side by side: for three where their rows have short names. Fewer blocks leave some of it free, so that all strips are alike. */
    private int places() {
        boolean brief = blocks.stream().allMatch(DecisionBlock::isBrief);
        return brief ? BRIEF_COLUMNS : COLUMNS;
    }

    private int columns() {
        return Math.min(places(), blocks.size());
    }

    /** The blocks of each column: each stands in the column that is the shortest so far. */
    private List<List<DecisionBlock>> arranged() {
        List<List<DecisionBlock>> columns = new ArrayList<>();
        for (int i = 0; i < columns(); i++) {
            columns.add(new ArrayList<>());
        }
        for (DecisionBlock block : blocks) {
            columns.stream()
                    .min(Comparator.comparingDouble(DecisionFigure::height))
                    .ifPresent(shortest -> shortest.add(block));
        }
        return columns;
    }

    private static double height(List<DecisionBlock> column) {
        return column.stream().mapToDouble(b -> b.height() + BLOCK_GAP).sum();
    }

    @Override
    public double aspect() {
        double highest =
                arranged().stream().mapToDouble(DecisionFigure::height).max().orElse(BLOCK_GAP);
        return (highest - BLOCK_GAP) / NOMINAL_WIDTH;
    }

    @Override
    public void paint(Canvas canvas, double width, double height) {
        double column = (width - (places() - 1) * COLUMN_GAP) / places();
        double stretch = height / (aspect() * NOMINAL_WIDTH);
        double x = 0;
        for (List<DecisionBlock> blocksBelow : arranged()) {
            double y = 0;
            for (DecisionBlock block : blocksBelow) {
                block.paint(canvas, x, y, column, stretch);
                y += (block.height() + BLOCK_GAP) * stretch;
            }
            x += column + COLUMN_GAP;
        }
    }
}
