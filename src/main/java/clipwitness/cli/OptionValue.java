package clipwitness.cli;

import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.Unit;
import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A quantity that the user gave as an option. */
final class OptionValue {
    private OptionValue() {}

    /**
     * The value in its unit; nothing where the option was not given.
     *
     * @param spec   the command, for its usage
     * @param option name of the option
     * @param text   what was given, or null
     * @param unit   unit of the value
     * @throws ParameterException if the text is no quantity of that unit
     */
    static OptionalDouble of(CommandSpec spec, String option, String text, Unit unit) {
        if (text == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(QuantityParser.parse(text, unit).value());
        } catch (QuantityFormatException e) {
            throw new ParameterException(spec.commandLine(), option + ": " + e.getMessage());
        }
    }

    /** A value above 0 whose unit must be written; nothing where the option was not given. */
    static OptionalDouble withUnitAbove0(CommandSpec spec, String option, String text, Unit unit) {
        if (text != null) {
            try {
                QuantityParser.withUnit(text, unit);
            } catch (QuantityFormatException e) {
                throw new ParameterException(spec.commandLine(), option + ": " + e.getMessage());
            }
        }
        return above0(spec, option, text, unit);
    }

    /** The same for a value that must be above 0. */
    static OptionalDouble above0(CommandSpec spec, String option, String text, Unit unit) {
        OptionalDouble value = of(spec, option, text, unit);
        if (value.isPresent() && !(value.getAsDouble() > 0)) {
            throw new ParameterException(spec.commandLine(), option + " must be above 0 but is " + text);
        }
        return value;
    }
}
