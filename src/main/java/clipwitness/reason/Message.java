package clipwitness.reason;

import java.util.ArrayList;
import java.util.List;

/** A phrase with what fills its holes. */
public sealed interface Message permits Reason, Remark {
    /** What is said. */
    Phrase code();

    /** One argument for each hole of the phrase, in their order. */
    List<Argument> arguments();

    /**
     * The statement with all its numbers left out: statements of one form say the same with other figures. Names count as what is said.
     */
    default List<Object> form() {
        List<Object> form = new ArrayList<>(List.of(code()));
        arguments().forEach(a -> form.add(a.form()));
        return List.copyOf(form);
    }

    /** Checks that each hole has its argument, and copies them. */
    static List<Argument> fitting(Phrase code, List<Argument> arguments) {
        if (arguments.size() != code.holes().size()) {
            throw new IllegalArgumentException(
                    code.name() + " has the holes " + code.holes() + " but " + arguments.size() + " arguments");
        }
        return List.copyOf(arguments);
    }
}
