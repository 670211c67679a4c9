package clipwitness.draft.name;

import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers of takes in names. */
final class Occasions {
    private static final Pattern NUMBERED = Pattern.compile(WordList.BEGIN
            + "(?:take|run|try|pass|rep|repeat|replicate|wdh|wiederholung|durchgang|lauf|versuch|nr|no) ?[=:#.-]? ?(\\d{1,3})"
            + WordList.END);
    private static final Pattern COUNTED =
            Pattern.compile("(?<!\\d)([2-9])(?:st|nd|rd|th)(?: (?:take|run|time|try|pass))?" + WordList.END);
    private static final Pattern BRACKETED = Pattern.compile("\\((\\d{1,2})\\)");
    /** Of a traced device this is the number of the device. */
    private static final Pattern HASHED = Pattern.compile("(?<!\\d)#(\\d{1,2})(?!\\d)");

    private static final Pattern AGAIN = Pattern.compile(WordList.BEGIN + "(?:again|nochmal|erneut)[ |]*$");

    private Occasions() {}

    /**
     * The number, 1 or more.
     *
     * @param curve whether the file holds a traced device
     */
    static Optional<Guess<Integer>> take(PathWords words, boolean curve) {
        return words.take(NUMBERED)
                .or(() -> words.take(COUNTED))
                .or(() -> words.take(BRACKETED))
                .or(() -> curve ? Optional.empty() : words.take(HASHED))
                .map(f -> number(f, f.match().group(1)))
                .or(() -> words.take(AGAIN).map(f -> number(f, "2")));
    }

    private static Guess<Integer> number(PathWords.Found found, String digits) {
        return new Guess<>(Math.max(1, Integer.parseInt(digits)), found.reason());
    }
}
