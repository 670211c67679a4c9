package clipwitness.report;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps on a real disk. */
final class Disk implements DiskSteps {
    @Override
    public void write(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    /** A second name for the same content where the file system knows such, else a copy. */
    @Override
    public void keep(Path file, Path second) throws IOException {
        try {
            Files.createLink(second, file);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (FileSystemException | UnsupportedOperationException e) {
            Files.copy(file, second, StandardCopyOption.COPY_ATTRIBUTES);
            flush(second);
        }
    }

    private static void flush(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void move(Path file, Path name) throws IOException {
        Files.move(file, name, StandardCopyOption.ATOMIC_MOVE);
        Files.deleteIfExists(file); // two names of one content both stay when one is moved to the other
    }

    @Override
    public long room(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException e) {
            return Long.MAX_VALUE;
        }
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
