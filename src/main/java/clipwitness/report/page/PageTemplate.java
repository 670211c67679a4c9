package clipwitness.report.page;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.words.WordBundle;
import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.error.PebbleException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;

/** Fills a template's page: everything is escaped unless the template says otherwise, and an unknown name is an error. */
public final class PageTemplate {
    private static final String ENGINE = "io.pebbletemplates.";

    private static final String XHTML = "xhtml";

    private final TemplateSource source;
    private final WordBundle words;
    private final PebbleEngine engine;

    /**
     * A template.
     *
     * @param words sentences that its page may name
     */
    public PageTemplate(TemplateSource source, WordBundle words) {
        this.source = source;
        this.words = words;
        this.engine = new PebbleEngine.Builder()
                .loader(new TemplateLoader(source))
                .strictVariables(true)
                .extension(new Saying(words), new TemplateBounds())
                .addEscapingStrategy(XHTML, PageTemplate::escaped)
                .defaultEscapingStrategy(XHTML)
                .autoEscaping(true)
                .defaultLocale(Locale.ROOT)
                .cacheActive(false)
                .methodAccessValidator(PageTemplate::readsOnly)
                .build();
    }

    /** Reads one of the program's own templates without filling it, so that the engine is loaded. */
    public void check() {
        try {
            engine.getTemplate(TemplateSource.PAGE);
        } catch (PebbleException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }

    /**
     * The filled page.
     *
     * @param model what the template knows as {@code report}
     * @throws InputException if the template cannot be filled; names its file and line
     */
    public FilledPage fill(Record model) throws InputException {
        PageText page = new PageText();
        try {
            engine.getTemplate(TemplateSource.PAGE).evaluate(page, Map.of("report", model), Locale.ROOT);
        } catch (PebbleException e) {
            throw new TemplateFault(source, new KnownNames(model, source, words)).of(e);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        } catch (StackOverflowError e) {
            throw tooDeep();
        }
        return page.filled(source);
    }

    private InputException tooDeep() {
        return new InputException(
                ErrorCode.BAD_TEMPLATE,
                Origin.of(source.nameOf(TemplateSource.PAGE)),
                "the template cannot be filled: it nests too deeply",
                "Look for a macro or a file that calls itself, and for brackets within brackets");
    }

    /** Text as XHTML writes it, in elements and in attributes. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** A template reads finished values, counts them and knows where a loop stands; it calls nothing else. */
    private static boolean readsOnly(Object object, Method method) {
        return method.getParameterCount() == 0
                && method.getDeclaringClass() != Object.class
                && (object instanceof Record
                        || object instanceof Collection
                        || object instanceof Map.Entry
                        || object.getClass().getName().startsWith(ENGINE));
    }
}
