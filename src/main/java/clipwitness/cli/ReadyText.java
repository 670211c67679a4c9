package clipwitness.cli;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Missing;
import clipwitness.compare.result.ReadyItem;
import clipwitness.compare.result.ReadyResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Whether the captures before the work are good enough, for a terminal. */
final class ReadyText {
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final int DIGITS = 2;

    private ReadyText() {}

    /** A table of what can be told, what would help, what is missing, and a sentence at the end; a blank line between them. */
    static String of(ReadyResult result) {
        List<String> parts = new ArrayList<>();
        if (!result.items().isEmpty()) {
            parts.add(TextTable.of(rows(result.items())));
        }
        list(
                        "What would help, as far as the unit stays what it is (a change near its limit needs more):",
                        remedies(result.items()))
                .ifPresent(parts::add);
        list("To do at the bench, most important first:", numbered(result.missing()))
                .ifPresent(parts::add);
        parts.add(closing(result) + "\n");
        return String.join("\n", parts);
    }

    private static Optional<String> list(String heading, List<String> lines) {
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(heading + "\n" + lines.stream().map(l -> l + "\n").collect(Collectors.joining()));
    }

    private static List<String> remedies(List<ReadyItem> items) {
        return worst(items).stream()
                .flatMap(i -> Speech.ENGLISH.text(i.remedy()).map(r -> "  " + name(i.quantity()) + ": " + r).stream())
                .toList();
    }

    private static List<String> numbered(List<Missing> missing) {
        return IntStream.range(0, missing.size())
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "%3d. %s",
                        i + 1,
                        Speech.ENGLISH.text(missing.get(i).what())))
                .toList();
    }

    /** Of each quantity that was measured and does not suffice, the item that is furthest from sufficing. */
    private static Collection<ReadyItem> worst(List<ReadyItem> items) {
        return items.stream()
                .filter(i -> !i.sufficient() && i.smallestChange().value().isPresent())
                .collect(Collectors.toMap(
                        ReadyItem::quantity,
                        i -> i,
                        BinaryOperator.maxBy(Comparator.comparingDouble(ReadyText::size)),
                        LinkedHashMap::new))
                .values();
    }

    private static double size(ReadyItem item) {
        return item.smallestChange().value().orElse(0);
    }

    private static List<List<String>> rows(List<ReadyItem> items) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Quantity", "Where", "Shows from", "Limit", "Good enough"));
        for (ReadyItem item : items) {
            rows.add(List.of(
                    name(item.quantity()),
                    where(item.condition()),
                    smallest(item),
                    amount(item.limit(), item.quantity().unit()),
                    item.sufficient() ? "yes" : "no"));
        }
        return rows;
    }

    private static String name(ItemQuantity quantity) {
        return quantity == ItemQuantity.THD ? "THD" : quantity.key().replace('-', ' ');
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
        OptionalDouble value = item.smallestChange().value();
        return value.isPresent() ? amount(value.getAsDouble(), item.quantity().unit()) : "not measured";
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
                .map(ReadyText::name)
                .toList();
        if (!unseen.isEmpty()) {
            return "Not good enough yet: a change of " + String.join(", ", unseen)
                    + " as large as its limit would not show everywhere. After the work nobody can capture this again.";
        }
        return result.sufficient()
                ? "Good enough: wherever these captures are compared, a change as large as its limit would show."
                : "Not good enough yet: see the first entry of the list. After the work nobody can capture this again.";
    }
}
