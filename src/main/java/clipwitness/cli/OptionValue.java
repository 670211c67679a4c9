package clipwitness.cli;

import clipwitness.job.Bench;
import clipwitness.quantity.Quantity;
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
        return of(spec, option, text, unit, QuantityParser::parse);
    }

    /** A temperature, °C, as a job sheet may state it. */
    static OptionalDouble temperature(CommandSpec spec, String option, String text) {
        OptionalDouble celsius = of(spec, option, text, Unit.CELSIUS);
        if (celsius.isPresent()
                && !(celsius.getAsDouble() >= Bench.LOWEST_TEMPERATURE
                        && celsius.getAsDouble() <= Bench.HIGHEST_TEMPERATURE)) {
            throw new ParameterException(
                    spec.commandLine(),
                    option + " must lie from " + Bench.LOWEST_TEMPERATURE + " to " + Bench.HIGHEST_TEMPERATURE
                            + " °C but is " + text);
        }
        return celsius;
    }

    /** The same for a value that must be above 0. */
    static OptionalDouble above0(CommandSpec spec, String option, String text, Unit unit) {
        return above0(spec, option, text, of(spec, option, text, unit));
    }

    /** The same for a value that must be above 0 and whose unit must be written. */
    static OptionalDouble withUnitAbove0(CommandSpec spec, String option, String text, Unit unit) {
        return above0(
                spec,
                option,
                text,
                of(
                        spec,
                        option,
                        text,
                        unit,
                        (t, u) -> QuantityParser.withUnit(t, u).quantity()));
    }

    private interface Reading {
        Quantity of(String text, Unit unit) throws QuantityFormatException;
    }

    private static OptionalDouble of(CommandSpec spec, String option, String text, Unit unit, Reading reading) {
        if (text == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(reading.of(text, unit).value());
        } catch (QuantityFormatException e) {
            throw new ParameterException(spec.commandLine(), option + ": " + e.getMessage());
        }
    }

    private static OptionalDouble above0(CommandSpec spec, String option, String text, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0)) {
            throw new ParameterException(spec.commandLine(), option + " must be above 0 but is " + text);
        }
        return value;
    }
}
