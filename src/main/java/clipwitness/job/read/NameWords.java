package clipwitness.job.read;

import clipwitness.fault.Nearest;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** Words for messages about names that are not known. */
final class NameWords {
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\s\\p{Cntrl}]+");
    private static final int LONGEST = 60;
    private static final int MOST = 40;

    private static final Pattern SENSIBLE = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} ._+-]{0,59}(?<! )");

    private NameWords() {}

    /** A text in quotes, without line breaks, control characters and what is too long for a message. */
    static String quoted(String text) {
        return "'" + clipped(text) + "'";
    }

    /** A text without line breaks, control characters and what is too long for a message. */
    static String clipped(String text) {
        String line = UNPRINTABLE.matcher(text).replaceAll(" ");
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }

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
                .map(k -> "Is " + quoted(k) + " meant?" + (known.size() > 1 ? " Known: " + joined(known, ", ") : ""))
                .orElse("Write " + either(known));
    }

    /** The nearest of some known words, and all of them where it is not near enough to be meant. */
    static String nearest(String word, Collection<String> known, String noun) {
        String nearest = "The nearest known " + noun + " is "
                + quoted(Nearest.to(word, known).orElseThrow());
        boolean slip = Nearest.slipOf(word, known).isPresent();
        return slip ? nearest : nearest + "; known are " + all(known);
    }

    private static String joined(Collection<String> words, String last) {
        List<String> list = words.stream().limit(MOST).map(NameWords::clipped).toList();
        int n = list.size();
        if (n < words.size()) {
            return String.join(", ", list) + ", …";
        }
        return n < 2 ? String.join("", list) : String.join(", ", list.subList(0, n - 1)) + last + list.get(n - 1);
    }

    /** Notes a fault where a name cannot be used in a table, a file or a sentence. */
    static void check(SheetNode node, String name, String noun) {
        if (!SENSIBLE.matcher(name).matches()) {
            node.fault(
                    quoted(name) + " cannot name a " + noun,
                    "Use letters, digits, space and . _ + -, at most 60 of them, the first a letter or digit");
        }
    }

    /** Notes a fault where a name has a meaning of its own. */
    static void refuse(SheetNode node, String name, List<String> taken) {
        if (taken.contains(name)) {
            node.fault("a state cannot be called " + quoted(name), "Rename it; " + all(taken) + " are keys of a rail");
        }
    }
}
