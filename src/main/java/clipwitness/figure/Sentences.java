package clipwitness.figure;

import java.util.List;

/** How a figure's sentences are put together. */
final class Sentences {
    private Sentences() {}

    /** Parts of a sentence, separated by semicolons. */
    static String parts(List<String> parts) {
        return String.join("; ", parts);
    }

    /** A word or phrase with a capital. */
    static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
