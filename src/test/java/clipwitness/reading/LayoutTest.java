package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import clipwitness.words.Speech;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Holds every case of the files in {@code layouts}: what the export is read as, or the message with which it is refused. */
class LayoutTest {
    private static final Path LAYOUTS = Path.of("src/test/resources/clipwitness/reading/layouts");

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> everyCaseReadsAsItSays() throws IOException {
        List<DynamicTest> tests;
        try (Stream<Path> files = Files.list(LAYOUTS)) {
            tests = files.sorted().flatMap(this::testsOf).toList();
        }
        assertThat(tests).isNotEmpty();
        return tests.stream();
    }

    private Stream<DynamicTest> testsOf(Path file) {
        try {
            return LayoutCase.of(file).stream()
                    .map(c -> DynamicTest.dynamicTest(file.getFileName() + " " + c.id(), () -> check(c)));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private void check(LayoutCase layout) throws IOException, InputException {
        Path file = folder.resolve("export.csv");
        Files.write(file, layout.bytes());
        if (layout.expected().containsKey("refused")) {
            InputException refusal = catchThrowableOfType(
                    InputException.class, () -> ExportReader.read(file, "export.csv", ReadingOptions.none()));
            assertThat(refusal).hasMessage("export.csv" + layout.value("refused", ""));
            return;
        }
        Export export = ExportReader.read(file, "export.csv", ReadingOptions.none());
        checkTime(layout, export);
        assertThat(export.channels().stream().map(LayoutTest::described))
                .isEqualTo(layout.expected().get("channel"));
        assertThat(export.doubts().stream()
                        .map(d -> d.code().code() + " " + d.severity().code()))
                .isEqualTo(layout.expected().getOrDefault("doubt", List.of()));
        for (String evidence : layout.expected().getOrDefault("evidence", List.of())) {
            assertThat(export.evidence().stream().map(Speech.ENGLISH::text)).anyMatch(e -> e.contains(evidence));
        }
    }

    private static void checkTime(LayoutCase layout, Export export) {
        String interval = layout.value("interval", "");
        assertThat(export instanceof TimeRecord).isEqualTo(!interval.isEmpty());
        if (export instanceof TimeRecord record) {
            double expected = Double.parseDouble(interval);
            assertThat(record.sampleInterval()).isCloseTo(expected, within(1e-9 * expected));
            assertThat(record.start())
                    .isCloseTo(Double.parseDouble(layout.value("start", "0")), within(1e-6 * expected));
        }
    }

    private static String described(Channel channel) {
        String unit = channel.unit().map(u -> u.symbol()).orElse("?");
        String vertical = channel.vertical()
                .map(v -> " | " + v.perDivision() + " a division"
                        + (v.offset().isPresent() ? ", centre " + v.offset().getAsDouble() : ""))
                .orElse("");
        String samples = Arrays.stream(channel.samples().toArray())
                .mapToObj(LayoutTest::rounded)
                .collect(Collectors.joining(" "));
        return channel.name() + " | " + unit + " | " + samples + vertical;
    }

    /** To twelve digits, which leaves out the last bit that resolving a prefix may move. */
    private static String rounded(double value) {
        return Double.isNaN(value)
                ? "-"
                : Double.toString(
                        new BigDecimal(value).round(new MathContext(12)).doubleValue());
    }
}
