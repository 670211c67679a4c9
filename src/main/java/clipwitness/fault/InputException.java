package clipwitness.fault;

import java.util.List;
import java.util.stream.Collectors;

/** The user's input cannot be used. Holds every problem that was found, so that one run names them all. */
public final class InputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /** Several problems, at least one. */
    public InputException(List<Problem> problems) {
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("no problem, no exception");
        }
        this.problems = List.copyOf(OneCause.merged(problems));
    }

    /** One problem. */
    public InputException(ErrorCode code, Origin where, String what, String remedy) {
        this(List.of(new Problem(code, where, what, remedy)));
    }

    /** The problems, a line each. */
    @Override
    public String getMessage() {
        return problems.stream().map(Problem::message).collect(Collectors.joining("\n"));
    }

    /** The problems, in the order of the input; those of one cause are one. */
    public List<Problem> problems() {
        return problems;
    }
}
