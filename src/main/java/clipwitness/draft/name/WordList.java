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
import java.util.stream.Stream;

/** The words of {@code words.txt}, each class as one pattern of whole words, longer phrases first. */
final class WordList {
    /** Nothing that belongs to a word stands before. */
    static final String BEGIN = "(?<![\\p{L}\\p{N}])";

    /** Nothing that belongs to a word follows. */
    static final String END = "(?![\\p{L}\\p{N}])";

    private static final String FILE = "words.txt";
    private static final Map<String, Pattern> CLASSES = read();

    /** A word for a state with a number that is written without a blank: {@code stock50}. */
    private static final Pattern NUMBERED = Pattern.compile(Arrays.stream(StateClass.values())
            .map(c -> of(c).pattern())
            .map(p -> p.substring(0, p.length() - END.length()))
            .collect(Collectors.joining("|", "(", ")(?=\\d{1,3}(?![\\p{L}\\p{N}]))")));

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

    /** A text in which each word for a state stands apart from a number of one to three digits that follows it. */
    static String apart(String text) {
        return NUMBERED.matcher(text).replaceAll("$1 ");
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

    /** As German words are written where a file system or a keyboard has no umlauts. */
    private static String withoutUmlauts(String word) {
        return word.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("ß", "ss");
    }

    /** Blanks of a phrase stand for anything that separates words in a name. */
    private static Pattern pattern(String words) {
        List<String> sorted = Arrays.stream(words.split(",", -1))
                .map(String::strip)
                .flatMap(w -> Stream.of(w, withoutUmlauts(w)).distinct())
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        String any = sorted.stream()
                .map(w -> Arrays.stream(w.split(" ", -1)).map(Pattern::quote).collect(Collectors.joining("[ -]+")))
                .collect(Collectors.joining("|"));
        return Pattern.compile(BEGIN + "(?:" + any + ")" + END);
    }
}
