package clipwitness.cli;

import clipwitness.capture.Condition;
import clipwitness.compare.ItemQuantity;
import clipwitness.compare.Missing;
import clipwitness.compare.ReadyItem;
import clipwitness.compare.ReadyResult;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the captures before the work are good enough, for a terminal. */
final class ReadyText {
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final int DIGITS = 2;

    private ReadyText() {}

    /** A table of what can be told, a list of what is missing, and a sentence at the end. */
    static String of(ReadyResult result) {
        StringBuilder text = new StringBuilder();
        if (!result.items().isEmpty()) {
            text.append(TextTable.of(rows(result.items())));
        }
        result.items().stream()
                .flatMap(i -> i.remedy().stream())
                .distinct()
                .forEach(r -> text.append("  ").append(r).append('\n'));
        if (!result.missing().isEmpty()) {
            text.append(text.length() == 0 ? "" : "\n").append("To do at the bench, most important first:\n");
            int number = 1;
            for (Missing m : result.missing()) {
                text.append(number < 10 ? "  " : " ")
                        .append(number++)
                        .append(". ")
                        .append(m.text())
                        .append('\n');
            }
        }
        return text.append(text.length() == 0 ? "" : "\n")
                .append(closing(result))
                .append('\n')
                .toString();
    }

    private static List<List<String>> rows(List<ReadyItem> items) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Quantity", "Where", "Shows from", "Limit", "Good enough"));
        for (ReadyItem item : items) {
            rows.add(List.of(
                    item.quantity().key(),
                    where(item.condition()),
                    smallest(item),
                    amount(item.limit(), item.quantity().unit()),
                    item.sufficient() ? "yes" : "no"));
        }
        return rows;
    }

    private static String where(Condition condition) {
        List<String> parts = new ArrayList<>();
        add(parts, condition.gainPercent(), Unit.PERCENT, " gain");
        add(parts, condition.frequency(), Unit.HERTZ, "");
        add(parts, condition.level(), Unit.VOLT, "");
        condition.setting().ifPresent(parts::add);
        return parts.isEmpty() ? "–" : String.join(", ", parts);
    }

    private static void add(List<String> parts, OptionalDouble value, Unit unit, String after) {
        if (value.isPresent()) {
            parts.add(NUMBERS.nominal(value.getAsDouble(), unit) + after);
        }
    }

    private static String smallest(ReadyItem item) {
        Optional<String> reason = item.smallestChange().reason();
        OptionalDouble value = item.smallestChange().value();
        return value.isPresent() ? amount(value.getAsDouble(), item.quantity().unit()) : reason.orElseThrow();
    }

    private static String amount(double value, Unit unit) {
        return unit == Unit.PERCENT
                ? NUMBERS.rounded(value, unit, DIGITS).replace("%", "points")
                : NUMBERS.rounded(value, unit, DIGITS);
    }

    private static String closing(ReadyResult result) {
        if (result.items().isEmpty()) {
            return "Not good enough: there is nothing yet that a capture after the work could be compared with.";
        }
        List<String> unseen = result.items().stream()
                .filter(i -> !i.sufficient())
                .map(ReadyItem::quantity)
                .distinct()
                .map(ItemQuantity::key)
                .toList();
        if (!unseen.isEmpty()) {
            return "Not good enough yet: a change of " + String.join(", ", unseen)
                    + " as large as its limit would not show everywhere. After the work nobody can capture this again.";
        }
        return result.sufficient()
                ? "Good enough: a change as large as its limit would show in every quantity and at every setting captured."
                : "Not good enough yet: see what stands first in the list. After the work nobody can capture this again.";
    }
}
