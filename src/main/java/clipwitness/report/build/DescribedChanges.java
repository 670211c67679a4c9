package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.List;
import java.util.Optional;

/** Changes that were described, not judged: quantities in rows, conditions in columns. */
final class DescribedChanges {
    private final JobWording wording;

    DescribedChanges(JobWording wording) {
        this.wording = wording;
    }

    /** Tables of so many conditions side by side. */
    List<Table> of(List<Item> items, int columns) {
        List<Condition> conditions =
                items.stream().map(Item::condition).distinct().toList();
        return Parts.of(conditions, columns).stream()
                .map(part -> table(items, part))
                .toList();
    }

    private Table table(List<Item> items, List<Condition> conditions) {
        Cells cells = new Cells(wording);
        List<Row> rows = items.stream()
                .map(Item::quantity)
                .distinct()
                .map(q -> row(q, items, conditions, cells))
                .toList();
        return new Table(
                wording.say("described.title"),
                wording.say("table.quantity"),
                conditions.stream().map(wording::condition).toList(),
                cells.aligned(rows),
                cells.notes());
    }

    private Row row(ItemQuantity quantity, List<Item> items, List<Condition> conditions, Cells cells) {
        List<Optional<Measured>> changes = conditions.stream()
                .map(c -> items.stream()
                        .filter(i -> i.quantity() == quantity && i.condition().equals(c))
                        .map(Item::change)
                        .findFirst())
                .toList();
        return new Row(wording.quantity(quantity), wording.unit(quantity), cells.changes(changes), "");
    }
}
