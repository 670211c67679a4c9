package clipwitness.reason;

import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What fills a hole of a phrase: a number, a name of the user's, or another statement. */
public sealed interface Argument {
    /** How a number is printed. */
    enum Style {
        /** With so many decimals; the unit is in the sentence. */
        DECIMALS,
        /** The same with its sign, plus too. */
        SIGNED,
        /** With so many significant digits, zeros at the end kept; the unit is in the sentence. */
        SIGNIFICANT,
        /** With at most so many significant digits, without exponent; the unit is in the sentence. */
        PLAIN,
        /** With so many significant digits, SI prefix and unit. */
        PREFIXED,
        /** As somebody set it: no zeros at the end, SI prefix and unit. */
        NOMINAL,
        /** As a file writes it: all digits that it has; the unit is in the sentence. */
        WRITTEN
    }

    /**
     * A number.
     *
     * @param number finite, in the unit
     * @param unit   unit
     * @param style  how it is printed
     * @param digits digits or decimals, as the style counts them
     */
    record Figure(double number, Unit unit, Style style, int digits) implements Argument {
        /** Checks that the number is finite. */
        public Figure {
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(style, "style");
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("an argument must be finite but is " + number);
            }
        }

        /** What a file writes is a place in that file, of which two do not make a range. */
        @Override
        public Object form() {
            return style == Style.WRITTEN ? this : style;
        }

        @Override
        public double size() {
            return number;
        }
    }

    /**
     * A whole number.
     *
     * @param number number
     */
    record Count(long number) implements Argument {
        @Override
        public double size() {
            return number;
        }
    }

    /**
     * A name of the user's: label, file, channel, device.
     *
     * @param text as the user wrote it
     */
    record Name(String text) implements Argument {
        /** Checks that there is a text. */
        public Name {
            Objects.requireNonNull(text, "text");
        }

        @Override
        public Object form() {
            return this;
        }
    }

    /**
     * Another statement, as it stands in the middle of a sentence.
     *
     * @param statement the statement
     */
    record Inner(Message statement) implements Argument {
        @Override
        public Optional<Message> held() {
            return Optional.of(statement);
        }

        @Override
        public Optional<Reason> reason() {
            return statement instanceof Reason r ? Optional.of(r) : Optional.empty();
        }

        @Override
        public Argument mapReason(UnaryOperator<Reason> anew) {
            return reason().<Argument>map(r -> new Inner(anew.apply(r))).orElse(this);
        }
    }

    /**
     * Another statement as a sentence with its full stop.
     *
     * @param statement the statement
     */
    record Sentence(Message statement) implements Argument {
        @Override
        public Optional<Message> held() {
            return Optional.of(statement);
        }
    }

    /** What it says apart from its numbers. */
    default Object form() {
        return held().<Object>map(Message::form).orElse(getClass());
    }

    /** A number's own; 0 for what is none. */
    default double size() {
        return 0;
    }

    /** The statement that this argument holds, where it holds one. */
    default Optional<Message> held() {
        return Optional.empty();
    }

    /** The reason that this argument is, where it is one. */
    default Optional<Reason> reason() {
        return Optional.empty();
    }

    /** The same argument, or where it is a reason what a function makes of it. */
    default Argument mapReason(UnaryOperator<Reason> anew) {
        return this;
    }

    /** A number with so many decimals. */
    static Argument decimals(double number, Unit unit, int decimals) {
        return new Figure(number, unit, Style.DECIMALS, decimals);
    }

    /** A number with its sign and so many decimals. */
    static Argument signed(double number, Unit unit, int decimals) {
        return new Figure(number, unit, Style.SIGNED, decimals);
    }

    /** A number with so many significant digits. */
    static Argument significant(double number, Unit unit, int digits) {
        return new Figure(number, unit, Style.SIGNIFICANT, digits);
    }

    /** A number with at most so many significant digits. */
    static Argument plain(double number, Unit unit, int digits) {
        return new Figure(number, unit, Style.PLAIN, digits);
    }

    /** A quantity with so many significant digits, prefix and unit. */
    static Argument prefixed(double number, Unit unit, int digits) {
        return new Figure(number, unit, Style.PREFIXED, digits);
    }

    /** A quantity as somebody set it, prefix and unit. */
    static Argument nominal(double number, Unit unit) {
        return new Figure(number, unit, Style.NOMINAL, 0);
    }

    /** A number as a file writes it. */
    static Argument written(double number, Unit unit) {
        return new Figure(number, unit, Style.WRITTEN, 0);
    }

    /** A whole number. */
    static Argument count(long number) {
        return new Count(number);
    }

    /** A name of the user's. */
    static Argument name(String text) {
        return new Name(text);
    }

    /** Number of a line or row: the name of a place, of which two do not make a range. */
    static Argument place(long number) {
        return new Name(Long.toString(number));
    }

    /** Names of the user's, side by side. */
    static Argument names(List<String> texts) {
        return new Name(String.join(", ", texts));
    }

    /** A statement inside another. */
    static Argument inner(Message statement) {
        return new Inner(statement);
    }

    /** A remark inside another. */
    static Argument word(RemarkCode code, Argument... arguments) {
        return new Inner(Remark.of(code, arguments));
    }

    /** A statement as a sentence. */
    static Argument sentence(Message statement) {
        return new Sentence(statement);
    }
}
