package clipwitness.reading;

import clipwitness.capture.LabelText;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names for the channels, each different: from the headings, from the preamble's source, else by number. */
final class ChannelNames {
    private static final Set<String> SOURCE = Set.of(
            "source",
            "channel",
            "trace",
            "trace name",
            "channel name",
            "name",
            "names",
            "label",
            "signal",
            "signal name",
            "quelle",
            "kanal");

    private ChannelNames() {}

    static List<String> of(List<Column> values, Preamble preamble) {
        List<String> sources = sources(preamble, values.size());
        Map<String, Integer> uses = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            String name = LabelText.line(values.get(i).heading().name());
            if (name.isEmpty()) {
                name = sources.isEmpty() ? "column " + (i + 1) : LabelText.line(sources.get(i));
            }
            int use = uses.merge(name, 1, Integer::sum);
            names.add(use == 1 ? name : name + " (" + use + ")");
        }
        return names;
    }

    private static List<String> sources(Preamble preamble, int channels) {
        return preamble.facts().stream()
                .filter(f -> SOURCE.contains(f.words()) && f.values().size() == channels)
                .map(Statement::values)
                .findFirst()
                .orElse(List.of());
    }
}
