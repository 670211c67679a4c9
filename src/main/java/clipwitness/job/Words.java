package clipwitness.job;

import java.util.Collection;
import java.util.List;

/** Words for messages about names that are not known. */
final class Words {
    private Words() {}

    /** {@code a}, {@code a or b}, {@code a, b or c}. */
    static String either(Collection<String> words) {
        return joined(words, " or ");
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String all(Collection<String> words) {
        return joined(words, " and ");
    }

    /** What to write instead of a word that is not known: the word probably meant, or the choice. */
    static String insteadOf(String word, Collection<String> known) {
        return Nearest.slipOf(word, known)
                .map(k -> "Is '" + k + "' meant?" + (known.size() > 1 ? " Known: " + String.join(", ", known) : ""))
                .orElse("Write " + either(known));
    }

    private static String joined(Collection<String> words, String last) {
        List<String> list = List.copyOf(words);
        int n = list.size();
        return n < 2 ? String.join("", list) : String.join(", ", list.subList(0, n - 1)) + last + list.get(n - 1);
    }
}
