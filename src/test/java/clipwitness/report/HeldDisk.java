package clipwitness.report;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A disk on which one document cannot be replaced, as on systems where a viewer that has it open holds it. */
record HeldDisk(String held) implements DiskSteps {
    private static final DiskSteps DISK = new Disk();

    @Override
    public void write(Path file, byte[] content) throws IOException {
        DISK.write(file, content);
    }

    @Override
    public void keep(Path file, Path second) throws IOException {
        Files.copy(file, second); // without second names for one content
    }

    @Override
    public void move(Path file, Path name) throws IOException {
        if (name.getFileName().toString().equals(held)) {
            throw new AccessDeniedException(file.toString(), name.toString(), null);
        }
        DISK.move(file, name);
    }

    @Override
    public long room(Path folder) {
        return DISK.room(folder);
    }

    @Override
    public void delete(Path file) throws IOException {
        DISK.delete(file);
    }
}
