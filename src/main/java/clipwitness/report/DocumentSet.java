package clipwitness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Documents that come into a folder together. They are written under temporary names; what stands under their own names is kept under a
 * second name; a journal says what is about to be renamed; then they are renamed. When the journal is removed the new ones stand. Whatever
 * fails before puts the earlier ones back, at once or, where the program was ended, in the next run. Whoever calls this holds the folder's lock.
 */
final class DocumentSet {
    private static final String PART = ".clipwitness-part";
    private static final String OLD = ".clipwitness-old";
    private static final String JOURNAL = ".clipwitness-journal";

    private final Path folder;
    private final DiskSteps disk;
    private Path at;
    private long bytes;
    private boolean replacing;

    DocumentSet(Path folder, DiskSteps disk) {
        this.folder = folder;
        this.disk = disk;
        this.at = folder;
    }

    /**
     * Writes documents.
     *
     * @param documents file names and contents, in the order in which they are to appear
     * @throws NotWrittenException if one could not be written
     */
    void put(Map<String, byte[]> documents) throws IOException {
        bytes = documents.values().stream().mapToLong(d -> d.length).sum();
        try {
            Journal journal = prepare(documents);
            for (Journal.Entry e : journal.entries()) {
                at = folder.resolve(e.name());
                replacing = e.hadOld();
                disk.move(temporary(e.name(), PART), at);
            }
            complete();
        } catch (IOException | RuntimeException e) {
            throw undone(e);
        } catch (Error e) { // memory or stack have come to an end
            throw settled(e);
        }
        removeRest();
    }

    /** Removes the journal: from then on the new documents stand, also where the system says that it failed but did it. */
    private void complete() throws IOException {
        replacing = false;
        at = folder;
        try {
            disk.delete(journalFile());
        } catch (IOException e) {
            if (Files.exists(journalFile(), LinkOption.NOFOLLOW_LINKS)) {
                throw e;
            }
        }
    }

    private Journal prepare(Map<String, byte[]> documents) throws IOException {
        List<Journal.Entry> entries = new ArrayList<>();
        for (Map.Entry<String, byte[]> d : documents.entrySet()) {
            at = folder.resolve(d.getKey());
            disk.write(temporary(d.getKey(), PART), d.getValue());
            entries.add(new Journal.Entry(d.getKey(), Files.exists(at, LinkOption.NOFOLLOW_LINKS)));
        }
        for (Journal.Entry e : entries) {
            at = folder.resolve(e.name());
            if (e.hadOld()) {
                disk.keep(at, temporary(e.name(), OLD));
            }
        }
        at = folder;
        Journal journal = new Journal(entries);
        disk.write(journalFile(), journal.bytes());
        return journal;
    }

    private Error settled(Error fault) {
        try {
            settle();
        } catch (IOException e) {
            fault.addSuppressed(e);
        }
        return fault;
    }

    private IOException undone(Exception fault) {
        Path failed = at;
        WriteFault kind = kind();
        boolean restored = true;
        try {
            settle();
        } catch (IOException e) {
            restored = false;
            fault.addSuppressed(e);
        }
        IOException cause = fault instanceof IOException io ? io : new IOException(fault);
        return new NotWrittenException(failed, restored, kind, cause);
    }

    private WriteFault kind() {
        if (replacing) {
            return WriteFault.HELD;
        }
        if (disk.room(folder) < bytes) {
            return WriteFault.FULL;
        }
        return Files.isWritable(folder) ? WriteFault.OTHER : WriteFault.FORBIDDEN;
    }

    /** Puts back what an unfinished run has replaced, and removes what it has left. */
    void settle() throws IOException {
        Optional<Journal> journal = Journal.of(journalFile());
        if (journal.isPresent()) {
            settle(journal.get());
        }
        disk.delete(journalFile());
        for (Path rest : rests(folder)) {
            disk.delete(rest);
        }
    }

    /** Puts back all that can be, and then says what could not. */
    private void settle(Journal journal) throws IOException {
        IOException first = null;
        for (Journal.Entry e : journal.entries()) {
            try {
                settle(e);
            } catch (IOException fault) {
                first = first == null ? fault : first;
            }
        }
        if (first != null) {
            throw first;
        }
    }

    private void settle(Journal.Entry e) throws IOException {
        Path target = folder.resolve(e.name());
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS) || OwnMark.isOn(target)) {
            Path old = temporary(e.name(), OLD);
            if (e.hadOld() && Files.exists(old, LinkOption.NOFOLLOW_LINKS)) {
                if (!isSame(old, target)) {
                    disk.move(old, target);
                }
            } else if (!e.hadOld() && !Files.exists(temporary(e.name(), PART), LinkOption.NOFOLLOW_LINKS)) {
                disk.delete(target);
            }
        }
    }

    /** Whether the earlier document still stands under its name: one that could not be replaced cannot be put back, either. */
    private static boolean isSame(Path old, Path target) {
        try {
            return Files.exists(target) && Files.mismatch(old, target) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Removes the second names of the earlier documents: the new ones stand. */
    private void removeRest() {
        try {
            for (Path rest : rests(folder)) {
                disk.delete(rest);
            }
        } catch (IOException e) {
            return; // they go with the next run
        }
    }

    /** What an unfinished run has left in a folder. */
    static List<Path> rests(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> isRest(f.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isRest(String name) {
        return name.startsWith(".") && (name.endsWith(PART) || name.endsWith(OLD) || name.equals(JOURNAL));
    }

    private Path journalFile() {
        return folder.resolve(JOURNAL);
    }

    private Path temporary(String name, String ending) {
        return folder.resolve("." + name + ending);
    }
}
