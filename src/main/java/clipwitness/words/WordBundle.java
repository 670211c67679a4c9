package clipwitness.words;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Nearest;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The sentences of a report, by name, with holes for finished texts. */
public final class WordBundle {
    private static final String FILE = "/report-templates/common/words.properties";

    private static final String LANGUAGE = "language";

    private final Map<String, String> sentences;

    private WordBundle(Map<String, String> sentences) {
        this.sentences = Collections.unmodifiableMap(sentences);
    }

    /** The program's own sentences, in English. */
    public static WordBundle builtIn() {
        return BuiltIn.WORDS;
    }

    /** Read when first used. */
    private static final class BuiltIn {
        static final WordBundle WORDS = of(text());

        private static String text() {
            try (InputStream in = WordBundle.class.getResourceAsStream(FILE)) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException("the program's own file " + FILE + " cannot be read", e);
            }
        }
    }

    /**
     * Sentences of a file.
     *
     * @param file {@code name = sentence} line by line
     */
    public static WordBundle of(String file) {
        Map<String, String> sentences = new LinkedHashMap<>();
        lines(file).forEach(line -> sentences.put(line.name(), line.sentence()));
        return new WordBundle(sentences);
    }

    /**
     * These sentences, some of them reworded.
     *
     * @param file the rewording, same form
     * @param name name of the file, for messages
     * @throws InputException if it has a sentence that the program does not make, or a hole that the program does not fill
     */
    public WordBundle reworded(String file, String name) throws InputException {
        Map<String, String> all = new LinkedHashMap<>(sentences);
        List<Problem> problems = new ArrayList<>();
        for (Line line : lines(file)) {
            String own = sentences.get(line.name());
            if (own == null) {
                problems.add(
                        new Problem(
                                ErrorCode.BAD_WORDS,
                                Origin.of(name, line.number()),
                                "the report makes no sentence called '" + line.name() + "'",
                                Nearest.slipOf(line.name(), sentences.keySet())
                                                .map(n -> "Did you mean '" + n + "'? ")
                                                .orElse("")
                                        + "clipwitness template customer FOLDER writes a words.properties with all its sentences"));
            } else if (!holes(own).containsAll(holes(line.sentence()))) {
                problems.add(new Problem(
                        ErrorCode.BAD_WORDS,
                        Origin.of(name, line.number()),
                        "'" + line.name() + "' has a hole that is never filled",
                        "Use only these: " + holes(own)));
            } else {
                all.put(line.name(), line.sentence());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new WordBundle(all);
    }

    /** The language that the sentences are in, a tag after BCP 47. */
    public String language() {
        return say(LANGUAGE);
    }

    /** Whether the sentences say which language they are in. */
    public boolean namesLanguage() {
        return has(LANGUAGE);
    }

    /** Whether there is no sentence. */
    public boolean isEmpty() {
        return sentences.isEmpty();
    }

    /** Whether the sentences are in a language; which country's does not matter. */
    public boolean speaks(String language) {
        return primary(language()).equals(primary(language));
    }

    private static String primary(String language) {
        return Locale.forLanguageTag(language).getLanguage();
    }

    /** Whether there is a sentence of this name. */
    public boolean has(String name) {
        return sentences.containsKey(name);
    }

    /**
     * A sentence with its holes filled.
     *
     * @param name  name of the sentence
     * @param holes name and text of each hole, in turn
     * @throws IllegalArgumentException if there is no such sentence, or a hole stays open
     */
    public String say(String name, String... holes) {
        String sentence = sentences.get(name);
        if (sentence == null) {
            throw new IllegalArgumentException("no sentence " + name);
        }
        return new SentencePattern(name, sentence).filled(holes);
    }

    /** Whether a sentence of this name begins with a word of its own, not with a hole. */
    boolean beginsWithWord(String name) {
        return new SentencePattern(name, sentences.get(name)).beginsWithWord();
    }

    /** Names of all sentences. */
    public Set<String> names() {
        return sentences.keySet();
    }

    /** The holes of a sentence; empty where there is no such sentence. */
    Set<String> holesOf(String name) {
        return holes(sentences.getOrDefault(name, ""));
    }

    private static Set<String> holes(String sentence) {
        return new SentencePattern("", sentence).holes();
    }

    private static List<Line> lines(String file) {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String text : file.split("\\R", -1)) {
            number++;
            int equals = text.indexOf('=');
            if (!text.isBlank() && !text.startsWith("#")) {
                lines.add(
                        equals < 0
                                ? new Line(number, text.strip(), "")
                                : new Line(
                                        number,
                                        text.substring(0, equals).strip(),
                                        text.substring(equals + 1).strip()));
            }
        }
        return lines;
    }

    private record Line(int number, String name, String sentence) {}
}
