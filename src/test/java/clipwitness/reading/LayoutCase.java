package clipwitness.reading;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One case of a file in {@code layouts}: what is expected, key by key, and the export itself with control characters made visible.
 */
record LayoutCase(String id, Map<String, List<String>> expected, String input) {
    /** All cases of a file: each starts with {@code == id}, and {@code --} separates what is expected from the export. */
    static List<LayoutCase> of(Path file) throws IOException {
        List<LayoutCase> cases = new ArrayList<>();
        for (String text : Files.readString(file).split("(?m)^== ", -1)) {
            int input = text.indexOf("\n--\n");
            if (input < 0) {
                continue; // what stands before the first case says where the family comes from
            }
            List<String> lines = text.substring(0, input).lines().toList();
            Map<String, List<String>> expected = new TreeMap<>();
            for (String line : lines.subList(1, lines.size())) {
                int blank = line.indexOf(' ');
                expected.computeIfAbsent(line.substring(0, blank), k -> new ArrayList<>())
                        .add(line.substring(blank).strip());
            }
            cases.add(new LayoutCase(lines.get(0), expected, text.substring(input + 4)));
        }
        return cases;
    }

    /** The only value of a key, or another text where the key does not stand. */
    String value(String key, String otherwise) {
        List<String> values = expected.getOrDefault(key, List.of(otherwise));
        return values.get(0);
    }

    /** The export's bytes: ␍ is a carriage return, ␉ a tab, ⍽ a byte-order mark, ¬ nothing where the file ends without a line end. */
    byte[] bytes() {
        String text = input.replaceFirst("\n$", "").replaceFirst("¬$", "");
        text = input.endsWith("¬\n") ? text : text + "\n";
        text = text.replace('␍', '\r').replace('␉', '\t').replace('⍽', '\ufeff');
        return text.getBytes(Charset.forName(value("charset", StandardCharsets.UTF_8.name())));
    }
}
