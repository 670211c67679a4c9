package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;

/**
 * When a change counts as one. The rule is one for text, picture and table: a change counts where its size exceeds its expanded uncertainty.
 * A change of an item that is below a tenth of the usual limit is next to nothing, and counts in no case.
 */
public final class Significance {
    /**
     * One of many figures counts as changed beyond so many expanded uncertainties: of twenty that did not change, one exceeds its own
     * by chance (normal distribution, k = 2: 4.6 %; k = 3: 0.3 %).
     */
    private static final double OF_MANY = 1.5;

    /** What lies below a tenth of the usual limit is no difference that anybody means (common practice). */
    private static final double NEGLIGIBLE = 0.1;

    private Significance() {}

    /** Whether a change exceeds its expanded uncertainty. */
    public static boolean of(Measured.Value change) {
        return exceeds(change.number(), change.expanded());
    }

    /** Whether a change exceeds its expanded uncertainty; both in one unit. */
    public static boolean exceeds(double change, double uncertainty) {
        return Math.abs(change) > uncertainty;
    }

    /** Whether the clearest of many changes exceeds what chance makes of one that is none. */
    public static boolean exceedsAsOneOfMany(double change, double uncertainty) {
        return exceeds(change, OF_MANY * uncertainty);
    }

    /** Whether the change of an item counts. */
    public static boolean of(Item item) {
        return counts(item) && exceeds(Items.size(item), Items.uncertainty(item));
    }

    /** Whether the change of an item counts that was picked from many as the clearest. */
    public static boolean ofOneOfMany(Item item) {
        return counts(item) && exceedsAsOneOfMany(Items.size(item), Items.uncertainty(item));
    }

    private static boolean counts(Item item) {
        return Items.size(item)
                > NEGLIGIBLE * item.quantity().limit().orElseThrow().standard();
    }
}
