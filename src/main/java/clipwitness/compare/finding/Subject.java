package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import java.util.Objects;
import java.util.Optional;

/**
 * What a finding is about.
 *
 * @param from      state compared with; empty where nothing is compared
 * @param to        state that is spoken of; empty where a capture belongs to none
 * @param condition condition under which; its gain is open where it is about the whole gain control
 */
public record Subject(Optional<String> from, Optional<String> to, Condition condition) {
    /** Checks that all parts are there. */
    public Subject {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(condition, "condition");
    }

    /** A comparison under one condition. */
    public static Subject of(Comparison comparison, Condition condition) {
        return new Subject(Optional.of(comparison.from()), Optional.of(comparison.to()), condition);
    }

    /** The state compared with, in a finding that compares. */
    public String earlier() {
        return from.orElseThrow();
    }

    /** The state that is compared, in a finding that compares. */
    public String later() {
        return to.orElseThrow();
    }
}
