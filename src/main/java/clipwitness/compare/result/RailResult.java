package clipwitness.compare.result;

import clipwitness.measure.Measured;
import clipwitness.quantity.Quantity;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A meter reading of one state.
 *
 * @param name                   the rail's name on the sheet
 * @param state                  state in which it was read
 * @param reading                reading with the meter's uncertainty
 * @param expected               what the sheet expects
 * @param deviation              deviation from the expectation, or where there is none change from the state before, %
 * @param against                which of the two it is
 * @param limit                  limit of the deviation, %
 * @param decision               what was decided; described where the deviation is not to be judged
 * @param conformanceProbability probability that the true deviation lies within the limit
 */
public record RailResult(
        String name,
        String state,
        Measured.Value reading,
        Optional<Quantity> expected,
        Measured deviation,
        ItemSubject.Against against,
        double limit,
        Decision decision,
        OptionalDouble conformanceProbability) {
    /** Checks that all parts are there. */
    public RailResult {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(deviation, "deviation");
        Objects.requireNonNull(against, "against");
        Objects.requireNonNull(decision, "decision");
    }
}
