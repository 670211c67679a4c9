package clipwitness.reason;

import java.util.List;

/**
 * Something advised or pointed out.
 *
 * @param code      what
 * @param arguments one for each hole of the code's line in the words
 */
public record Remark(RemarkCode code, List<Argument> arguments) implements Message {
    /** Checks that each hole has its argument. */
    public Remark {
        arguments = Message.fitting(code, arguments);
    }

    /** A remark. */
    public static Remark of(RemarkCode code, Argument... arguments) {
        return new Remark(code, List.of(arguments));
    }
}
