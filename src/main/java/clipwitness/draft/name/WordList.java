package clipwitness.draft.name;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The words of {@code words.txt}, each class as one pattern of whole words, longer phrases first. */
final class WordList {
    /** Nothing that belongs to a word stands before. */
    static final String BEGIN = "(?<![\\p{L}\\p{N}])";

    /** Nothing that belongs to a word follows. */
    static final String END = "(?![\\p{L}\\p{N}])";

    private static final String FILE = "words.txt";
    private static final Map<String, Pattern> CLASSES = read();

    private WordList() {}

    /** The pattern of a class of states. */
    static Pattern of(StateClass name) {
        return of(name.name());
    }

    /** The pattern of a kind of captures. */
    static Pattern of(KindWord name) {
        return of(name.name());
    }

    /** The pattern of the words that say nothing. */
    static Pattern generic() {
        return of("generic");
    }

    private static Pattern of(String name) {
        return CLASSES.get(name.toLowerCase(Locale.ROOT));
    }

    private static Map<String, Pattern> read() {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(WordList.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
            Map<String, Pattern> classes = new LinkedHashMap<>();
            lines.lines()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .map(l -> l.split(":", 2))
                    .forEach(l -> classes.put(l[0].strip(), pattern(l[1])));
            return classes;
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }

    /** Blanks of a phrase stand for anything that separates words in a name. */
    private static Pattern pattern(String words) {
        List<String> sorted = Arrays.stream(words.split(",", -1))
                .map(String::strip)
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        String any = sorted.stream()
                .map(w -> Arrays.stream(w.split(" ", -1)).map(Pattern::quote).collect(Collectors.joining("[ -]+")))
                .collect(Collectors.joining("|"));
        return Pattern.compile(BEGIN + "(?:" + any + ")" + END);
    }
}
