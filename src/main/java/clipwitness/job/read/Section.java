package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** A mapping of the job sheet: hands out values by key, and refuses keys that nobody asked for. A null counts as absent. */
final class Section {
    private final SheetNode node;
    private final Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
    private final Set<String> known = new LinkedHashSet<>();

    private Section(YamlNode.Mapping mapping, SheetNode node) {
        this.node = node;
        mapping.entries().forEach(e -> entries.put(e.key(), e));
    }

    /**
     * Reads a node as a mapping.
     *
     * @param node   the node
     * @param reader asks for every key that the mapping may hold; the others are refused after it
     * @return what the reader returns
     */
    static <T> T read(SheetNode node, Function<Section, T> reader) {
        if (node.node() instanceof YamlNode.Mapping mapping) {
            Section section = new Section(mapping, node);
            T result = reader.apply(section);
            section.refuseOthers();
            return result;
        }
        YamlNode.Mapping nothing = new YamlNode.Mapping(List.of(), node.origin().line());
        boolean absent = node.node().isNull();
        Section section = new Section(nothing, absent ? node : node.reportingTo(new Faults()));
        T result = reader.apply(section);
        if (!absent) {
            boolean free = section.known.isEmpty();
            node.fault(
                    "keys with values belong here",
                    free ? "Write each as name: value" : "Known keys are " + NameWords.all(section.known));
        }
        return result;
    }

    /** The value of a key. */
    Optional<SheetNode> node(String key) {
        known.add(key);
        return Optional.ofNullable(entries.get(key))
                .filter(e -> !e.value().isNull())
                .map(e -> node.at(key, e));
    }

    /** The text of a key. */
    Optional<Field> field(String key) {
        return node(key).flatMap(SheetNode::text);
    }

    /** The text of a key that must be there; the advice says what to write. */
    Optional<Field> required(String key, String advice) {
        Optional<SheetNode> found = node(key);
        if (found.isEmpty()) {
            fault(ErrorCode.MISSING_KEY, key, "the key '" + key + "' is missing", advice);
        }
        return found.flatMap(SheetNode::text);
    }

    /** The text of a key, empty where there is none. */
    String text(String key) {
        return field(key).map(Field::text).orElse("");
    }

    /** The text of a key with its lines, empty where there is none. */
    String lines(String key) {
        return node(key).flatMap(SheetNode::lines).map(Field::text).orElse("");
    }

    /** The mapping of a key; without one the reader meets an empty mapping. */
    <T> T section(String key, Function<Section, T> reader) {
        return read(node(key).orElseGet(() -> nothing(key)), reader);
    }

    /** The list of a key, empty where there is none. */
    List<SheetNode> items(String key) {
        return node(key).map(SheetNode::items).orElse(List.of());
    }

    /** All values under keys of the user's own choice, in the order of the sheet; a null is among them. */
    Map<String, SheetNode> values() {
        Map<String, SheetNode> values = new LinkedHashMap<>();
        for (YamlNode.Entry entry : entries.values()) {
            known.add(entry.key());
            values.put(entry.key(), node.at(entry.key(), entry));
        }
        return values;
    }

    /** The values under some keys; where there is no such key, which is a fault elsewhere, no key is refused. */
    Map<String, SheetNode> values(List<String> keys) {
        if (keys.isEmpty()) {
            values();
        }
        Map<String, SheetNode> values = new LinkedHashMap<>();
        keys.forEach(key -> node(key).ifPresent(node -> values.put(key, node)));
        return values;
    }

    /** Notes a fault of a key, or of the mapping where the key is empty. */
    void fault(ErrorCode code, String key, String what, String remedy) {
        Origin where = key.isEmpty()
                ? node.origin()
                : node(key).orElseGet(() -> nothing(key)).origin();
        node.faults().add(code, where, what, remedy);
    }

    private SheetNode nothing(String key) {
        int line = node.origin().line();
        return node.at(key, new YamlNode.Entry(key, new YamlNode.Text("", true, line), line));
    }

    private void refuseOthers() {
        for (YamlNode.Entry entry : entries.values()) {
            if (!known.contains(entry.key())) {
                node.at(entry.key(), entry)
                        .fault(
                                ErrorCode.UNKNOWN_KEY,
                                "unknown key " + NameWords.quoted(entry.key()),
                                NameWords.nearest(entry.key(), known, "key"));
            }
        }
    }
}
