package clipwitness.compare.rail;

import clipwitness.compare.judge.Tolerance;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.ItemSubject.Against;
import clipwitness.compare.result.RailResult;
import clipwitness.job.JobSheet;
import clipwitness.job.Rail;
import clipwitness.job.RailReading;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Quantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Meter readings against what the sheet expects: the deviation in percent of the expectation. A rail without expectation is compared with the reading
 * of the state before.
 *
 * <p>A reading errs by the meter's accuracy and by one digit of the reading as written, together a bound: u = (a |reading| + digit) / sqrt 3. The
 * accuracy of one meter on one range cancels in a change, the digits do not.
 */
public final class RailJudge {
    private static final double PERCENT = 100;

    /** A reading of fewer of its last digits moves by ten percent and more with one of them: an offset near 0, of which a percentage says nothing. */
    private static final double FEWEST_DIGITS = 10;

    private final JobSheet sheet;

    /** Judges the readings of a sheet. */
    public RailJudge(JobSheet sheet) {
        this.sheet = sheet;
    }

    /** Every reading, rail by rail, states in the sheet's order. */
    public List<RailResult> all() {
        List<RailResult> results = new ArrayList<>();
        for (Rail rail : sheet.rails()) {
            for (State state : sheet.states()) {
                of(rail, state.name(), state.against(), state.role() != Role.SHOWN, rail.expected())
                        .ifPresent(results::add);
            }
        }
        return results;
    }

    /**
     * The readings of a state that is compared with another; those with nothing to compare them with are left out. Where nothing is judged, a change
     * between the two says more than what each is from the expectation.
     */
    List<RailResult> of(String from, String to, boolean judge) {
        return sheet.rails().stream()
                .flatMap(rail -> of(
                        rail,
                        to,
                        Optional.of(from),
                        judge,
                        rail.expected().filter(e -> judge || !rail.readings().containsKey(from)))
                        .stream())
                .filter(r -> r.deviation().value().isPresent())
                .toList();
    }

    private Optional<RailResult> of(
            Rail rail, String state, Optional<String> before, boolean judge, Optional<Quantity> expectation) {
        RailReading reading = rail.readings().get(state);
        if (reading == null) {
            return Optional.empty();
        }
        boolean expects = expectation.isPresent();
        Measured deviation = expects
                ? fromExpectation(reading, expectation.get())
                : before.flatMap(b -> Optional.ofNullable(rail.readings().get(b)))
                        .map(b -> change(reading, b))
                        .orElseGet(() -> Measured.refused(
                                Unit.PERCENT,
                                Reason.of(ComparisonReason.NOTHING_TO_COMPARE_READING, Argument.name(rail.name()))));
        double limit = rail.tolerance().isPresent()
                ? PERCENT * rail.tolerance().getAsDouble()
                : sheet.limits().of(LimitQuantity.RAIL);
        Tolerance tolerance = Tolerance.within(limit);
        Optional<Measured.Value> judged = deviation.asValue().filter(v -> judge);
        return Optional.of(new RailResult(
                rail.name(),
                state,
                value(reading),
                rail.expected(),
                deviation,
                expects ? Against.EXPECTATION : Against.BEFORE,
                limit,
                judged.map(tolerance::decide).orElse(Decision.DESCRIBED),
                judged.map(v -> OptionalDouble.of(tolerance.conformanceProbability(v)))
                        .orElse(OptionalDouble.empty())));
    }

    /** A reading with the meter's accuracy and its last digit. */
    private Measured.Value value(RailReading reading) {
        double size = Math.abs(reading.quantity().value());
        double bound = sheet.bench().meterAccuracy() * size + reading.digit();
        return Measured.of(
                reading.quantity().value(),
                reading.quantity().unit(),
                new Contribution(Source.METER, bound / Math.sqrt(3)));
    }

    private Measured fromExpectation(RailReading reading, Quantity expected) {
        if (expected.value() == 0) {
            return Measured.refused(Unit.PERCENT, ComparisonReason.EXPECTATION_OF_ZERO);
        }
        Measured.Value value = value(reading);
        return percent(value.number() - expected.value(), value.standardUncertainty(), expected.value());
    }

    private static Measured change(RailReading reading, RailReading before) {
        double size = Math.abs(before.quantity().value());
        if (size == 0) {
            return Measured.refused(Unit.PERCENT, ComparisonReason.READING_OF_ZERO);
        }
        if (size < FEWEST_DIGITS * before.digit()) {
            return Measured.refused(Unit.PERCENT, ComparisonReason.READING_OF_FEW_DIGITS);
        }
        double digits = Math.hypot(reading.digit(), before.digit()) / Math.sqrt(3);
        double difference = reading.quantity().value() - before.quantity().value();
        return percent(difference, digits, before.quantity().value());
    }

    /** A difference in percent of a reading or expectation, which for a negative rail is negative: a weaker one is below it too. */
    private static Measured percent(double difference, double uncertainty, double whole) {
        return Measured.of(
                PERCENT * difference / whole,
                Unit.PERCENT,
                new Contribution(Source.METER, PERCENT * uncertainty / Math.abs(whole)));
    }
}
