package clipwitness.compare.finding;

import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Item;
import java.util.Locale;

/**
 * What the change of one figure says.
 *
 * @param item the change
 * @param kind what it says
 */
public record Telling(Item item, Kind kind) {
    /** What a change says. */
    public enum Kind {
        /** The figure rose. */
        MORE,
        /** The figure fell. */
        LESS,
        /** It is the same: a change that a listener just hears would have shown. */
        EQUAL,
        /** Nothing: the uncertainty is larger than a change that is heard. */
        UNKNOWN;

        /** Name in the results and of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a change says of itself. A change that does not count is called none only where one that is just heard would have shown. */
    public static Telling of(Item item) {
        if (!Significance.of(item)) {
            boolean known = Items.uncertainty(item) <= CommonPractice.HEARD_DECIBELS;
            return new Telling(item, known ? Kind.EQUAL : Kind.UNKNOWN);
        }
        return new Telling(item, item.change().value().orElseThrow() > 0 ? Kind.MORE : Kind.LESS);
    }

    /** Whether it says that the figure changed. */
    public boolean isChange() {
        return kind == Kind.MORE || kind == Kind.LESS;
    }
}
