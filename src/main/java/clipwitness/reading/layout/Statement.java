package clipwitness.reading.layout;

import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One statement of the preamble: a key and its values.
 *
 * @param key    key as written
 * @param values values as written, at least one
 * @param line   line on which it stands
 */
public record Statement(String key, List<String> values, int line) {
    public Statement {
        values = List.copyOf(values);
    }

    /** The key in lower case with single blanks between its words, camel case taken apart. */
    public String words() {
        return key.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})|(?<=\\p{Lu})(?=\\p{Lu}\\p{Ll})", " ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}/#]+", " ")
                .strip();
    }

    /** The unit of the first value, where the second value is one: {@code 100,kHz}. */
    public Optional<WrittenUnit> unitBeside() {
        return values.size() > 1 ? WrittenUnit.parse(values.get(1)) : Optional.empty();
    }

    public String value() {
        return values.get(0);
    }
}
