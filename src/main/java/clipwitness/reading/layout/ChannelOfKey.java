package clipwitness.reading.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which channel the key of a statement speaks of: by its name, as in {@code Unit of CH2}, or by its number, as in {@code Y2 unit}. */
final class ChannelOfKey {
    /** The key names no channel. */
    static final int NONE = -1;

    private static final int ANOTHER = -2;
    private static final Pattern NUMBERED = Pattern.compile("\\p{L}{0,8}(?<number>\\d{1,2})");

    private ChannelOfKey() {}

    /** Number of the channel among the names, from 0; {@link #NONE}, or another number below 0 for a channel that is none of them. */
    static int of(Statement fact, List<String> names) {
        List<String> words = Arrays.asList(fact.words().split(" "));
        for (int i = 0; i < names.size(); i++) {
            if (holds(words, letters(names.get(i)))) {
                return i;
            }
        }
        for (String word : words) {
            Matcher numbered = NUMBERED.matcher(word);
            if (numbered.matches()) {
                int number = Integer.parseInt(numbered.group("number"));
                return number >= 1 && number <= names.size() ? number - 1 : ANOTHER;
            }
        }
        return NONE;
    }

    /** Whether the name stands among the words, as one of them or as several in a row. */
    private static boolean holds(List<String> words, String name) {
        for (int from = 0; from < words.size() && !name.isEmpty(); from++) {
            String joined = "";
            for (int i = from; i < words.size() && joined.length() < name.length(); i++) {
                joined += words.get(i);
                if (joined.equals(name)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String letters(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
    }
}
