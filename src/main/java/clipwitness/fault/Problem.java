package clipwitness.fault;

import java.util.Objects;

/**
 * One fault of the user's input: where it is, what is wrong, and what to do.
 *
 * @param code   its kind, to be looked up in the manual
 * @param where  file and place
 * @param what   what is wrong, a clause without full stop
 * @param remedy what would be right, a sentence or empty
 */
public record Problem(ErrorCode code, Origin where, String what, String remedy) {
    /** Checks that all parts are there. */
    public Problem {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** The whole message without its code: {@code place: what. Remedy}. */
    public String message() {
        return where + ": " + what + (remedy.isEmpty() ? "" : ". " + remedy);
    }

    /** The message as it is printed: {@code place: what. Remedy [code]}. */
    public String line() {
        return code.after(message());
    }
}
