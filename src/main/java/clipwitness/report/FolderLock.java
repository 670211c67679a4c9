package clipwitness.report;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps two runs from writing into one folder at a time. The system takes the lock away from a run that is ended. Where a file system knows no
 * locks, there is none.
 */
final class FolderLock {
    private static final String NAME = ".clipwitness-lock";
    private static final int WAIT_MILLISECONDS = 20;
    private static final int MOST_WAITS = 6_000;

    /** Numbers of processes that follow each other lead to lengths that lie this far apart. */
    private static final long RUNS = 31;

    private static final long LENGTHS = 1 << 20;

    private static final long LOCKED_BYTE = 1 << 10;

    private static final ReentrantLock WITHIN_PROGRAM = new ReentrantLock();
    private static final AtomicLong COUNT = new AtomicLong();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Whether a run that was ended has left its lock, or another has it now. */
    static boolean isLeft(Path folder) {
        return Files.exists(folder.resolve(NAME));
    }

    /** Waits for the lock of a folder that is there. */
    static FolderLock of(Path folder) throws IOException {
        WITHIN_PROGRAM.lock();
        boolean locked = false;
        try {
            FolderLock lock = waited(folder.resolve(NAME));
            locked = true;
            return lock;
        } finally {
            if (!locked) {
                WITHIN_PROGRAM.unlock();
            }
        }
    }

    private static FolderLock waited(Path file) throws IOException {
        for (int i = 0; i < MOST_WAITS; i++) {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ);
            if (isTaken(file, channel)) {
                return new FolderLock(file, channel);
            }
            pause();
        }
        throw new IOException("another run has been writing into this folder for two minutes");
    }

    /** Takes the lock, or closes the file: one that cannot be written, as on a full disk, is removed, and the next job may try again. */
    private static boolean isTaken(Path file, FileChannel channel) throws IOException {
        boolean locked = false;
        boolean taken = false;
        boolean told = false;
        try {
            locked = isLocked(channel);
            taken = locked && isFile(file, channel);
            told = true;
        } finally {
            if (locked && !told) {
                Files.deleteIfExists(file);
            }
            if (!taken) {
                channel.close();
            }
        }
        return taken;
    }

    /** Whether this run has the lock now; also where there are no locks. */
    private static boolean isLocked(FileChannel channel) {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, false) != null;
        } catch (IOException e) {
            return true; // the file system knows no locks
        }
    }

    /**
     * Whether the locked file is still that of this name: the run that had the lock before removes it. Told by a length that no other run gives
     * it, and not by reading: a process that closes a second channel on a file loses its locks on it.
     */
    private static boolean isFile(Path file, FileChannel channel) throws IOException {
        long own = LOCKED_BYTE + 1 + (ProcessHandle.current().pid() * RUNS + COUNT.incrementAndGet()) % LENGTHS;
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(new byte[1]), own - 1);
        try {
            return Files.size(file) == own;
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private static void pause() throws InterruptedIOException {
        try {
            Thread.sleep(WAIT_MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("it was interrupted");
        }
    }

    /** Removes the lock and its file. */
    void close() {
        try {
            Files.deleteIfExists(file);
            channel.close();
        } catch (IOException e) {
            // the next run removes it
        } finally {
            WITHIN_PROGRAM.unlock();
        }
    }
}
