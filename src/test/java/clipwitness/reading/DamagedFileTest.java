package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: a damaged file is read or refused with a message, and nothing else happens. A failure prints its seed. */
class DamagedFileTest {
    private static final int FILES = 500;
    private static final String SPICE = "\0\n\r,;\t\"#*-+.eE0 9xµ:=\u001f";

    @TempDir
    private Path folder;

    @Test
    void damageEndsInAValueOrInAMessage() throws IOException {
        int read = 0;
        for (long seed = 1; seed <= FILES; seed++) {
            read += readsOrRefuses(seed) ? 1 : 0;
        }
        assertThat(read).as("files read in spite of the damage").isBetween(FILES / 20, FILES - 1);
    }

    private boolean readsOrRefuses(long seed) throws IOException {
        Path file =
                Files.write(folder.resolve("damaged.csv"), damaged(new RandomExport(seed).bytes(), new Random(seed)));
        try {
            Export export = ExportReader.read(file, "damaged.csv", ReadingOptions.none());
            assertThat(export.size()).isPositive();
            return true;
        } catch (InputException e) {
            assertThat(e.getMessage()).startsWith("damaged.csv");
            return false;
        } catch (RuntimeException e) {
            return fail("seed " + seed, e);
        }
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        byte[] damaged = bytes.clone();
        int hits = 1 + random.nextInt(6);
        for (int i = 0; i < hits; i++) {
            int at = random.nextInt(damaged.length);
            switch (random.nextInt(4)) {
                case 0 -> damaged[at] = (byte) random.nextInt(256);
                case 1 -> damaged[at] = (byte) SPICE.charAt(random.nextInt(SPICE.length()));
                case 2 -> damaged = Arrays.copyOf(damaged, at + 1);
                default -> System.arraycopy(bytes, 0, damaged, at, Math.min(damaged.length - at, random.nextInt(40)));
            }
        }
        return damaged;
    }
}
