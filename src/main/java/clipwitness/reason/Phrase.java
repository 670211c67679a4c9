package clipwitness.reason;

import java.util.List;
import java.util.Locale;

/** Something that can be said, without its words: a code, the name of its line in the words, and the holes of that line. */
public sealed interface Phrase permits ReasonCode, RemarkCode {
    /** Name of the constant. */
    String name();

    /** Names of the holes of its line, in the order in which arguments fill them. */
    List<String> holes();

    /** Name of its line in words.properties. */
    String key();

    /** Name in the results: the constant's, in small letters with hyphens. */
    default String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Names of holes as an enum can hold them: one text, which does not change, as a list might. */
    static String joined(String... holes) {
        return String.join(" ", holes);
    }

    /** The names of such a text. */
    static List<String> parted(String holes) {
        return holes.isEmpty() ? List.of() : List.of(holes.split(" ", -1));
    }
}
