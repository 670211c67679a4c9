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

/** A JSON document read back as maps, lists, texts, numbers (as double), booleans and null. */
final class JsonTree {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** Results nest eight levels deep; so much is room for more. */
    private static final int DEEPEST = 50;

    private final JsonParser parser;

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /** The document's outermost object; empty where the bytes are no JSON object. */
    static Optional<Map<?, ?>> read(byte[] json) {
        try (JsonParser parser = FACTORY.createParser(json)) {
            parser.nextToken();
            return new JsonTree(parser).value(0) instanceof Map<?, ?> map ? Optional.of(map) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private Object value(int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new IOException("nested too deeply");
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return object(depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return array(depth);
        }
        if (token == JsonToken.VALUE_STRING) {
            return parser.getText();
        }
        if (token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE) {
            return parser.getBooleanValue();
        }
        return token == JsonToken.VALUE_NUMBER_INT || token == JsonToken.VALUE_NUMBER_FLOAT
                ? (Object) parser.getDoubleValue()
                : null;
    }

    private Map<String, Object> object(int depth) throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            object.put(name, value(depth + 1));
        }
        return object;
    }

    private List<Object> array(int depth) throws IOException {
        List<Object> array = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY && parser.currentToken() != null) {
            array.add(value(depth + 1));
        }
        return array;
    }
}
