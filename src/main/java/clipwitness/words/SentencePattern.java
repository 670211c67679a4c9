package clipwitness.words;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with {holes}, and with [parts] that vanish where a hole inside them has no text; [a part|another] gives the other instead.
 *
 * @param name name of the sentence, for messages
 * @param text the sentence as it is written
 */
record SentencePattern(String name, String text) {
    private static final Pattern HOLE = Pattern.compile("\\{(\\w+)\\}");

    /** A first word that is written with a capital everywhere, as a noun in German. */
    private static final Pattern KEPT = Pattern.compile("\\[[^\\[\\]|{}]*\\]");

    private static final Pattern OPTIONAL = Pattern.compile("\\[([^\\[\\]|]*)(?:\\|([^\\[\\]|]*))?\\]");

    /** Names of all holes. */
    Set<String> holes() {
        Set<String> holes = new TreeSet<>();
        HOLE.matcher(text).results().forEach(m -> holes.add(small(m.group(1))));
        return holes;
    }

    /** Whether the sentence begins with a word of its own that is small elsewhere: not with a hole, nor with a word in brackets. */
    boolean beginsWithWord() {
        return !text.startsWith("{")
                && !text.startsWith("[{")
                && !KEPT.matcher(text).lookingAt();
    }

    /**
     * The sentence with its holes filled.
     *
     * @param holes name and text of each hole, in turn
     * @throws IllegalArgumentException if a hole stays open
     */
    String filled(String... holes) {
        String chosen = text.indexOf('[') < 0
                ? text
                : OPTIONAL.matcher(text).replaceAll(m -> Matcher.quoteReplacement(chosen(m, holes)));
        return chosen.indexOf('{') < 0 ? chosen : withFillings(chosen, holes);
    }

    /** A text with all its holes filled; brackets around anything else stay. */
    private String withFillings(String chosen, String... holes) {
        StringBuilder filled = new StringBuilder(2 * chosen.length());
        int from = 0;
        for (int open = chosen.indexOf('{'); open >= 0; open = chosen.indexOf('{', open + 1)) {
            int close = endOfWord(chosen, open + 1);
            if (close > open + 1 && close < chosen.length() && chosen.charAt(close) == '}') {
                filled.append(chosen, from, open).append(filling(chosen.substring(open + 1, close), holes));
                from = close + 1;
            }
        }
        return filled.append(chosen, from, chosen.length()).toString();
    }

    /** The first place from which no letter, digit or underscore stands, as {@code \w} of a pattern has them. */
    private static int endOfWord(String text, int from) {
        int at = from;
        while (at < text.length() && isOfWord(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static boolean isOfWord(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
    }

    private String chosen(MatchResult part, String... holes) {
        boolean whole = HOLE.matcher(part.group(1))
                .results()
                .noneMatch(m -> filling(m.group(1), holes).isEmpty());
        if (whole) {
            return part.group(1);
        }
        return part.group(2) == null ? "" : part.group(2);
    }

    /** The text of a hole; one that is written with a capital, {@code {State}}, has its text begin with a capital. */
    private String filling(String hole, String... holes) {
        String text = text(small(hole), holes);
        return small(hole).equals(hole) || text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String small(String hole) {
        return hole.substring(0, 1).toLowerCase(Locale.ROOT) + hole.substring(1);
    }

    private String text(String hole, String... holes) {
        for (int i = 0; i < holes.length; i += 2) {
            if (holes[i].equals(hole)) {
                return holes[i + 1];
            }
        }
        throw new IllegalArgumentException("hole " + hole + " of sentence " + name + " stays open");
    }
}
