package clipwitness.batch;

import clipwitness.fault.InputException;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whatever a file holds, it is looked at or refused. */
class LookingFuzzTest {
    private static final int LARGEST = 1 << 14;

    @FuzzTest(maxDuration = "20m")
    void anyBytesAreLookedAtOrRefused(byte[] bytes) throws IOException {
        if (bytes.length > LARGEST) {
            return;
        }
        Path file = Files.createTempFile("fuzz", ".csv");
        try {
            Files.write(file, bytes);
            assertThat(Looking.at(file, ReadingOptions.none(), Progress.NONE).channels())
                    .isNotEmpty();
        } catch (InputException e) {
            assertThat(e).hasMessageStartingWith(file.toString());
        } finally {
            Files.delete(file);
        }
    }
}
