package clipwitness.report.page;

import clipwitness.fault.Nearest;
import clipwitness.words.WordBundle;
import io.pebbletemplates.pebble.extension.core.CoreExtension;
import io.pebbletemplates.pebble.tokenParser.TokenParser;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Every name that a template may use, so that a wrong one can be answered with the one that was probably meant. */
final class KnownNames {
    private static final Pattern MACRO = Pattern.compile("\\{%-?\\s*macro\\s+(\\w+)");

    /** Tags that close a block or divide it; the engine names the opening ones alone. */
    private static final Set<String> CLOSING = Set.of(
            "else",
            "elseif",
            "endblock",
            "endcache",
            "endembed",
            "endfilter",
            "endfor",
            "endif",
            "endmacro",
            "endparallel");

    private final Set<String> values = new TreeSet<>();
    private final Set<String> calls = new TreeSet<>();
    private final WordBundle words;

    /**
     * The names.
     *
     * @param model  what the template receives
     * @param source template, whose pages may have macros
     * @param words  sentences that the page may print
     */
    KnownNames(Record model, TemplateSource source, WordBundle words) {
        this.words = words;
        values.add("report");
        addValues(model);
        for (String page : source.pages()) {
            MACRO.matcher(TemplateSource.text(source.any(page)).orElse(""))
                    .results()
                    .forEach(m -> calls.add(m.group(1)));
        }
        CoreExtension engine = new CoreExtension();
        calls.add("say");
        calls.addAll(engine.getFunctions().keySet());
        calls.addAll(engine.getFilters().keySet());
        calls.addAll(engine.getTests().keySet());
        engine.getTokenParsers().stream().map(TokenParser::getTag).forEach(calls::add);
        calls.addAll(CLOSING);
    }

    private void addValues(Record model) {
        addComponents(model.getClass());
        for (RecordComponent component : model.getClass().getRecordComponents()) {
            if (Map.class.isAssignableFrom(component.getType())) {
                addKeys(model, component);
            }
        }
    }

    private void addKeys(Record model, RecordComponent component) {
        try {
            ((Map<?, ?>) component.getAccessor().invoke(model)).keySet().forEach(k -> values.add(k.toString()));
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("a value of the model cannot be read: " + component, e);
        }
    }

    private void addComponents(Class<?> type) {
        for (RecordComponent component : type.getRecordComponents()) {
            if (values.add(component.getName())) {
                addType(component.getGenericType());
            }
        }
    }

    private void addType(Type type) {
        if (type instanceof ParameterizedType list) {
            for (Type argument : list.getActualTypeArguments()) {
                addType(argument);
            }
        } else if (type instanceof Class<?> plain && plain.isRecord()) {
            addComponents(plain);
        }
    }

    /** The value of the model that was probably meant. */
    Optional<String> value(String wrong) {
        return Nearest.slipOf(wrong, values);
    }

    /** The macro, function, filter or tag that was probably meant. */
    Optional<String> call(String wrong) {
        return Nearest.slipOf(wrong, calls);
    }

    /** The sentence that was probably meant. */
    Optional<String> sentence(String wrong) {
        return Nearest.slipOf(wrong, words.names());
    }
}
