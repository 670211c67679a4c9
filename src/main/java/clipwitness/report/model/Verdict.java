package clipwitness.report.model;

import java.util.List;

/**
 * A comparison on the first page.
 *
 * @param kind     pass, fail, undecided or described
 * @param sign     the verdict's sign, one character
 * @param word     the verdict's word; where it is about less than the sound, with what it is about
 * @param narrow   whether it is about less than the sound
 * @param to       label of the state compared
 * @param against  phrase that says with which
 * @param sentence the verdict in a sentence
 * @param more     what else did not pass, and what would decide it
 */
public record Verdict(
        String kind,
        String sign,
        String word,
        boolean narrow,
        String to,
        String against,
        String sentence,
        List<String> more) {
    /** Copies what it is given. */
    public Verdict {
        more = List.copyOf(more);
    }
}
