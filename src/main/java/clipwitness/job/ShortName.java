package clipwitness.job;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What sentences call a state whose sheet gives it no short name: its label without what stands before the comma, where that is one word
 * ({@code After, new position}: {@code new position}), else what stands before the comma, else the whole label. A name of a sentence has at
 * most four words; where the label has more, it is the state's name in the captures table.
 */
public final class ShortName {
    /** Words of a short name at most. */
    public static final int MOST_WORDS = 4;

    private static final String GERMAN = "de";

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private ShortName() {}

    /**
     * The short name of a state.
     *
     * @param label    what the report calls it
     * @param name     name on the sheet and in the captures table
     * @param language language of the report: in all but German an ordinary word begins small inside a sentence
     */
    public static String of(String label, String name, String language) {
        return candidates(label)
                .filter(c -> words(c) <= MOST_WORDS)
                .map(c -> small(c, language))
                .findFirst()
                .orElseGet(() -> ofName(name));
    }

    /** The name in the captures table, as words. */
    public static String ofName(String name) {
        return name.replace('-', ' ').replace('_', ' ');
    }

    private static Stream<String> candidates(String label) {
        int comma = label.indexOf(',');
        if (comma < 0) {
            return Stream.of(label.strip());
        }
        String before = label.substring(0, comma).strip();
        String after = label.substring(comma + 1).strip();
        List<String> parts = words(before) == 1 ? List.of(after) : List.of(before, after);
        return parts.stream().filter(p -> !p.isEmpty());
    }

    /** How many words a text has. */
    public static int words(String text) {
        return (int)
                BLANKS.splitAsStream(text.strip()).filter(w -> !w.isEmpty()).count();
    }

    /** A first word in ordinary letters begins small; one with further capitals or digits is a name and stays. */
    private static String small(String text, String language) {
        int end = text.indexOf(' ');
        String rest = text.substring(1, end < 0 ? text.length() : end);
        boolean ordinary = !rest.isEmpty() && rest.chars().allMatch(Character::isLowerCase);
        return ordinary && !Locale.forLanguageTag(language).getLanguage().equals(GERMAN)
                ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
                : text;
    }
}
