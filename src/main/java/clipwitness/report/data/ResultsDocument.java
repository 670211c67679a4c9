package clipwitness.report.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Results that were written as JSON, read back. Whoever holds the file may have changed it: nothing in it is taken for granted. */
public final class ResultsDocument {
    private static final String SHA_256 = "[0-9a-f]{64}";

    private final Map<?, ?> document;

    private ResultsDocument(Map<?, ?> document) {
        this.document = document;
    }

    /** The results in a file; empty where it holds none. */
    public static Optional<ResultsDocument> of(byte[] json) {
        return JsonTree.read(json)
                .filter(d -> d.get("schema") instanceof String schema && schema.startsWith("clipwitness-results/"))
                .map(ResultsDocument::new);
    }

    Map<?, ?> document() {
        return document;
    }

    private Map<?, ?> report() {
        return document.get("report") instanceof Map<?, ?> report ? report : Map.of();
    }

    /** Number of the report; empty where it is not there. */
    public String number() {
        return text(report().get("number"));
    }

    /** Name and version of the program that wrote them; empty where that is not there. */
    public String software() {
        return text(report().get("software"));
    }

    /** Digest over all inputs, 64 hexadecimal digits; empty where it is not there. */
    public String inputsDigest() {
        return digest(report().get("inputsDigest"));
    }

    /** The templates of the PDFs that were made with the results. */
    public List<String> templates() {
        return report().get("templates") instanceof List<?> list
                ? list.stream().map(ResultsDocument::text).toList()
                : List.of();
    }

    /** SHA-256 of each input by its name within the job folder; of an earlier version's results only of the exports. */
    public Map<String, String> inputs() {
        Map<String, String> inputs = measured();
        inputs.putAll(listed());
        return inputs;
    }

    /** Whether all inputs are listed, so that their digest can be computed again. */
    public boolean listsAllInputs() {
        return report().get("inputs") instanceof List<?> list && !list.isEmpty();
    }

    /** SHA-256 of all inputs by name, as they are listed; empty in an earlier version's results. */
    public Map<String, String> listed() {
        Map<String, String> listed = new LinkedHashMap<>();
        each(report().get("inputs"), i -> put(listed, i.get("file"), i.get("sha256")));
        return listed;
    }

    /** Exports of whose content the two lists say different things. */
    public List<String> contradictions() {
        Map<String, String> listed = listed();
        return measured().entrySet().stream()
                .filter(e -> listsAllInputs() && !e.getValue().equals(listed.get(e.getKey())))
                .map(Map.Entry::getKey)
                .toList();
    }

    private Map<String, String> measured() {
        Map<String, String> measured = new LinkedHashMap<>();
        each(document.get("captures"), c -> {
            put(measured, c.get("file"), c.get("sha256"));
            put(measured, c.get("inputFile"), c.get("inputSha256"));
        });
        return measured;
    }

    private interface Taker {
        void take(Map<?, ?> element);
    }

    private static void each(Object list, Taker taker) {
        if (list instanceof List<?> elements) {
            for (Object e : elements) {
                if (e instanceof Map<?, ?> element) {
                    taker.take(element);
                }
            }
        }
    }

    private static void put(Map<String, String> inputs, Object file, Object sha256) {
        if (!text(file).isEmpty() && !digest(sha256).isEmpty()) {
            inputs.put(text(file), digest(sha256));
        }
    }

    private static String digest(Object value) {
        return text(value).matches(SHA_256) ? text(value) : "";
    }

    private static String text(Object value) {
        return value instanceof String text ? text : "";
    }
}
