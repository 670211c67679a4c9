package clipwitness.words;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.Message;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts statements into words.
 *
 * @param words   words
 * @param numbers numbers as the language of the words writes them
 */
public record Speech(WordBundle words, NumberText numbers) {
    /** English, the language of JSON, CSV and the command line. */
    public static final Speech ENGLISH = new Speech(WordBundle.builtIn(), NumberText.in("en"));

    private static final String STOP = ".";

    /** Words, with numbers as the report of a job writes them. */
    public static Speech of(WordBundle words, String language) {
        return new Speech(words, NumberText.in(language));
    }

    /** A sentence of the words, its holes filled with name and text of each in turn. */
    public String say(String name, String... holes) {
        return words.say(name, holes);
    }

    /** A sentence of the words without holes, or something else where there is none of this name. */
    public String sayOr(String name, String otherwise) {
        return words.has(name) ? words.say(name) : otherwise;
    }

    /** A statement as its line in the words stands. */
    public String text(Message statement) {
        return text(List.of(statement));
    }

    /**
     * Statements of one form as one: a hole that their numbers fill differently says from which to which.
     *
     * @param alike at least one, all with the {@link Message#form} of the first
     */
    public String text(List<? extends Message> alike) {
        Message first = alike.get(0);
        String[] holes = new String[2 * first.arguments().size()];
        for (int i = 0; i < first.arguments().size(); i++) {
            int hole = i;
            holes[2 * i] = first.code().holes().get(i);
            holes[2 * i + 1] =
                    filling(alike.stream().map(s -> s.arguments().get(hole)).toList());
        }
        return words.say(first.code().key(), holes);
    }

    /** A position of the gain control, percent of its rotation: {@code 50 % gain}, {@code full gain}. */
    public String gain(double percent) {
        return text(Word.gain(percent));
    }

    /** A doubt as its line stands. */
    public String text(Doubt doubt) {
        return text(doubt.reason());
    }

    /** A doubt as the end of a sentence: with one full stop. */
    public String sentence(Doubt doubt) {
        return unstopped(text(doubt)) + STOP;
    }

    /** Statements as their lines stand, where there are some. */
    public Optional<String> text(Optional<? extends Message> statement) {
        return statement.map(this::text);
    }

    /** A reason inside a sentence: without capital and full stop of its own. */
    public String clause(Reason reason) {
        return clause(List.of(reason));
    }

    private String clause(List<? extends Message> alike) {
        String text = unstopped(text(alike));
        return words.beginsWithWord(alike.get(0).code().key())
                ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
                : text;
    }

    /** A reason inside a sentence, where there is one. */
    public Optional<String> clause(Optional<Reason> reason) {
        return reason.map(this::clause);
    }

    private static String unstopped(String text) {
        return text.endsWith(STOP) ? text.substring(0, text.length() - STOP.length()) : text;
    }

    private String filling(List<Argument> arguments) {
        Argument first = arguments.get(0);
        if (first instanceof Argument.Name name) {
            return name.text();
        }
        List<Message> inner = arguments.stream().flatMap(a -> a.held().stream()).toList();
        if (inner.isEmpty()) {
            return range(arguments);
        }
        if (first instanceof Argument.Sentence) {
            return unstopped(text(inner)) + STOP;
        }
        return inner.get(0) instanceof Reason ? clause(inner) : text(inner);
    }

    private String range(List<Argument> numbers) {
        Comparator<Argument> bySize = Comparator.comparingDouble(Argument::size);
        String least = number(Collections.min(numbers, bySize));
        String greatest = number(Collections.max(numbers, bySize));
        return least.equals(greatest) ? least : say("range", "from", least, "to", greatest);
    }

    /** A number as it stands in a sentence, with a true minus; the unit is in the sentence unless the style writes it. */
    private String number(Argument argument) {
        if (!(argument instanceof Argument.Figure figure)) {
            return Long.toString(Math.round(argument.size()));
        }
        double number = figure.number();
        return switch (figure.style()) {
            case DECIMALS -> numbers.fixed(number, Unit.ONE, figure.digits());
            case SIGNED -> numbers.signed(number, Unit.ONE, figure.digits());
            case SIGNIFICANT -> numbers.rounded(number, Unit.ONE, figure.digits());
            case PLAIN -> numbers.written(NumberText.plain(number, figure.digits()));
            case NOMINAL -> numbers.nominal(number, figure.unit());
            case PREFIXED -> numbers.rounded(number, figure.unit(), figure.digits());
            case WRITTEN -> numbers.written(Double.toString(number));
        };
    }
}
