package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Told;
import clipwitness.compare.judge.ClockDifference;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Word;
import clipwitness.report.model.Block;
import clipwitness.report.model.Cell;
import clipwitness.report.model.ComparisonPart;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Comparisons in full. */
final class ComparisonBuilder {
    /** Conditions side by side in one table: what a page is wide enough for. */
    private static final int COLUMNS = 5;

    private final JobWording wording;
    private final JobResults results;
    private final VerdictBuilder verdicts;
    private final DecisionBuilder decisions;

    ComparisonBuilder(JobWording wording, JobResults results, VerdictBuilder verdicts) {
        this.wording = wording;
        this.results = results;
        this.verdicts = verdicts;
        this.decisions = new DecisionBuilder(wording);
    }

    ComparisonPart of(Comparison comparison) {
        return new ComparisonPart(
                wording.say(
                        "comparison.title",
                        "to",
                        wording.called(comparison.to()),
                        "from",
                        wording.called(comparison.from())),
                verdicts.of(comparison),
                quantities(comparison),
                new DescribedChanges(wording)
                        .of(comparison.items().stream().filter(i -> !i.judged()).toList(), COLUMNS),
                levelMatched(comparison),
                equalGain(comparison),
                clocks(comparison),
                new NotExaminedList(wording).of(List.of(comparison)));
    }

    private List<ComparisonPart.QuantityPart> quantities(Comparison comparison) {
        Map<ItemQuantity, List<Item>> groups = new LinkedHashMap<>();
        comparison.items().stream()
                .filter(Item::judged)
                .forEach(i -> groups.computeIfAbsent(i.quantity(), k -> new ArrayList<>())
                        .add(i));
        return groups.entrySet().stream()
                .map(e -> new ComparisonPart.QuantityPart(wording.quantity(e.getKey()), decisions.of(e.getValue())))
                .toList();
    }

    private List<String> clocks(Comparison comparison) {
        List<String> differences = ClockDifference.of(results, comparison).stream()
                .filter(d -> 2 * d.ratio().expanded()
                        <= Math.abs(d.ratio().number())) // what is known to no better says nothing
                .map(this::clock)
                .toList();
        return differences.isEmpty()
                ? List.of()
                : List.of(wording.say(
                        "clock",
                        "to",
                        wording.called(comparison.to()),
                        "from",
                        wording.called(comparison.from()),
                        "list",
                        wording.list(differences)));
    }

    private String clock(ClockDifference difference) {
        double million = 1e6;
        Measured.Value ratio = difference.ratio();
        return wording.say(
                ratio.number() > 0 ? "clock.faster" : "clock.slower",
                "condition",
                wording.apart(wording.condition(difference.condition())),
                "difference",
                wording.numbers().measured(million * Math.abs(ratio.number()), Unit.ONE, million * ratio.expanded()));
    }

    private List<Table> levelMatched(Comparison comparison) {
        List<Condition> conditions = comparison.levelMatched().stream()
                .map(LevelMatchedHarmonic::condition)
                .distinct()
                .toList();
        return Parts.of(conditions, COLUMNS).stream()
                .map(part -> levelMatched(comparison, part))
                .toList();
    }

    private Table levelMatched(Comparison comparison, List<Condition> conditions) {
        List<Integer> orders = comparison.levelMatched().stream()
                .map(LevelMatchedHarmonic::order)
                .distinct()
                .sorted()
                .toList();
        Cells cells = new Cells(wording);
        Block block = cells.block(
                orders.stream().map(o -> Integer.toString(o)).toList(),
                orders.stream()
                        .map(o -> conditions.stream()
                                .map(c -> matched(comparison, c, o))
                                .toList())
                        .toList(),
                true);
        return new Table(
                block.titled(wording.say("matched.title")),
                wording.say("table.order"),
                conditions.stream().map(wording::condition).toList(),
                cells.kept(block.rows()),
                cells.notes());
    }

    private static Optional<Measured> matched(Comparison comparison, Condition condition, int order) {
        return comparison.levelMatched().stream()
                .filter(h -> h.order() == order && h.condition().equals(condition))
                .map(h -> ofRow(h))
                .findFirst();
    }

    /** The change; a reason is about its row, so that all rows share it. */
    private static Measured ofRow(LevelMatchedHarmonic harmonic) {
        Measured change = Told.harmonic(harmonic);
        return change.reason()
                .<Measured>map(r -> Measured.refused(change.unit(), r.map(ComparisonBuilder::ofRow)))
                .orElse(change);
    }

    private static Argument ofRow(Argument argument) {
        boolean harmonic = argument instanceof Argument.Inner i && i.statement().code() == Word.HARMONIC;
        return harmonic ? Argument.word(Word.THIS_HARMONIC) : argument;
    }

    private List<Table> equalGain(Comparison comparison) {
        return Parts.of(comparison.equivalentGain(), COLUMNS + 1).stream()
                .map(part -> equalGain(comparison, part))
                .toList();
    }

    private Table equalGain(Comparison comparison, List<EquivalentGain> equal) {
        String from = wording.called(comparison.from());
        String to = wording.called(comparison.to());
        Cells cells = new Cells(wording);
        List<Cell> found = equal.stream()
                .map(e -> cells.cell(wording.rotation(e.toGainPercent())))
                .toList();
        return new Table(
                wording.say("equal.title", "from", from, "to", to),
                wording.say("equal.corner", "from", from),
                equal.stream().map(e -> wording.percent(e.fromGainPercent())).toList(),
                List.of(new Row(wording.say("equal.row", "to", to), "", found, "")),
                cells.notes());
    }
}
