package clipwitness.compare.result;

import clipwitness.reason.HintCode;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;

/**
 * Figures that look like a known fault. Never a verdict.
 *
 * @param code     which
 * @param states   states that it concerns, in the sheet's order: one cause is one hint, however many states share it
 * @param text     what is seen and what to look for
 * @param evidence the figures behind it
 */
public record Hint(HintCode code, List<String> states, Remark text, Remark evidence) {
    /** Copies what it is given. */
    public Hint {
        states = List.copyOf(states);
    }

    /** A hint about one state at most. */
    public Hint(HintCode code, Optional<String> state, Remark text, Remark evidence) {
        this(code, state.stream().toList(), text, evidence);
    }

    /** The first state that it concerns. */
    public Optional<String> state() {
        return states.stream().findFirst();
    }
}
