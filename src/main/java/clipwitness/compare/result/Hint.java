package clipwitness.compare.result;

import java.util.List;
import java.util.Optional;

/**
 * Figures that look like a known fault. Never a verdict.
 *
 * @param code     which
 * @param states   states that it concerns, in the sheet's order: one cause is one hint, however many states share it
 * @param text     a sentence for the report
 * @param evidence the figures behind it
 */
public record Hint(String code, List<String> states, String text, String evidence) {
    /** Copies what it is given. */
    public Hint {
        states = List.copyOf(states);
    }

    /** A hint about one state at most. */
    public Hint(String code, Optional<String> state, String text, String evidence) {
        this(code, state.stream().toList(), text, evidence);
    }

    /** The first state that it concerns. */
    public Optional<String> state() {
        return states.stream().findFirst();
    }
}
