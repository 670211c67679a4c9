package clipwitness.report;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A folder. Documents are written under temporary names in the same folder and flushed; only when all are complete are they renamed,
 * in the given order. What a failing call wrote is removed, the folder too where the call made it.
 */
public final class FolderSink {
    private final Path folder;

    /** A folder, made when the first document comes. */
    public FolderSink(Path folder) {
        this.folder = folder;
    }

    /**
     * Takes documents that belong together: all of them appear, or none.
     *
     * @param documents file names and contents, in the order in which they are to appear
     * @throws IOException if they could not be written; what stood there before is as it was
     */
    public void put(Map<String, byte[]> documents) throws IOException {
        Path made = firstMissing(folder.toAbsolutePath());
        Map<Path, Path> written = new LinkedHashMap<>();
        boolean complete = false;
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> d : documents.entrySet()) {
                Path part = folder.resolve(
                        "." + d.getKey() + "." + ProcessHandle.current().pid() + ".part");
                written.put(part, folder.resolve(d.getKey()));
                flush(part, d.getValue());
            }
            for (Map.Entry<Path, Path> w : written.entrySet()) {
                Files.move(w.getKey(), w.getValue(), StandardCopyOption.ATOMIC_MOVE);
            }
            complete = true;
        } finally {
            if (!complete) {
                for (Path part : written.keySet()) {
                    Files.deleteIfExists(part);
                }
                removeEmpty(made);
            }
        }
    }

    private static void flush(Path part, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    /** The uppermost folder of a path that does not exist yet; null where all exist. */
    private static Path firstMissing(Path path) {
        Path missing = null;
        for (Path p = path; p != null && !Files.exists(p); p = p.getParent()) {
            missing = p;
        }
        return missing;
    }

    private void removeEmpty(Path made) throws IOException {
        if (made == null) {
            return;
        }
        for (Path p = folder.toAbsolutePath(); p.startsWith(made); p = p.getParent()) {
            Files.deleteIfExists(p);
        }
    }
}
