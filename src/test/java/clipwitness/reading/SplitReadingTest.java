package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import clipwitness.reading.rows.Room;
import clipwitness.reading.rows.Split;
import clipwitness.reading.rows.Work;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Property: what a file is read as, or refused with, does not depend on where it is split nor on the number of cores. */
class SplitReadingTest {
    private static final Path LAYOUTS = Path.of("src/test/resources/clipwitness/reading/layouts");
    private static final int[] PIECES = {2, 7, 61};

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", // whole to the end
                "0.100,5\n0.101,6", // no line end after the last row
                "0.100,5\n0.101,", // cut between two values
                "0.100,5\n0.101,6.", // cut in mid-number
                "0.100,5\n0.101\n", // one short row
                "0.100,5\n0.101\n0.102\n0.103\n", // a channel ends earlier
                "0.100\n0.101\n0.102,5\n", // a short row among others
                "0.050,5\n0.051,6\n", // the time runs back
                "0.100,5\nend of record\n", // text below
                "end of record\n0.100,5\n", // text among rows
                "0.100,5\n\n0.101,****\n# pause\n0.102,OL\r\n0.103,-inf\r\r\n", // whatever is allowed between rows
                "0.100,5\n0.101,five\n0.102,6\n", // no number
                "0.100,5,6\n", // one cell too many
                "0.100,5\nTime (s),CH1 (V)\n0.101,6\n", // the header once more
                "0.100,\"5\"\n0.101,1.5e-3,\n0.102, +7 \n" // quotes, exponents, blanks, trailing delimiter
            })
    void endsOfEveryKindReadAlike(String end) throws IOException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 100; i++) {
            text.append(String.format(Locale.ROOT, "%.3f,%.2f\n", i * 1e-3, Math.sin(i)));
        }
        check((text + end + "0.200,1\n".repeat(end.isEmpty() ? 0 : 1)).getBytes(StandardCharsets.UTF_8), end);
        check((text + end).getBytes(StandardCharsets.UTF_8), end);
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 400, 4000}) // a thousand characters a row to forty thousand, which is refused
    void longRowsReadAlike(int channels) throws IOException {
        StringBuilder text = new StringBuilder("Time (s)");
        for (int c = 1; c <= channels; c++) {
            text.append(",CH").append(c).append(" (V)");
        }
        for (int i = 0; i < 20; i++) {
            text.append(String.format(Locale.ROOT, "\n%.3f", i * 1e-3));
            for (int c = 1; c <= channels; c++) {
                text.append(String.format(Locale.ROOT, ",%.6f", Math.sin(i * c)));
            }
        }
        check(text.append('\n').toString().getBytes(StandardCharsets.UTF_8), channels + " channels");
    }

    @Test
    void everyCaseOfALayoutReadsAlike() throws IOException {
        try (Stream<Path> files = Files.list(LAYOUTS)) {
            for (Path file : files.sorted().toList()) {
                for (LayoutCase layout : LayoutCase.of(file)) {
                    check(layout.bytes(), layout.id());
                }
            }
        }
    }

    @Test
    void everyRandomLayoutReadsAlike() throws IOException {
        for (long seed = 1; seed <= 60; seed++) {
            check(new RandomExport(seed).bytes(), "seed " + seed);
        }
    }

    @Test
    void damagedFilesAreRefusedAlike() throws IOException {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            byte[] bytes = new RandomExport(seed).bytes();
            for (int i = 0; i < 3; i++) {
                bytes[random.nextInt(bytes.length)] = (byte) ",;\n\r\t -.0eE#\"x\u00b5\0".charAt(random.nextInt(16));
            }
            check(bytes, "damaged, seed " + seed);
        }
    }

    private void check(byte[] bytes, String description) throws IOException {
        Path file = Files.write(folder.resolve("x.csv"), bytes);
        String whole = outcome(file, new Split(1, 1));
        for (int piece : PIECES) {
            assertThat(outcome(file, new Split(piece, 2))).as(description).isEqualTo(whole);
        }
    }

    private static String outcome(Path file, Split split) {
        try {
            Export export = ExportReader.read(
                    file, "x.csv", ReadingOptions.none(), new Work(split, Progress.NONE::advance, Room.ofMachine()));
            return export
                    + export.channels().stream()
                            .map(c -> Arrays.toString(c.samples().toArray()))
                            .toList()
                            .toString();
        } catch (InputException e) {
            return e.getMessage();
        }
    }
}
