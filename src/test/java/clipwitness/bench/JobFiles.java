package clipwitness.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The files of a job folder as they come into being: exports, and the captures table that says what they are. */
public final class JobFiles {
    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private final List<Map<String, String>> rows = new ArrayList<>();

    /**
     * One export and its row.
     *
     * @param row cells by column, {@code file} and {@code kind} among them
     * @param text the export
     */
    public void add(Map<String, String> row, String text) {
        add(row, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same of an export that is no text. */
    public void add(Map<String, String> row, byte[] bytes) {
        rows.add(Map.copyOf(row));
        add(row.get("file"), bytes);
    }

    /** Any other file. */
    public void add(String file, byte[] bytes) {
        if (files.put(file, bytes.clone()) != null) {
            throw new IllegalArgumentException(file + " is there already");
        }
    }

    /** Paths of the files inside the folder, the captures table among them. */
    public Set<String> paths() {
        Set<String> paths = new LinkedHashSet<>(files.keySet());
        paths.add("captures.csv");
        return paths;
    }

    /** The bytes of a file. */
    public byte[] bytes(String path) {
        return path.equals("captures.csv")
                ? table().getBytes(StandardCharsets.UTF_8)
                : files.get(path).clone();
    }

    /** Writes all files under a folder. */
    public void writeTo(Path folder) throws IOException {
        for (String path : paths()) {
            Path target = folder.resolve(path);
            Files.createDirectories(target.getParent());
            Files.write(target, bytes(path));
        }
    }

    private String table() {
        List<String> columns = List.of(
                "file",
                "state",
                "kind",
                "gain",
                "frequency",
                "level",
                "setting",
                "run",
                "input",
                "output",
                "scale",
                "device",
                "temperature",
                "instrument",
                "acquisition",
                "note");
        List<String> used = columns.stream()
                .filter(column -> rows.stream().anyMatch(row -> row.containsKey(column)))
                .toList();
        return String.join(",", used) + "\n"
                + rows.stream()
                        .map(row -> used.stream()
                                .map(column -> row.getOrDefault(column, ""))
                                .collect(Collectors.joining(",", "", "\n")))
                        .collect(Collectors.joining());
    }
}
