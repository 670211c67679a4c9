package clipwitness.report.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value of a JSON document that was read. What is not there, or is of another kind than is asked for, is empty.
 *
 * @param value as {@link JsonTree} gives it
 */
record JsonValue(Object value) {
    /** The document's outermost object; empty where the bytes are no JSON object. */
    static Optional<JsonValue> read(byte[] document) {
        return JsonTree.read(document).map(JsonValue::new);
    }

    /** A field of an object. */
    JsonValue at(String name) {
        return new JsonValue(value instanceof Map<?, ?> fields ? fields.get(name) : null);
    }

    /** The elements of an array. */
    List<JsonValue> elements() {
        return value instanceof List<?> list
                ? list.stream().map(e -> new JsonValue(e)).toList()
                : List.of();
    }

    /** A text. */
    Optional<String> text() {
        return value instanceof String text ? Optional.of(text) : Optional.empty();
    }

    /** The text of a field; empty text where it has none. */
    String textAt(String name) {
        return at(name).text().orElse("");
    }
}
