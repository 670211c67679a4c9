package clipwitness.report;

import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A folder. Documents are written under temporary names in the same folder and flushed; only when all are complete are they renamed,
 * in the given order. What a failing call wrote is removed, the folder too where the call made it, and what stood there before is put
 * back; what a run that was ended has left is settled by the next one. Only this program's own documents are replaced.
 */
public final class FolderSink {
    /** Room that the lock of a folder takes at most, bytes. */
    private static final long LOCK = 1 << 16;

    private final Path folder;
    private final Destination chosen;
    private final DiskSteps disk;

    /** A folder that was chosen with {@code --out}, made when the first document comes. */
    public FolderSink(Path folder) {
        this(folder, Destination.OUT);
    }

    /**
     * A folder, made when the first document comes.
     *
     * @param chosen how it was chosen
     */
    public FolderSink(Path folder, Destination chosen) {
        this(folder, chosen, new Disk());
    }

    /** A folder on a disk whose steps may fail. */
    FolderSink(Path folder, DiskSteps disk) {
        this(folder, Destination.OUT, disk);
    }

    private FolderSink(Path folder, Destination chosen, DiskSteps disk) {
        this.folder = folder;
        this.chosen = chosen;
        this.disk = disk;
    }

    /**
     * Settles what an earlier run has left, and makes sure that documents could be written.
     *
     * @param names  file names of the documents
     * @param inputs files that they are made from
     * @throws InputException if something stands there that may not be replaced
     * @throws IOException    if the folder cannot be read
     */
    public void requireFree(Collection<String> names, Collection<Path> inputs) throws InputException, IOException {
        if (!DocumentSet.rests(folder).isEmpty() || FolderLock.isLeft(folder)) {
            locked(this::settle);
        }
        refuseTaken(names, inputs);
    }

    private void refuseTaken(Collection<String> names, Collection<Path> inputs) throws InputException {
        List<Problem> taken = names.stream()
                .map(n -> TakenPlace.at(folder.resolve(n), inputs, chosen))
                .flatMap(Optional::stream)
                .toList();
        if (!taken.isEmpty()) {
            throw new InputException(taken);
        }
    }

    /**
     * Takes documents that belong together: all of them appear, or none.
     *
     * @param documents file names and contents, in the order in which they are to appear
     * @throws InputException if something stands there that may not be replaced
     * @throws IOException    if they could not be written
     */
    public void put(Map<String, byte[]> documents) throws InputException, IOException {
        Path made = firstMissing(folder.toAbsolutePath());
        boolean complete = false;
        try {
            locked(set -> replace(set, documents));
            complete = true;
        } finally {
            if (!complete) {
                removeEmpty(made);
            }
        }
    }

    private interface Work {
        void on(DocumentSet set) throws InputException, IOException;
    }

    private void replace(DocumentSet set, Map<String, byte[]> documents) throws InputException, IOException {
        settle(set);
        refuseTaken(documents.keySet(), List.of());
        set.put(documents);
    }

    private void settle(DocumentSet set) throws NotWrittenException {
        try {
            set.settle();
        } catch (IOException e) {
            throw new NotWrittenException(folder, false, WriteFault.OTHER, e);
        }
    }

    private void locked(Work work) throws InputException, IOException {
        FolderLock lock = lock();
        try {
            work.on(new DocumentSet(folder, disk));
        } finally {
            lock.close();
        }
    }

    private FolderLock lock() throws NotWrittenException {
        try {
            Files.createDirectories(folder);
            return FolderLock.of(folder);
        } catch (IOException e) {
            throw new NotWrittenException(folder, true, kind(), e);
        }
    }

    private WriteFault kind() {
        Path there = folder.toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            return WriteFault.OTHER;
        }
        if (disk.room(there) < LOCK) {
            return WriteFault.FULL;
        }
        return Files.isWritable(there) ? WriteFault.OTHER : WriteFault.FORBIDDEN;
    }

    /** The uppermost folder of a path that does not exist yet; null where all exist. */
    private static Path firstMissing(Path path) {
        Path missing = null;
        for (Path p = path; p != null && !Files.exists(p); p = p.getParent()) {
            missing = p;
        }
        return missing;
    }

    private void removeEmpty(Path made) {
        if (made == null) {
            return;
        }
        try {
            for (Path p = folder.toAbsolutePath(); p.startsWith(made); p = p.getParent()) {
                Files.deleteIfExists(p);
            }
        } catch (IOException e) {
            return; // somebody else has put something there, or it cannot be removed: what is told is why nothing was
            // written
        }
    }
}
