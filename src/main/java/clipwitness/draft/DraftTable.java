package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The captures table of a draft. Columns that no row needs are left out. */
public final class DraftTable {
    private static final double FIRST_TENTH = 10;
    private static final List<String> ALWAYS = List.of("file", "state", "kind", "gain");

    private DraftTable() {}

    /** The text of the table. */
    public static String of(Draft draft) {
        Map<String, Function<DraftRow, String>> columns = columns(draft);
        List<String> used = columns.entrySet().stream()
                .filter(c -> ALWAYS.contains(c.getKey())
                        || draft.rows().stream()
                                .anyMatch(r -> !c.getValue().apply(r).isEmpty()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(ArrayList::new));
        if (draft.rows().stream().anyMatch(r -> r.source().content().type() == Content.Type.UNSTATED)) {
            used.addAll(List.of("interval", "unit"));
        }
        StringBuilder text = new StringBuilder(String.join(",", used)).append('\n');
        for (DraftRow row : draft.rows()) {
            text.append(used.stream()
                            .map(c -> quoted(columns.getOrDefault(c, r -> "").apply(row)))
                            .collect(Collectors.joining(",")))
                    .append('\n');
        }
        return text.toString();
    }

    private static Map<String, Function<DraftRow, String>> columns(Draft draft) {
        Map<String, Function<DraftRow, String>> columns = new LinkedHashMap<>();
        String sign = isLow(draft) ? " %" : "";
        columns.put("file", r -> r.source().path());
        columns.put("state", r -> r.state().map(DraftStates::name).orElse(""));
        columns.put("kind", r -> r.kind().value().code());
        columns.put(
                "gain",
                r -> r.facts()
                        .gain()
                        .map(Guess::value)
                        .map(Rounded::plain)
                        .map(g -> g + sign)
                        .orElse(""));
        columns.put(
                "frequency",
                r -> r.frequency().map(Guess::value).map(Rounded::frequency).orElse(""));
        columns.put("level", r -> r.level().map(Guess::value).orElse(""));
        columns.put("setting", r -> setting(r, draft));
        columns.put(
                "run",
                r -> r.facts().run().map(g -> Integer.toString(g.value())).orElse(""));
        columns.put("device", r -> r.facts().device().map(Guess::value).orElse(""));
        columns.put("input", r -> r.channels().map(c -> c.value().input()).orElse(""));
        columns.put("output", r -> r.channels().map(c -> c.value().output()).orElse(""));
        columns.put("input-file", r -> r.inputFile().map(s -> s.value().path()).orElse(""));
        columns.put("date", r -> r.facts().date().map(Object::toString).orElse(""));
        return columns;
    }

    /** Positions that all lie within the first tenth look like the marks of a dial, unless their sign of percent stands beside them. */
    private static boolean isLow(Draft draft) {
        return draft.rows().stream().flatMap(r -> r.facts().gain().stream()).allMatch(g -> g.value() <= FIRST_TENTH);
    }

    private static String setting(DraftRow row, Draft draft) {
        boolean first = row.facts().setting().isEmpty() || draft.settings().size() < 2;
        return first || row.kind().value() == DraftKind.JUNCTION
                ? ""
                : row.facts().setting().get().value();
    }

    /** A cell after RFC 4180, in quotes wherever a reader could take a character for something else. */
    static String quoted(String cell) {
        return cell.chars().anyMatch(c -> ",;\"'#\t\n\r".indexOf(c) >= 0) || !cell.equals(cell.strip())
                ? '"' + cell.replace("\"", "\"\"") + '"'
                : cell;
    }
}
