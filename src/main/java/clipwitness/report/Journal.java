package clipwitness.report;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is about to be renamed in a folder, written there before the first renaming and removed after the last: from it the next run tells
 * what a run that was ended in between has left.
 *
 * @param entries documents in the order in which they are renamed
 */
record Journal(List<Entry> entries) {
    private static final String FIRST = "clipwitness journal 1";
    private static final String LAST = "end";
    private static final String OLD = "old ";
    private static final String NEW = "new ";
    private static final long LARGEST = 1 << 20;

    Journal {
        entries = List.copyOf(entries);
    }

    /**
     * A document.
     *
     * @param name   its file name
     * @param hadOld whether an earlier one of that name stood there
     */
    record Entry(String name, boolean hadOld) {}

    /** The journal as a file. */
    byte[] bytes() {
        StringBuilder text = new StringBuilder(FIRST).append('\n');
        for (Entry e : entries) {
            text.append(e.hadOld() ? OLD : NEW)
                    .append(URLEncoder.encode(e.name(), StandardCharsets.UTF_8))
                    .append('\n');
        }
        return text.append(LAST).append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a journal; empty where it is not whole, which is so when nothing has been renamed yet. */
    static Optional<Journal> of(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
            return Optional.empty();
        }
        List<String> lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int last = lines.size() - 1;
        if (last < 1 || !lines.get(0).equals(FIRST) || !lines.get(last).equals(LAST)) {
            return Optional.empty();
        }
        List<Entry> entries = new ArrayList<>();
        for (String line : lines.subList(1, last)) {
            boolean old = line.startsWith(OLD);
            if (!old && !line.startsWith(NEW)) {
                return Optional.empty();
            }
            entries.add(new Entry(URLDecoder.decode(line.substring(OLD.length()), StandardCharsets.UTF_8), old));
        }
        return isOfFolder(entries) ? Optional.of(new Journal(entries)) : Optional.empty();
    }

    /** Whether all names are names of files in the folder itself. */
    private static boolean isOfFolder(List<Entry> entries) {
        return entries.stream()
                .map(Entry::name)
                .noneMatch(n -> n.isEmpty() || n.contains("/") || n.contains("\\") || n.indexOf('\0') >= 0);
    }
}
