package clipwitness.draft.name;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Letters after a number that count takes: {@code g50}, {@code g50b}, {@code g50_c}. They count only where the same name stands with another letter or without one. */
final class TakeLetters {
    private static final Pattern LETTERED = Pattern.compile("(.*[\\d%])[ _-]?([a-d])");

    private TakeLetters() {}

    /** The runs of the paths that such letters tell apart, by path. */
    static Map<String, Guess<Integer>> of(List<String> paths) {
        Map<String, Set<String>> letters = new HashMap<>();
        paths.forEach(
                p -> letters.computeIfAbsent(rest(p), r -> new TreeSet<>()).add(letter(p)));
        Map<String, Guess<Integer>> runs = new HashMap<>();
        for (String path : paths) {
            if (letters.get(rest(path)).size() > 1 && !letter(path).isEmpty()) {
                runs.put(
                        path,
                        new Guess<>(
                                1 + letter(path).charAt(0) - 'a',
                                "the letter " + letter(path) + " at the end of the name, which has a sibling"));
            }
        }
        return runs;
    }

    /** A path without its letter. */
    static String rest(String path) {
        Matcher matcher = LETTERED.matcher(folded(path));
        return matcher.matches() ? matcher.group(1) : folded(path);
    }

    private static String letter(String path) {
        Matcher matcher = LETTERED.matcher(folded(path));
        return matcher.matches() ? matcher.group(2) : "";
    }

    private static String folded(String path) {
        return PathWords.stem(path).toLowerCase(Locale.ROOT);
    }
}
