package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import java.util.List;
import java.util.Locale;

/**
 * How far the waves of an unchanged state differ in shape.
 *
 * @param subject   states, and where most may be left
 * @param nullDepth the null depth with the most that may be left
 * @param kind      what is said of it
 * @param settings  where it was judged
 */
public record SameShape(Subject subject, Item nullDepth, Kind kind, Settings settings) implements Finding {
    /** How the null depth lies to its limit. */
    public enum Kind {
        /** Deeper than the limit. */
        WITHIN,
        /** Deeper than the limit, and so deep that noise hides what is left. */
        BOUND,
        /** Less deep than the limit. */
        BEYOND;

        /** Name in the results. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public String code() {
        return "same-shape";
    }

    @Override
    public String word() {
        return kind.code();
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.of(nullDepth),
                FindingValue.stated(
                        "limit", Items.limit(nullDepth), nullDepth.quantity().unit()));
    }
}
