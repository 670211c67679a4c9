package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: samples written in any layout are read back as they were written. A failure prints the seed of its layout. */
class EveryLayoutReadsBackTest {
    private static final int LAYOUTS = 500;

    @TempDir
    private Path folder;

    @Test
    void samplesIntervalNamesAndUnitsComeBack() throws IOException {
        for (long seed = 1; seed <= LAYOUTS; seed++) {
            check(seed);
        }
    }

    private void check(long seed) throws IOException {
        RandomExport written = new RandomExport(seed);
        String layout = "seed " + seed + ":\n" + written.text();
        TimeRecord read = read(written, layout);
        assertThat(read.size()).as(layout).isEqualTo(written.rows);
        assertThat(read.sampleInterval()).as(layout).isCloseTo(written.interval, within(1e-6 * written.interval));
        assertThat(read.channels()).as(layout).hasSameSizeAs(written.channels);
        for (int c = 0; c < written.channels.size(); c++) {
            assertThat(read.channels().get(c).name()).as(layout).isEqualTo(written.names.get(c));
            assertThat(read.channels().get(c).unit().map(Enum::name)).as(layout).contains("VOLT");
            compare(read.channels().get(c).samples().toArray(), written.channels.get(c), layout);
        }
    }

    private static void compare(double[] read, List<Double> written, String layout) {
        for (int i = 0; i < read.length; i++) {
            double expected = written.get(i);
            if (Double.isNaN(expected)) {
                assertThat(read[i]).as(layout).isNaN();
            } else {
                assertThat(read[i]).as(layout).isCloseTo(expected, within(1e-12 * Math.abs(expected)));
            }
        }
    }

    private TimeRecord read(RandomExport written, String layout) throws IOException {
        Path file = Files.write(folder.resolve("export.csv"), written.bytes());
        try {
            return (TimeRecord) ExportReader.read(file, "export.csv", ReadingOptions.none());
        } catch (InputException | ClassCastException e) {
            throw new AssertionError(layout, e);
        }
    }
}
