package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Changes that were described, not judged: quantities in rows, conditions in columns. */
final class DescribedChanges {
    private final JobWording wording;

    DescribedChanges(JobWording wording) {
        this.wording = wording;
    }

    /** Tables of so many conditions side by side; what is from no waves has tables of its own. */
    List<Table> of(List<Item> items, int columns) {
        List<Table> tables = new ArrayList<>();
        for (boolean waves : new boolean[] {true, false}) {
            List<Item> some = items.stream()
                    .filter(i -> i.quantity().isOfWaves() == waves)
                    .toList();
            List<Condition> conditions =
                    some.stream().map(Item::condition).distinct().toList();
            Parts.of(conditions, columns).forEach(part -> tables.add(table(some, part)));
        }
        return tables;
    }

    private Table table(List<Item> items, List<Condition> conditions) {
        Cells cells = new Cells(wording);
        List<Row> rows = items.stream()
                .map(Key::of)
                .distinct()
                .map(k -> row(k, items, conditions, cells))
                .toList();
        boolean rails = conditions.equals(List.of(Condition.NONE));
        return new Table(
                wording.say(rails ? "described.rails" : "described.title"),
                wording.say("table.quantity"),
                rails
                        ? List.of(wording.say("described.change"))
                        : conditions.stream().map(wording::condition).toList(),
                cells.aligned(cells.kept(rows)),
                cells.notes());
    }

    /** What a row is about. */
    private record Key(ItemQuantity quantity, Optional<ItemSubject> subject) {
        static Key of(Item item) {
            return new Key(item.quantity(), item.subject());
        }
    }

    private Row row(Key key, List<Item> items, List<Condition> conditions, Cells cells) {
        List<Optional<Measured>> changes = conditions.stream()
                .map(c -> items.stream()
                        .filter(i -> Key.of(i).equals(key) && i.condition().equals(c))
                        .map(Item::change)
                        .findFirst())
                .toList();
        String name = wording.quantity(key.quantity());
        return new Row(
                key.subject()
                        .map(s -> name + ", " + wording.speech().text(s.words()))
                        .orElse(name),
                wording.unit(key.quantity()),
                cells.changes(changes),
                "");
    }
}
