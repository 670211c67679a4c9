package clipwitness.report.data;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Whether results as JSON and as a table say the same: digest, figures of the captures, items of the comparisons. */
public final class ResultsAgreement {
    private static final List<String> KEY = List.of(
            "section", "state", "against", "file", "quantity", "order", "gainPercent", "frequency", "level", "setting");

    private ResultsAgreement() {}

    /**
     * What the two say differently, each with its figure; empty where they agree.
     *
     * @param json  results as JSON
     * @param table results as a table
     */
    public static List<String> faults(ResultsDocument json, byte[] table) {
        List<CSVRecord> rows;
        try {
            rows = rows(table);
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            return List.of("the table of results cannot be read");
        }
        List<String> faults = new ArrayList<>();
        if (rows.stream().noneMatch(r -> isDigest(r, json.inputsDigest()))) {
            faults.add("the digest of the inputs is not the same in the table of results as in the results");
        }
        Map<String, List<String>> told = new LinkedHashMap<>();
        json.document().forEach((name, part) -> {
            if (part instanceof List<?> elements) {
                elements.forEach(e -> part(String.valueOf(name), e, told));
            }
        });
        Map<String, List<String>> tabled = new LinkedHashMap<>();
        rows.stream()
                .filter(r -> told.containsKey(key(r)))
                .forEach(r -> add(
                        tabled,
                        key(r),
                        figures(r.get("value"), r.get("expandedUncertainty"), r.get("limit"), r.get("decision"))));
        told.forEach((key, figures) -> compare(key, figures, tabled.getOrDefault(key, List.of()), faults));
        return faults;
    }

    private static List<CSVRecord> rows(byte[] table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        String text = new String(table, StandardCharsets.UTF_8);
        if (!ResultsCsv.isHead(text)) {
            throw new IOException("another head");
        }
        return format.parse(new StringReader(text)).getRecords();
    }

    private static boolean isDigest(CSVRecord row, String digest) {
        return row.get("quantity").equals("inputsDigest") && row.get("reason").equals(digest);
    }

    private static void compare(String key, List<String> told, List<String> tabled, List<String> faults) {
        if (!told.equals(tabled)) {
            String place =
                    Stream.of(key.split("\u0000")).filter(k -> !k.isEmpty()).collect(Collectors.joining(" "));
            faults.add(place + ": " + String.join("; ", told) + " in the results, "
                    + (tabled.isEmpty() ? "not there" : String.join("; ", tabled)) + " in the table");
        }
    }

    private static String key(CSVRecord row) {
        return KEY.stream().map(row::get).collect(Collectors.joining("\u0000"));
    }

    private static void part(String name, Object element, Map<String, List<String>> told) {
        if (element instanceof Map<?, ?> part && name.equals("captures")) {
            capture(part, told);
        }
        if (element instanceof Map<?, ?> part
                && name.equals("comparisons")
                && part.get("items") instanceof List<?> items) {
            items.forEach(i -> item(part, i, told));
        }
    }

    private static void capture(Map<?, ?> capture, Map<String, List<String>> told) {
        if (capture.get("values") instanceof Map<?, ?> values) {
            values.forEach((name, value) -> {
                if (value instanceof Map<?, ?> figure) {
                    add(told, captureKey(capture, String.valueOf(name), ""), figures(figure, "value"));
                }
            });
        }
        if (capture.get("harmonics") instanceof List<?> harmonics) {
            harmonics.forEach(h -> {
                if (h instanceof Map<?, ?> harmonic && harmonic.get("order") instanceof Double order) {
                    add(
                            told,
                            captureKey(capture, "harmonic", Long.toString(Math.round(order))),
                            figures(harmonic, "level"));
                }
            });
        }
    }

    private static String captureKey(Map<?, ?> capture, String quantity, String order) {
        return key("capture", capture.get("state"), "", capture.get("file"), quantity, order, capture);
    }

    private static void item(Map<?, ?> comparison, Object element, Map<String, List<String>> told) {
        if (element instanceof Map<?, ?> item) {
            String key =
                    key("comparison", comparison.get("to"), comparison.get("from"), "", item.get("quantity"), "", item);
            add(
                    told,
                    key,
                    figures(
                            plain(item.get("change")),
                            plain(item.get("expandedUncertainty")),
                            plain(item.get("limit")),
                            plain(item.get("decision"))));
        }
    }

    private static String key(
            String section, Object state, Object against, Object file, Object quantity, String order, Map<?, ?> at) {
        return Stream.of(
                        section,
                        plain(state),
                        plain(against),
                        plain(file),
                        plain(quantity),
                        order,
                        plain(at.get("gainPercent")),
                        plain(at.get("frequency")),
                        plain(at.get("level")),
                        plain(at.get("setting")))
                .map(SpreadsheetCell::harmless)
                .collect(Collectors.joining("\u0000"));
    }

    private static String figures(Map<?, ?> figure, String name) {
        return figures(plain(figure.get(name)), plain(figure.get("expandedUncertainty")), "", "");
    }

    private static String figures(String value, String uncertainty, String limit, String decision) {
        return (value.isEmpty() ? "no value" : value)
                + (uncertainty.isEmpty() ? "" : " ± " + uncertainty)
                + (limit.isEmpty() ? "" : ", limit " + limit)
                + (decision.isEmpty() ? "" : ", " + decision);
    }

    private static void add(Map<String, List<String>> figures, String key, String figure) {
        figures.computeIfAbsent(key, k -> new ArrayList<>()).add(figure);
    }

    private static String plain(Object value) {
        return value == null ? "" : String.valueOf(value);
    }
}
