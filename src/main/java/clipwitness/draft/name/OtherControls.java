package clipwitness.draft.name;

import java.util.Optional;
import java.util.regex.Pattern;

/** Positions of other controls in names: {@code tone max}, {@code bright on}. */
final class OtherControls {
    private static final Pattern OTHER = Pattern.compile(WordList.BEGIN
            + "(?:tone|bright|brightness|tight|boost|mids?|treble|bass|volume|vol|level|fat|deep|presence|ton|lautstärke|höhen|mitten|bässe)"
            + " ?[=:]? ?(?:on|off|an|aus|up|down|max|min|full|noon|half|(?:\\d+(?:[.,]\\d+)? ?(?:%|pct|percent)?)|\\d{1,2} ?o ?'? ?clock)"
            + "(?![\\p{L}\\p{N}])");

    private OtherControls() {}

    /** The position, in the words of the name. */
    static Optional<Guess<String>> take(PathWords words) {
        return words.take(OTHER)
                .map(f -> new Guess<>(
                        f.match()
                                .group()
                                .replaceAll("[^\\p{L}\\p{N}.,]+", " ")
                                .replace(',', '.')
                                .strip(),
                        f.reason()));
    }
}
