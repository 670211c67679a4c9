package clipwitness.figure;

import java.util.List;

/** How a figure's sentences are put together. */
final class Sentences {
    private Sentences() {}

    /** A state's label in a sentence. */
    static String quoted(String label) {
        return "“" + label + "”";
    }

    /** Parts of a sentence, separated by semicolons, closed by a full stop. */
    static String of(String opening, List<String> parts) {
        return opening + String.join("; ", parts) + ".";
    }

    /** A word or phrase with a capital. */
    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
