package clipwitness.draft.name;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A position of the gain control as a name writes it. What a bare number means is decided over all names together.
 *
 * @param number the number
 * @param form   how it is written
 * @param reason where it stood
 */
record GainText(double number, Form form, String reason) {
    private static final double MOST = 100;
    private static final double MIDDLE = 50;
    private static final double LEAST = 0;

    /** Words for positions, in percent; a longer one before those that it begins with. */
    private static final Map<String, Double> POSITIONS = positions();

    private static final String WORDS = String.join("|", POSITIONS.keySet()) + "|zu(?! ?\\p{L})";
    private static final String CONTROL = "(?:gain|drive|dist|distortion|fuzz|verzerrung|knob|pot|poti|regler|g)";
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final String PERCENT = "(%|pct|percent|prozent|proz)";
    private static final String CLOCK = "(\\d{1,2})(?:[:.h]?[03]0)? ?(?:o ?'? ?clock|uhr)";

    private static final Pattern NAMED_CLOCK =
            Pattern.compile(WordList.BEGIN + CONTROL + "[ =:#-]*(?:at |auf )?" + CLOCK + WordList.END);
    private static final Pattern NAMED_WORD =
            Pattern.compile(WordList.BEGIN + CONTROL + "[ =:#-]*(?:at |auf )?(" + WORDS + ")" + WordList.END);
    private static final Pattern WORD_NAMED = Pattern.compile(
            WordList.BEGIN + "(" + WORDS + ") ?(?:gain|drive|distortion|fuzz|verzerrung)" + WordList.END);
    private static final Pattern NAMED = Pattern.compile(
            WordList.BEGIN + CONTROL + "[ =:#-]*(?:at |auf )?" + NUMBER + " ?" + PERCENT + "?(?![\\p{L}\\p{N}])");
    private static final Pattern WITH_PERCENT =
            Pattern.compile("(?<![\\p{L}\\p{N}.,])" + NUMBER + " ?" + PERCENT + "(?!\\p{L})");
    private static final Pattern BY_CLOCK = Pattern.compile("(?<![\\p{L}\\p{N}.,])" + CLOCK + WordList.END);
    private static final Pattern BY_WORD = Pattern.compile(WordList.BEGIN + "(" + WORDS + ")" + WordList.END);
    private static final Pattern FRACTION = Pattern.compile("(?<![\\p{L}\\p{N}.,])(0[.,]\\d+|1[.,]0+)" + WordList.END);

    /** How a position is written. */
    enum Form {
        /** Percent of the rotation. */
        PERCENT,
        /** Hour of a clock face. */
        CLOCK,
        /** A number after the name of the control, of an unknown scale. */
        BARE,
        /** A decimal fraction by itself. */
        FRACTION
    }

    /** Takes the position out of a name; empty where none is written, numbers by themselves left alone. */
    static Optional<GainText> take(PathWords words) {
        return words.take(NAMED_CLOCK)
                .or(() -> words.take(BY_CLOCK))
                .map(GainText::hour)
                .or(() ->
                        words.take(NAMED_WORD).or(() -> words.take(WORD_NAMED)).map(GainText::word))
                .or(() -> words.take(NAMED).map(GainText::named))
                .or(() -> words.take(WITH_PERCENT).map(f -> of(f, Form.PERCENT)))
                .or(() -> words.take(BY_WORD).map(GainText::word))
                .or(() -> words.take(FRACTION).map(f -> of(f, Form.FRACTION)));
    }

    private static GainText hour(PathWords.Found found) {
        return of(found, Form.CLOCK);
    }

    private static GainText named(PathWords.Found found) {
        MatchResult m = found.match();
        boolean threeDigits = m.group(1).matches("[01]\\d\\d"); // g050: padded, so that 100 has a place
        return of(found, m.group(2) != null || threeDigits ? Form.PERCENT : Form.BARE);
    }

    private static GainText of(PathWords.Found found, Form form) {
        return new GainText(Double.parseDouble(found.match().group(1).replace(',', '.')), form, found.reason());
    }

    private static GainText word(PathWords.Found found) {
        double percent = POSITIONS.getOrDefault(found.match().group(1), LEAST);
        return new GainText(percent, Form.PERCENT, found.reason());
    }

    private static Map<String, Double> positions() {
        Map<String, Double> positions = new LinkedHashMap<>();
        put(
                positions,
                MOST,
                "maximum, max, fully up, fully clockwise, fully cw, full up, full cw, full, all the way up, wide open, voll, aufgedreht,"
                        + " rechtsanschlag");
        put(
                positions,
                LEAST,
                "minimum, min, fully down, fully counterclockwise, fully ccw, full down, full ccw, all the way down, zero, null, zugedreht,"
                        + " linksanschlag");
        put(positions, MIDDLE, "half way, halfway, half, halb, middle, mid, noon, mitte");
        return positions.entrySet().stream()
                .sorted(Comparator.comparingInt(
                                (Map.Entry<String, Double> e) -> e.getKey().length())
                        .reversed())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
    }

    private static void put(Map<String, Double> positions, double percent, String words) {
        Arrays.stream(words.split(", ", -1)).forEach(w -> positions.put(w, percent));
    }
}
