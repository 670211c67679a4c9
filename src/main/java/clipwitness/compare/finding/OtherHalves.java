package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import java.util.List;
import java.util.stream.Stream;

/**
 * Halves of a wave that begin to clip at another input.
 *
 * @param condition where they differ most
 * @param halves    one or both
 */
public record OtherHalves(Condition condition, List<Half> halves) {
    /** Copies what it is given. */
    public OtherHalves {
        halves = List.copyOf(halves);
    }

    /** Whether both halves begin to clip later, or both earlier. */
    public boolean bothOneWay() {
        return halves.size() > 1
                && halves.stream().map(h -> h.onset().isRise()).distinct().count() == 1;
    }

    /**
     * One half.
     *
     * @param upper whether it is the upper half
     * @param onset input at which it begins to clip, V
     */
    public record Half(boolean upper, Difference onset) {
        private Stream<FindingValue> values() {
            String name = upper ? "onsetUp" : "onsetDown";
            return Stream.of(
                    FindingValue.of(name + "Before", onset.before()), FindingValue.of(name + "Now", onset.now()));
        }
    }

    public List<FindingValue> values() {
        return halves.stream().flatMap(Half::values).toList();
    }
}
