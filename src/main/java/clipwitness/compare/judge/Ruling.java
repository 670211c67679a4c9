package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * What is decided about one change, by the decision rule of {@link Tolerance}.
 *
 * @param quantity  of what
 * @param condition where
 * @param limit     limit that is printed, in the unit of the change
 * @param tolerance where the change may lie
 * @param undecided what would decide an undecided change: of the change and its distance from the limit
 * @param refused   what would help where there is no change
 */
public record Ruling(
        ItemQuantity quantity,
        Condition condition,
        OptionalDouble limit,
        Tolerance tolerance,
        BiFunction<Measured.Value, Double, Remark> undecided,
        Function<Reason, Remark> refused) {
    /**
     * The states of a change that is from no waves.
     *
     * @param from label of the earlier one, which nobody can capture again
     * @param to   label of the later one
     * @param runs number of occasions on which its controls were set
     */
    public record States(Argument from, Argument to, int runs) {}

    /**
     * The decision about a change that is from no waves.
     *
     * @param limit the limit, in the unit of the change
     * @param stays share of the earlier state in the variance of each source
     */
    public static Ruling ofNoWave(
            ItemQuantity quantity,
            Condition condition,
            double limit,
            Tolerance tolerance,
            States states,
            Map<Source, Double> stays) {
        return new Ruling(
                quantity,
                condition,
                OptionalDouble.of(limit),
                tolerance,
                (value, distance) -> Remedy.ofNoWave(value, distance, states.from(), states.to(), states.runs(), stays),
                reason -> Remedy.forRefusal(reason, states.from()));
    }

    /** The item that describes a change. */
    public Item described(Measured change) {
        return item(change, Decision.DESCRIBED, OptionalDouble.empty(), Optional.empty());
    }

    /** The item that judges a change. */
    public Item judged(Measured change) {
        Optional<Measured.Value> value = change.asValue();
        if (value.isEmpty()) {
            Optional<Remark> remedy = change.reason().map(refused);
            return item(change, Decision.UNDECIDED, OptionalDouble.empty(), remedy);
        }
        Decision decision = tolerance.decide(value.get());
        return item(
                change,
                decision,
                OptionalDouble.of(tolerance.conformanceProbability(value.get())),
                decision == Decision.UNDECIDED
                        ? Optional.of(undecided.apply(
                                value.get(), tolerance.distance(value.get().number())))
                        : Optional.empty());
    }

    /** The item that judges a change whose uncertainty lacks a part that is not known: such a change cannot fail. */
    Item judgedWithout(Measured change, Remark missing) {
        Item judged = judged(change);
        return judged.decision() == Decision.FAIL
                ? item(change, Decision.UNDECIDED, OptionalDouble.empty(), Optional.of(missing))
                : judged;
    }

    private Item item(Measured change, Decision decision, OptionalDouble probability, Optional<Remark> remedy) {
        return new Item(quantity, condition, change, limit, decision, probability, remedy);
    }
}
