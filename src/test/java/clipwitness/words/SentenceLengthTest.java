package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No sentence of a report has 25 words or more, its holes filled as they usually are; a number with its unit is one word. The method pages count, a cell
 * or an item of a list by itself. Not counted: how a layout was read, a list of clauses, and the bench plan, a page of its own.
 */
class SentenceLengthTest {
    private static final int TOO_MANY = 25;
    private static final Pattern END = Pattern.compile("(?<=[.!?])\\s+");
    /** Marks within a line, and what the template language does. */
    private static final Pattern NOT_READ = Pattern.compile("</?(?:sub|b|i)>|\\{%.*?%}");

    private static final Pattern WORD = Pattern.compile(".*[\\p{L}\\p{N}].*");

    /** What a hole is filled with, where it is no number with a unit. */
    private static final Map<String, String> ENGLISH = Map.of(
            "settings", "all five gain settings",
            "condition", "50\u00a0% gain",
            "place", "at 50\u00a0% gain",
            "state", "new position",
            "states", "as received and new position",
            "list", "as received, original position and new position",
            "quantities", "level, asymmetry of the peaks, crest factor, shape of the wave and polarity");

    private static final Map<String, String> GERMAN = Map.of(
            "settings", "allen fünf Gain-Stellungen",
            "condition", "50\u00a0% Gain",
            "place", "bei 50\u00a0% Gain",
            "state", "neue Stellung",
            "states", "wie geliefert und neue Stellung",
            "list", "wie geliefert, alte Stellung und neue Stellung",
            "quantities", "Pegel, Asymmetrie der Spitzen, Scheitelfaktor, Wellenform und Polarität");

    /** Holes for names of states, and for statements that are sentences or clauses of their own and counted as such. */
    private static final List<String> STATES = List.of("to", "from", "changed", "unchanged", "what", "as", "again");

    private static final List<String> STATEMENTS = List.of(
            "reason",
            "evidence",
            "hint",
            "more",
            "sentence",
            "lead",
            "parts",
            "others",
            "doubt",
            "items",
            "waves",
            "text",
            "halves",
            "stimulus");

    @Test
    void noEnglishSentenceIsLong() {
        assertThat(tooLong(WordBundle.builtIn(), ENGLISH)).isEmpty();
    }

    @Test
    void noGermanSentenceIsLong() throws IOException {
        String german = Files.readString(Path.of("report-templates/common/words-de.properties"));
        assertThat(tooLong(WordBundle.of(german), GERMAN)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"method.html", "method-de.html"})
    void noSentenceOfAMethodPageIsLong(String page) throws IOException {
        List<String> sentences = ofPage(Files.readString(Path.of("report-templates/bench", page)));
        assertThat(sentences).hasSizeGreaterThan(100);
        assertThat(sentences.stream().filter(s -> words(s) >= TOO_MANY)).isEmpty();
    }

    /** A test that counts nothing would pass: so many sentences are there to count. */
    @Test
    void theSentencesAreCounted() {
        assertThat(sentences(WordBundle.builtIn(), ENGLISH)).hasSizeGreaterThan(700);
        assertThat(words("At 50\u00a0% gain it is 3.0\u00a0dB louder (limit 0.5\u00a0dB)."))
                .isEqualTo(9);
    }

    private static List<String> ofPage(String html) {
        return Stream.of(NOT_READ.matcher(html).replaceAll("").split("<[^>]*>"))
                .map(text -> text.replaceAll("\\s+", " ").strip())
                .filter(text -> !text.isEmpty())
                .flatMap(text -> Stream.of(END.split(text)))
                .toList();
    }

    private static List<String> tooLong(WordBundle bundle, Map<String, String> fills) {
        return sentences(bundle, fills).stream()
                .filter(s -> words(s) >= TOO_MANY)
                .map(s -> words(s) + ": " + s)
                .toList();
    }

    private static List<String> sentences(WordBundle bundle, Map<String, String> fills) {
        return bundle.names().stream()
                .filter(n -> !n.startsWith("layout.") && !n.startsWith("plan."))
                .flatMap(n -> Stream.of(END.split(filled(bundle, n, fills))))
                .toList();
    }

    private static String filled(WordBundle bundle, String name, Map<String, String> fills) {
        List<String> holes = new ArrayList<>();
        for (String hole : bundle.holesOf(name)) {
            holes.add(hole);
            holes.add(fill(hole, fills));
        }
        return bundle.say(name, holes.toArray(String[]::new));
    }

    private static String fill(String hole, Map<String, String> fills) {
        if (STATEMENTS.contains(hole)) {
            return "…";
        }
        return fills.getOrDefault(STATES.contains(hole) ? "state" : hole, "9.9\u00a0dB");
    }

    private static long words(String sentence) {
        return Stream.of(sentence.split(" "))
                .filter(w -> WORD.matcher(w).matches())
                .count();
    }
}
