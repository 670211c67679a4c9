package clipwitness.report.model;

import java.util.List;

/**
 * A comparison on the first page.
 *
 * @param kind     pass, fail or undecided; described where no sound is judged
 * @param sign     its sign, one character
 * @param word     what it comes to, in two to five words
 * @param intent   unchanged, changed or described: what the state is for
 * @param told     whether it is told with an earlier comparison of the same state
 * @param to       label of the state compared
 * @param against  phrase that says with which
 * @param sentence the sentences behind it
 * @param more     what else did not pass, and what would decide it
 */
public record Verdict(
        String kind,
        String sign,
        String word,
        String intent,
        boolean told,
        String to,
        String against,
        String sentence,
        List<String> more) {
    /** Copies what it is given. */
    public Verdict {
        more = List.copyOf(more);
    }

    /** Whether it is about a state that must still be what it was. */
    public boolean unchanged() {
        return intent.equals("unchanged");
    }
}
