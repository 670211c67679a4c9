package clipwitness.draft.name;

import java.util.Objects;
import java.util.function.Function;

/**
 * What a name or a content tells, and why it is read so.
 *
 * @param value  what is taken
 * @param reason a clause for the user, without full stop
 * @param <T>    kind of value
 */
public record Guess<T>(T value, String reason) {
    /** Checks that both are there. */
    public Guess {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(reason, "reason");
    }

    /** Another value for the same reason. */
    public <U> Guess<U> map(Function<T, U> function) {
        return new Guess<>(function.apply(value), reason);
    }
}
