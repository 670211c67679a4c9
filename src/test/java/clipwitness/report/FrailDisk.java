package clipwitness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk that fails once, at a place chosen by its number: before, within or after a step. It can also be the program that ends there. */
final class FrailDisk implements DiskSteps {
    private final DiskSteps disk = new Disk();
    private final int place;
    private final boolean ends;
    private int passed;
    private boolean ended;

    /**
     * A disk.
     *
     * @param place number of the place, from 0
     * @param ends  whether the program ends there; otherwise the step fails
     */
    FrailDisk(int place, boolean ends) {
        this.place = place;
        this.ends = ends;
    }

    /** The program was ended: nothing that it would still do is done. */
    static final class Ended extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Whether the place was reached. */
    boolean failed() {
        return passed > place;
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
        pass();
        if (passed == place) {
            Files.write(file, Arrays.copyOf(content, content.length / 2));
        }
        pass();
        Files.write(file, content); // not flushed: that takes its time, and no test can cut the current
        pass();
    }

    @Override
    public long room(Path folder) {
        return 0; // it fails for lack of room
    }

    @Override
    public void keep(Path file, Path second) throws IOException {
        pass();
        disk.keep(file, second);
        pass();
    }

    @Override
    public void move(Path file, Path name) throws IOException {
        pass();
        disk.move(file, name);
        pass();
    }

    @Override
    public void delete(Path file) throws IOException {
        pass();
        disk.delete(file);
        pass();
    }

    private void pass() throws IOException {
        if (ended) {
            throw new Ended();
        }
        if (passed++ == place) {
            ended = ends;
            if (ends) {
                throw new Ended();
            }
            throw new IOException("No space left on device");
        }
    }
}
