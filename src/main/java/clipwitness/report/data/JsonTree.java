package clipwitness.report.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value of a JSON document that was read. What is not there, or is of another kind than is asked for, is empty.
 *
 * @param value a map, a list, a text, or null for everything else
 */
record JsonTree(Object value) {
    /**
     * Reads a document.
     *
     * @throws IOException if it is none
     */
    static JsonTree read(byte[] document) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(document)) {
            parser.nextToken();
            return new JsonTree(value(parser));
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Object> fields = new LinkedHashMap<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                fields.put(name, value(parser));
            }
            return fields;
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> elements = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY && parser.currentToken() != null) {
                elements.add(value(parser));
            }
            return elements;
        }
        return token == JsonToken.VALUE_STRING ? parser.getText() : null;
    }

    /** A field of an object. */
    JsonTree at(String name) {
        return new JsonTree(value instanceof Map<?, ?> fields ? fields.get(name) : null);
    }

    /** The elements of an array. */
    List<JsonTree> elements() {
        return value instanceof List<?> list
                ? list.stream().map(e -> new JsonTree(e)).toList()
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
