package clipwitness.report.page;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import io.pebbletemplates.pebble.error.AttributeNotFoundException;
import io.pebbletemplates.pebble.error.LoaderException;
import io.pebbletemplates.pebble.error.PebbleException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the template engine says of a fault, as a message with file, line and the name that was probably meant. */
final class TemplateFault {
    /** The engine writes the name that it does not know in brackets or in quotation marks. */
    private static final Pattern NAMED = Pattern.compile("[\\['\"]([\\w.-]+)[\\]'\"]");

    private final TemplateSource source;
    private final KnownNames known;

    TemplateFault(TemplateSource source, KnownNames known) {
        this.source = source;
        this.known = known;
    }

    /** The message of a fault. */
    InputException of(PebbleException fault) {
        PebbleException inner = innermost(fault);
        return new InputException(
                ErrorCode.BAD_TEMPLATE,
                place(fault, inner),
                "the template cannot be filled: " + what(inner),
                probably(inner).map(n -> "Did you mean '" + n + "'? ").orElse("")
                        + "README.md in a copied template (clipwitness template customer FOLDER) lists the names that a template may use");
    }

    private static PebbleException innermost(PebbleException fault) {
        return fault.getCause() instanceof PebbleException inner ? innermost(inner) : fault;
    }

    private Origin place(PebbleException fault, PebbleException inner) {
        if (fault.getFileName() == null && inner instanceof LoaderException) {
            return source.placeOf(unquoted(inner).orElse(""));
        }
        String file = fault.getFileName() == null ? TemplateSource.PAGE : fault.getFileName();
        int line = fault.getLineNumber() == null ? 0 : fault.getLineNumber();
        return Origin.of(source.nameOf(file), Math.max(0, line));
    }

    private static String what(PebbleException fault) {
        if (fault instanceof AttributeNotFoundException attribute) {
            return "there is no '" + attribute.getAttributeName() + "' here";
        }
        String message = fault.getPebbleMessage();
        return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
    }

    private Optional<String> probably(PebbleException fault) {
        if (fault instanceof AttributeNotFoundException attribute) {
            return known.value(attribute.getAttributeName());
        }
        if (fault instanceof UnknownSentence sentence) {
            return known.sentence(sentence.sentence());
        }
        return unquoted(fault).flatMap(n -> fault instanceof LoaderException ? source.fileLike(n) : known.call(n));
    }

    private static Optional<String> unquoted(PebbleException fault) {
        Matcher named = NAMED.matcher(fault.getPebbleMessage());
        return named.find() ? Optional.of(named.group(1)) : Optional.empty();
    }

    /** A page that asks for a sentence that the words do not have. */
    static final class UnknownSentence extends PebbleException {
        private static final long serialVersionUID = 1;

        private final String sentence;

        UnknownSentence(String sentence, int line, String file) {
            super(null, "there is no sentence '" + sentence + "' in words.properties", line, file);
            this.sentence = sentence;
        }

        String sentence() {
            return sentence;
        }
    }
}
