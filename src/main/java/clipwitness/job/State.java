package clipwitness.job;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A state of the unit.
 *
 * @param name        name on the sheet and in the captures table
 * @param label       what the report calls it
 * @param called      what sentences call it: a short name that stands in them as it is, without quotation marks
 * @param role        what it is for
 * @param against     the state that it is compared with: the one on the sheet, else the only {@code before}; empty for
 *                    {@code before} and {@code shown}
 * @param alsoAgainst states that it is also described against
 */
public record State(
        String name, String label, String called, Role role, Optional<String> against, List<String> alsoAgainst) {
    /** Checks that all parts are there. */
    public State {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(called, "called");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(against, "against");
        alsoAgainst = List.copyOf(alsoAgainst);
    }

    /** A state whose short name follows from its label, in an English report. */
    public State(String name, String label, Role role, Optional<String> against, List<String> alsoAgainst) {
        this(name, label, ShortName.of(label, name, "en"), role, against, alsoAgainst);
    }
}
