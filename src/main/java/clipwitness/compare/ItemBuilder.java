package clipwitness.compare;

import clipwitness.capture.Condition;
import clipwitness.job.Limits;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The items of one comparison under one condition. */
final class ItemBuilder {
    /** A unit that turns a wave over turns it by 180 degrees; half of that tells the two cases apart. */
    private static final double POLARITY_LIMIT_DEGREES = 90;

    private final Limits limits;
    private final Repeatability repeatability;
    private final Change change;
    private final Intent intent;

    ItemBuilder(Limits limits, Repeatability repeatability, Drift drift, Intent intent) {
        this.limits = limits;
        this.change = new Change(repeatability, drift);
        this.repeatability = repeatability;
        this.intent = intent;
    }

    /** All items, in the order of the measurement book. */
    List<Item> of(Setting from, Setting to) {
        Place place = new Place(from.condition(), Math.min(from.runs(), to.runs()));
        List<Item> items = new ArrayList<>();
        for (ItemFigure figure : ItemFigure.values()) {
            if (figure.item() == ItemQuantity.GAIN || figure.item() == ItemQuantity.POLARITY) {
                continue;
            }
            items.add(item(place, figure.item(), change.of(from, to, figure), judges(figure, from, to)));
        }
        items.add(
                item(place, ItemQuantity.NULL_DEPTH, NullItem.of(from, to, repeatability), intent == Intent.UNCHANGED));
        if (hasInput(from) && hasInput(to)) {
            items.add(item(place, ItemQuantity.GAIN, change.of(from, to, ItemFigure.GAIN), false));
            items.add(polarity(place, change.of(from, to, ItemFigure.POLARITY)));
        }
        return items;
    }

    private boolean judges(ItemFigure figure, Setting from, Setting to) {
        return intent == Intent.UNCHANGED && (figure != ItemFigure.THD || from.hasThdToJudge() || to.hasThdToJudge());
    }

    private static boolean hasInput(Setting setting) {
        return setting.first().values().containsKey(WaveformQuantity.INPUT_FUNDAMENTAL);
    }

    /** Where two settings are compared, and how many runs either has. */
    private record Place(Condition condition, int runs) {}

    private Item item(Place at, ItemQuantity quantity, Measured change, boolean judge) {
        OptionalDouble limit = quantity.limit().isPresent()
                ? OptionalDouble.of(limits.of(quantity.limit().get()))
                : OptionalDouble.empty();
        Tolerance tolerance = quantity == ItemQuantity.NULL_DEPTH
                ? Tolerance.atMost(limit.orElseThrow())
                : Tolerance.within(limit.orElse(Double.POSITIVE_INFINITY));
        return decide(at, quantity, change, limit, tolerance, judge && limit.isPresent());
    }

    private Item polarity(Place at, Measured change) {
        return decide(
                at,
                ItemQuantity.POLARITY,
                change,
                OptionalDouble.of(POLARITY_LIMIT_DEGREES),
                Tolerance.within(POLARITY_LIMIT_DEGREES),
                intent != Intent.DESCRIBED);
    }

    private static Item decide(
            Place at,
            ItemQuantity quantity,
            Measured change,
            OptionalDouble limit,
            Tolerance tolerance,
            boolean judge) {
        Optional<Measured.Value> value = change.asValue();
        OptionalDouble none = OptionalDouble.empty();
        if (!judge) {
            return new Item(quantity, at.condition(), change, limit, Decision.DESCRIBED, none, Optional.empty());
        }
        if (value.isEmpty()) {
            Optional<String> remedy = change.reason().map(Remedy::forRefusal);
            return new Item(quantity, at.condition(), change, limit, Decision.UNDECIDED, none, remedy);
        }
        Decision decision = tolerance.decide(value.get());
        Optional<String> remedy = decision == Decision.UNDECIDED
                ? Optional.of(
                        Remedy.of(value.get(), tolerance.distance(value.get().number()), at.runs()))
                : Optional.empty();
        return new Item(
                quantity,
                at.condition(),
                change,
                limit,
                decision,
                OptionalDouble.of(tolerance.conformanceProbability(value.get())),
                remedy);
    }
}
