package clipwitness.compare.finding;

import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The change that decides a verdict: of those that fail the one farthest beyond its limit, else of the undecided ones the one nearest to it.
 *
 * @param subject states and condition
 * @param item    the change; it may have no value
 * @param figures distortion or asymmetry of both states, where the change is one of these
 * @param level   the change of level under the same condition
 * @param forGood whether nothing can decide it any more: it is undecided and rests on captures that nobody can take again
 */
public record Deciding(Subject subject, Item item, Optional<Difference> figures, Optional<Item> level, boolean forGood)
        implements Finding {
    /** What the change says. */
    public enum Kind {
        /** It could not be measured. */
        REFUSED,
        /** The wave was clearly clipped and is so no longer. */
        HARDLY_CLIPS,
        /** The figure rose. */
        MORE,
        /** The figure fell. */
        LESS,
        /** The waves have another shape. */
        SHAPE,
        /** The wave is turned over. */
        TURNED,
        /** It says neither: the uncertainty is larger than the change. */
        UNKNOWN;

        /** Name in the results and of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What the change says. */
    public Kind kind() {
        if (item.change().value().isEmpty()) {
            return Kind.REFUSED;
        }
        if (item.quantity() == ItemQuantity.NULL_DEPTH) {
            return Kind.SHAPE;
        }
        if (!counts()) {
            return Kind.UNKNOWN;
        }
        if (item.quantity() == ItemQuantity.POLARITY) {
            return Kind.TURNED;
        }
        if (hardlyClips()) {
            return Kind.HARDLY_CLIPS;
        }
        return Items.isFall(item) ? Kind.LESS : Kind.MORE;
    }

    /** A turn of phase has no usual limit of which a tenth would be next to nothing. */
    private boolean counts() {
        return item.quantity().limit().isPresent()
                ? Significance.of(item)
                : Significance.exceeds(Items.size(item), Items.uncertainty(item));
    }

    private boolean hardlyClips() {
        return item.quantity() == ItemQuantity.THD
                && figures.filter(d -> d.before().number() >= CommonPractice.CLEARLY_CLIPPED_PERCENT
                                && d.now().number() < CommonPractice.CLEARLY_CLIPPED_PERCENT)
                        .isPresent();
    }

    /** Whether the item is the deviation of a reading from what is expected. */
    public boolean isFromExpectation() {
        return item.subject()
                .filter(s -> s.against() == ItemSubject.Against.EXPECTATION)
                .isPresent();
    }

    /** Whether it fails; else it is undecided. */
    public boolean fails() {
        return item.decision() == Decision.FAIL;
    }

    @Override
    public String code() {
        return "deciding";
    }

    @Override
    public String word() {
        return kind().code();
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>();
        item.change().asValue().ifPresent(v -> values.add(FindingValue.of(item)));
        item.limit()
                .ifPresent(l -> values.add(
                        FindingValue.stated("limit", l, item.quantity().unit())));
        figures.ifPresent(d -> {
            values.add(FindingValue.of(item.quantity().key() + "Before", d.before()));
            values.add(FindingValue.of(item.quantity().key() + "Now", d.now()));
        });
        return values;
    }
}
