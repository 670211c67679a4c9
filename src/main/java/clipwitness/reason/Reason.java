package clipwitness.reason;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Why there is no figure, or why one is doubted. Decisions look at the code, never at words.
 *
 * @param code      what the matter is
 * @param arguments one for each hole of the code's line in the words
 */
public record Reason(ReasonCode code, List<Argument> arguments) implements Message {
    /** Checks that each hole has its argument. */
    public Reason {
        arguments = Message.fitting(code, arguments);
    }

    /** A reason. */
    public static Reason of(ReasonCode code, Argument... arguments) {
        return new Reason(code, List.of(arguments));
    }

    /** The reason itself, without the frames that say in which state, channel or device it holds. */
    public Reason core() {
        return code instanceof FrameReason
                ? arguments.stream()
                        .flatMap(a -> a.reason().stream())
                        .findFirst()
                        .orElseThrow()
                        .core()
                : this;
    }

    /** Name of the core's code in the results, for example {@code not-reached}. */
    public String resultCode() {
        return core().code.code();
    }

    /** Whether this is the matter, in whichever state, channel or device. */
    public boolean is(ReasonCode wanted) {
        return core().code == wanted;
    }

    /** The same reason with a function applied to each argument, inside frames too. */
    public Reason map(UnaryOperator<Argument> anew) {
        return new Reason(
                code,
                arguments.stream()
                        .map(a -> a.mapReason(r -> r.map(anew)))
                        .map(anew)
                        .toList());
    }
}
