package clipwitness.compare.judge;

import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.job.Limits;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The items of one comparison under one condition. */
public final class ItemBuilder {
    /** A unit that turns a wave over turns it by 180 degrees; half of that tells the two cases apart. */
    private static final double POLARITY_LIMIT_DEGREES = 90;

    private final Limits limits;
    private final Repeatability repeatability;
    private final Change change;
    private final Intent intent;

    public ItemBuilder(Limits limits, Repeatability repeatability, Drift drift, Intent intent) {
        this.limits = limits;
        this.change = new Change(repeatability, drift);
        this.repeatability = repeatability;
        this.intent = intent;
    }

    /** All items, in the order of the measurement book. */
    public List<Item> of(StateAtCondition from, StateAtCondition to) {
        List<Item> items = new ArrayList<>();
        for (ItemValue figure : ItemValue.all()) {
            if (figure.item() != ItemQuantity.GAIN && figure.item() != ItemQuantity.POLARITY) {
                items.add(item(question(from, to, figure), judges(figure, from, to)));
            }
        }
        items.add(item(
                new Question(
                        from,
                        to,
                        ItemQuantity.NULL_DEPTH,
                        NullItem.of(from, to, repeatability),
                        NullItem.shareOfFirst(from, to, repeatability)),
                intent == Intent.UNCHANGED));
        if (hasInput(from) && hasInput(to)) {
            items.add(item(question(from, to, ItemValue.GAIN), false));
            items.add(polarity(question(from, to, ItemValue.POLARITY)));
        }
        return items;
    }

    /**
     * What is to be decided.
     *
     * @param from     setting before
     * @param to       setting after
     * @param quantity of what
     * @param change   its change
     * @param stays    share of the setting before in the variance of each source
     */
    private record Question(
            StateAtCondition from,
            StateAtCondition to,
            ItemQuantity quantity,
            Measured change,
            Map<Source, Double> stays) {}

    private Question question(StateAtCondition from, StateAtCondition to, ItemValue figure) {
        return new Question(
                from, to, figure.item(), change.of(from, to, figure), change.shareOfFirst(from, to, figure));
    }

    private boolean judges(ItemValue figure, StateAtCondition from, StateAtCondition to) {
        return intent == Intent.UNCHANGED
                && (!figure.equals(ItemValue.THD) || from.hasThdToJudge() || to.hasThdToJudge());
    }

    private static boolean hasInput(StateAtCondition setting) {
        return setting.first().values().containsKey(WaveformQuantity.INPUT_FUNDAMENTAL);
    }

    private Item item(Question question, boolean judge) {
        ItemQuantity quantity = question.quantity();
        OptionalDouble limit = quantity.limit().isPresent()
                ? OptionalDouble.of(limits.of(quantity.limit().get()))
                : OptionalDouble.empty();
        Tolerance tolerance = quantity == ItemQuantity.NULL_DEPTH
                ? Tolerance.atMost(limit.orElseThrow())
                : Tolerance.within(limit.orElse(Double.POSITIVE_INFINITY));
        return decide(question, limit, tolerance, judge && limit.isPresent());
    }

    private Item polarity(Question question) {
        return decide(
                question,
                OptionalDouble.of(POLARITY_LIMIT_DEGREES),
                Tolerance.within(POLARITY_LIMIT_DEGREES),
                intent != Intent.DESCRIBED);
    }

    private Item decide(Question question, OptionalDouble limit, Tolerance tolerance, boolean judge) {
        Ruling ruling = new Ruling(
                question.quantity(),
                question.from().condition(),
                limit,
                tolerance,
                (value, distance) -> Remedy.of(
                        value, distance, question.from(), question.to(), question.stays(), repeatability.knobPercent()),
                reason -> Remedy.forRefusal(reason, question.from()));
        if (!judge) {
            return ruling.described(question.change());
        }
        return mayBeTheKnob(question, tolerance)
                ? ruling.judgedWithout(
                        question.change(),
                        Remark.of(
                                RemedyRemark.KNOB_UNKNOWN,
                                Argument.word(
                                        RemedyRemark.STATE_AGAIN, question.to().name())))
                : ruling.judged(question.change());
    }

    /** Whether nothing tells how far the change may come from the gain control alone. The level moves with it only so fast. */
    private boolean mayBeTheKnob(Question question, Tolerance tolerance) {
        if (question.quantity() == ItemQuantity.POLARITY
                || !(repeatability.isUnknown(question.from()) || repeatability.isUnknown(question.to()))) {
            return false;
        }
        return question.quantity() != ItemQuantity.LEVEL
                || question.change()
                        .asValue()
                        .filter(v -> tolerance.distance(v.number()) - v.expanded() > repeatability.mostOfLevel())
                        .isEmpty();
    }
}
