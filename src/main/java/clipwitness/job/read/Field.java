package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.WrittenQuantity;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * A text of the user with its place, still to be understood. Every method that understands it notes a fault and returns nothing where
 * it cannot.
 *
 * @param where  file, line and key or column
 * @param text   text without the space around it
 * @param faults takes what is wrong with it
 */
record Field(Origin where, String text, Faults faults) {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    /** Notes that the text is no value that can be used here. */
    void fault(String what, String remedy) {
        fault(ErrorCode.BAD_VALUE, what, remedy);
    }

    void fault(ErrorCode code, String what, String remedy) {
        faults.add(code, where, what, remedy);
    }

    /** The text in quotes, fit for a message. */
    String quoted() {
        return NameWords.quoted(text);
    }

    /** A calendar date, ISO 8601, of the years in which such a bench can work. */
    Optional<LocalDate> date() {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return Optional.of(date);
            }
            fault(quoted() + " is out of range", "Write a year from " + FIRST_YEAR + " to " + LAST_YEAR);
        } catch (DateTimeParseException e) {
            fault(quoted() + " is not a date", "Write year, month and day, for example 2026-05-04");
        }
        return Optional.empty();
    }

    /** A whole number in a range. */
    OptionalInt whole(int least, int most) {
        if (text.matches("\\d{1,9}")) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return OptionalInt.of(number);
            }
        }
        fault(
                quoted() + " is not a whole number from " + least + " to " + most,
                "Write digits only, for example " + least);
        return OptionalInt.empty();
    }

    /** A quantity, exact and as written. */
    Optional<WrittenQuantity> written(AllowedRange range) {
        try {
            WrittenQuantity written = range.bare()
                    ? QuantityParser.bareOrWithUnit(text, range.unit())
                    : QuantityParser.withUnit(text, range.unit());
            if (range.holds(written.quantity().value())) {
                return Optional.of(written);
            }
            fault(quoted() + " is out of range", "Write a value " + range.words());
        } catch (QuantityFormatException e) {
            fault(e.what(), e.remedy());
        }
        return Optional.empty();
    }

    /** A quantity in its unit. */
    OptionalDouble number(AllowedRange range) {
        return written(range).map(w -> OptionalDouble.of(w.quantity().value())).orElse(OptionalDouble.empty());
    }

    /** A percentage as a ratio. */
    OptionalDouble ratio(AllowedRange range) {
        return written(range).map(w -> OptionalDouble.of(w.ratio())).orElse(OptionalDouble.empty());
    }

    /** One of some names, as written; any name where none is known, which is a fault elsewhere. */
    Optional<String> oneOf(Collection<String> known, String noun) {
        if (known.isEmpty() || known.contains(text)) {
            return Optional.of(text);
        }
        fault(ErrorCode.UNKNOWN_NAME, "unknown " + noun + " " + quoted(), NameWords.insteadOf(text, known));
        return Optional.empty();
    }

    /** One of some values, upper and lower case alike. */
    <T> Optional<T> choice(List<T> values, Function<T, String> code, String noun) {
        String folded = text.toLowerCase(Locale.ROOT);
        Optional<T> found = values.stream()
                .filter(v -> code.apply(v).toLowerCase(Locale.ROOT).equals(folded))
                .findFirst();
        if (found.isEmpty()) {
            List<String> known = values.stream().map(code).toList();
            fault(ErrorCode.UNKNOWN_NAME, "unknown " + noun + " " + quoted(), NameWords.insteadOf(text, known));
        }
        return found;
    }
}
