package clipwitness.draft.name;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of a path that are not understood yet: those of the file's name without its ending, and of its folders. What is understood is taken out, so that
 * nothing is read twice.
 */
final class PathWords {
    /** A place from which something was taken: separates words, and is none. */
    private static final String GONE = " | ";

    private static final Pattern ENDING = Pattern.compile("\\.[\\p{L}][\\p{L}\\p{N}]{0,4}$");
    private static final Pattern HUMP =
            Pattern.compile("(?<=\\p{Ll}{2})(?=\\p{Lu}\\p{Ll})|(?<=\\p{Ll}{3})(?=\\p{Lu}\\d)");
    private static final Pattern SEPARATORS = Pattern.compile("[_+;~!&\\[\\]{}@]|[.,](?!\\d)|(?<!\\d)[.,]");

    private final List<String> parts;

    private PathWords(List<String> parts) {
        this.parts = new ArrayList<>(parts);
    }

    /**
     * Something that was found.
     *
     * @param match what matched
     * @param inFolder whether it stood in the name of a folder
     */
    record Found(MatchResult match, boolean inFolder) {
        /** A clause that says where it stood. */
        String reason() {
            return "\"" + match.group().strip() + "\" in the name of the " + (inFolder ? "folder" : "file");
        }
    }

    /** The words of a path with forward slashes. */
    static PathWords of(String path) {
        List<String> names = new ArrayList<>(Arrays.asList(path.split("/", -1)));
        int last = names.size() - 1;
        names.set(last, stem(names.get(last)));
        return new PathWords(names.stream().map(PathWords::plain).toList());
    }

    /** A file's name without its ending. */
    static String stem(String name) {
        return ENDING.matcher(name).replaceFirst("");
    }

    private static String plain(String name) {
        String spaced =
                HUMP.matcher(Normalizer.normalize(name, Normalizer.Form.NFC)).replaceAll(" ");
        String words = SEPARATORS
                .matcher(spaced.toLowerCase(Locale.ROOT))
                .replaceAll(" ")
                .replace('’', '\'')
                .strip();
        return WordList.apart(words);
    }

    /** Takes out the first match, from the file's name outwards. */
    Optional<Found> take(Pattern pattern) {
        for (int i = parts.size() - 1; i >= 0; i--) {
            Optional<Found> found = take(pattern, i);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Takes every match out. */
    void takeAll(Pattern pattern) {
        parts.replaceAll(p -> pattern.matcher(p).replaceAll(GONE));
    }

    private Optional<Found> take(Pattern pattern, int part) {
        Matcher matcher = pattern.matcher(parts.get(part));
        if (!matcher.find()) {
            return Optional.empty();
        }
        MatchResult match = matcher.toMatchResult();
        String text = parts.get(part);
        parts.set(part, text.substring(0, match.start()) + GONE + text.substring(match.end()));
        return Optional.of(new Found(match, part < parts.size() - 1));
    }

    /** Number of parts: the folders, and last the file. */
    int size() {
        return parts.size();
    }

    /** What is left of a part, by its index from 0. */
    String part(int index) {
        return parts.get(index);
    }

    /** The words that are left of a part; numbers are among them. */
    List<String> words(int index) {
        return Arrays.stream(parts.get(index).split("[^\\p{L}\\p{N}]+", -1))
                .filter(w -> !w.isEmpty())
                .toList();
    }
}
