package clipwitness.words;

import clipwitness.quantity.NumberText;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.Message;
import clipwitness.reason.Reason;
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

    /** A sentence of the words, its holes filled with name and text of each by turns. */
    public String say(String name, String... holes) {
        return words.say(name, holes);
    }

    /** A sentence of the words without holes, or something else where there is none of this name. */
    public String sayOr(String name, String otherwise) {
        return words.has(name) ? words.say(name) : otherwise;
    }

    /** A statement as its line in the words stands. */
    public String text(Message statement) {
        String[] holes = new String[2 * statement.arguments().size()];
        for (int i = 0; i < statement.arguments().size(); i++) {
            holes[2 * i] = statement.code().holes().get(i);
            holes[2 * i + 1] = text(statement.arguments().get(i));
        }
        return words.say(statement.code().key(), holes);
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
        String text = unstopped(text(reason));
        return words.beginsWithWord(reason.code().key())
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

    private String text(Argument argument) {
        if (argument instanceof Argument.Figure figure) {
            return number(figure);
        }
        if (argument instanceof Argument.Count count) {
            return Long.toString(count.number());
        }
        if (argument instanceof Argument.Name name) {
            return name.text();
        }
        if (argument instanceof Argument.Sentence sentence) {
            return unstopped(text(sentence.statement())) + STOP;
        }
        Message inner = ((Argument.Inner) argument).statement();
        return inner instanceof Reason reason ? clause(reason) : text(inner);
    }

    private String number(Argument.Figure figure) {
        double number = figure.number();
        return switch (figure.style()) {
            case DECIMALS -> local("%." + figure.digits() + "f", number);
            case SIGNED -> local("%+." + figure.digits() + "f", number);
            case SIGNIFICANT -> local("%." + figure.digits() + "g", number);
            case PLAIN -> numbers.local(NumberText.plain(number, figure.digits()));
            case PREFIXED -> numbers.rounded(number, figure.unit(), figure.digits());
            case WRITTEN -> numbers.local(Double.toString(number));
        };
    }

    private String local(String format, double number) {
        return numbers.local(String.format(Locale.ROOT, format, number));
    }
}
