package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.PdfStandards;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sample job in every template keeps PDF/A-3a and PDF/UA-1, as an independent validator sees it; half a minute of one core. */
@Tag("coverage")
class SamplesKeepTheStandardsTest {
    @TempDir
    Path out;

    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "jack-repair", "lifted-joint", "diode-renewal"})
    void ofASampleInBothTemplates(String name) throws IOException {
        ReportOptions options = new ReportOptions(Optional.of(out), List.of("customer", "bench"), "clipwitness 0.1.0");
        JobOutcome outcome = new Batch(options, (o, place, all) -> {}, Progress.NONE)
                .run(List.of(Path.of("sample-captures", name)))
                .get(0);
        assertThat(outcome).isInstanceOf(JobOutcome.Reported.class);
        try (Stream<Path> files = Files.list(out)) {
            List<Path> pdfs = files.filter(f -> f.toString().endsWith(".pdf")).toList();
            assertThat(pdfs).hasSize(2);
            for (Path pdf : pdfs) {
                assertThat(PdfStandards.faults(Files.readAllBytes(pdf)))
                        .as(pdf.getFileName().toString())
                        .isEmpty();
            }
        }
    }
}
