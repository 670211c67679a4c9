package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the tree of a YAML text from the parser's events. No tag is ever constructed and no alias expanded: both are refused, so that
 * the tree is never larger than the text.
 */
final class YamlTree {
    private static final int DEEPEST = 16;
    private static final String STANDARD_TAG = "tag:yaml.org,2002:";

    private final String file;
    private final Iterator<Event> events;
    private final Faults faults;

    private YamlTree(String file, Iterator<Event> events, Faults faults) {
        this.file = file;
        this.events = events;
        this.faults = faults;
    }

    /**
     * The mapping that a text holds.
     *
     * @param file   name of the file, for messages
     * @param text   text of the file
     * @param faults takes keys that occur twice; reading goes on after them
     * @throws InputException if the text is broken, or holds more than one mapping of plain keys and values
     */
    static YamlNode.Mapping of(String file, String text, Faults faults) throws InputException {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(text.length() + 1)
                .build();
        try {
            Iterator<Event> events = new Parse(settings).parseString(text).iterator();
            return new YamlTree(file, events, faults).document();
        } catch (YamlEngineException e) {
            throw BrokenYaml.problem(file, text, e);
        }
    }

    private YamlNode.Mapping document() throws InputException {
        events.next(); // start of the stream
        Event start = events.next();
        if (start.getEventId() == Event.ID.StreamEnd) {
            throw new InputException(
                    ErrorCode.EMPTY,
                    Origin.of(file),
                    "the sheet is empty",
                    "It needs at least the keys report, stimulus and states");
        }
        YamlNode root = node(events.next(), "", 0);
        events.next(); // end of the document
        Event after = events.next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            throw refusal(after, "", "a second document begins here", "Keep one, and remove the line ---");
        }
        if (root instanceof YamlNode.Mapping mapping) {
            return mapping;
        }
        throw new InputException(
                ErrorCode.BAD_YAML,
                Origin.of(file, root.line()),
                "the sheet holds no keys",
                "Write keys and values, for example report: {number: HL-0231, date: 2026-05-04}");
    }

    private YamlNode node(Event event, String path, int depth) throws InputException {
        if (event instanceof AliasEvent alias) {
            throw refusal(event, path, "the alias *" + alias.getAlias() + " is not allowed", "Write the value out");
        }
        if (event instanceof ScalarEvent scalar) {
            refuseTag(event, path, scalar.getTag().orElse(""));
            return new YamlNode.Text(scalar.getValue(), scalar.isPlain(), line(event));
        }
        refuseTag(event, path, ((CollectionStartEvent) event).getTag().orElse(""));
        if (depth == DEEPEST) {
            throw refusal(event, path, "the nesting is too deep", "No key of the sheet needs so many levels");
        }
        return event instanceof MappingStartEvent ? mapping(event, path, depth + 1) : items(event, path, depth + 1);
    }

    private YamlNode items(Event start, String path, int depth) throws InputException {
        List<YamlNode> items = new ArrayList<>();
        for (Event e = events.next(); e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
            items.add(node(e, SheetNode.itemPath(path, items.size()), depth));
        }
        return new YamlNode.Items(items, line(start));
    }

    private YamlNode mapping(Event start, String path, int depth) throws InputException {
        Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
        boolean braces = ((MappingStartEvent) start).isFlow();
        Optional<YamlNode.Entry> last = Optional.empty();
        for (Event e = events.next(); e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
            if (!(node(e, path, depth) instanceof YamlNode.Text key)) {
                throw refusal(e, path, "a key must be a word", "Put a text that begins with [ or { in quotes");
            }
            String keyPath = SheetNode.keyPath(path, key.text());
            YamlNode.Entry entry = new YamlNode.Entry(key.text(), node(events.next(), keyPath, depth), line(e));
            Optional<YamlNode.Entry> whole =
                    last.filter(l -> braces && l.isSplitBefore(entry)).map(l -> joined(l, entry, path));
            whole.ifPresentOrElse(w -> entries.replace(w.key(), w), () -> put(entry, keyPath, entries));
            last = whole.or(() -> Optional.of(entry));
        }
        return new YamlNode.Mapping(List.copyOf(entries.values()), line(start));
    }

    private void put(YamlNode.Entry entry, String keyPath, Map<String, YamlNode.Entry> entries) {
        YamlNode.Entry first = entries.putIfAbsent(entry.key(), entry);
        if (first != null) {
            faults.add(
                    ErrorCode.TWICE,
                    new Origin(file, entry.line(), keyPath),
                    "the key " + NameWords.quoted(entry.key()) + " occurs twice, first in line " + first.line(),
                    "Keep one of them");
        }
    }

    /** The entry with its number whole again, so that one comma is one fault. */
    private YamlNode.Entry joined(YamlNode.Entry whole, YamlNode.Entry rest, String path) {
        String before = ((YamlNode.Text) whole.value()).text();
        String decimal = before + "." + rest.key();
        faults.add(
                ErrorCode.BAD_VALUE,
                new Origin(file, whole.line(), SheetNode.keyPath(path, whole.key())),
                NameWords.quoted(before + "," + rest.key()) + " holds a comma, which ends a value between braces",
                "Write " + NameWords.clipped(decimal)
                        + (rest.hasThousands()
                                ? " or " + NameWords.clipped(before + rest.key()) + ", whichever is meant"
                                : ""));
        return new YamlNode.Entry(whole.key(), new YamlNode.Text(decimal, true, rest.line()), whole.line());
    }

    private void refuseTag(Event event, String path, String tag) throws InputException {
        if (!tag.isEmpty()) {
            String written = tag.startsWith(STANDARD_TAG) ? "!!" + tag.substring(STANDARD_TAG.length()) : tag;
            throw refusal(event, path, "the tag " + written + " is not allowed", "Write the value without it");
        }
    }

    private InputException refusal(Event event, String path, String what, String remedy) {
        return new InputException(ErrorCode.BAD_YAML, new Origin(file, line(event), path), what, remedy);
    }

    private static int line(Event event) {
        return event.getStartMark().orElseThrow().getLine() + 1;
    }
}
