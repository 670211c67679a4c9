package clipwitness.compare.result;

import clipwitness.reason.Remark;
import java.util.Objects;

/**
 * What an item is about, where a comparison has several of one quantity under one condition.
 *
 * @param key     name in the results: that of a rail on the sheet, or of a figure of noise
 * @param words   the same for a reader
 * @param against what the change is counted from
 */
public record ItemSubject(String key, Remark words, Against against) {
    /** What a change is counted from. */
    public enum Against {
        /** The state before. */
        BEFORE,
        /** What the sheet expects. */
        EXPECTATION
    }

    /** Checks that all parts are there. */
    public ItemSubject {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(against, "against");
    }
}
