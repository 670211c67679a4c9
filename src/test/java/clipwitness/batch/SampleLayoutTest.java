package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.PageLook;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the reports of the sample jobs fill their pages. */
class SampleLayoutTest {
    @TempDir
    Path out;

    @Test
    void theBenchReportOfTheLargestSampleHasFourteenPagesAtMost() throws IOException {
        try (PageLook look = report("bass-drive-switch", "bench")) {
            assertThat(look.pages()).isLessThanOrEqualTo(14);
        }
    }

    /** Letter is 18 mm lower than A4, and 6 mm wider. */
    @Test
    void itHasNoMoreOnLetter(@TempDir Path folder) throws IOException {
        Path job = folder.resolve("letter");
        try (Stream<Path> files = Files.walk(Path.of("sample-captures/bass-drive-switch"))) {
            for (Path file : files.toList()) {
                Files.copy(
                        file,
                        job.resolve(Path.of("sample-captures/bass-drive-switch").relativize(file)));
            }
        }
        Path sheet = job.resolve("job.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace("paper: A4", "paper: letter"));
        try (PageLook look = report(job, "bench")) {
            assertThat(look.isAsHighAs(279.4)).isTrue();
            assertThat(look.pages()).isLessThanOrEqualTo(14);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "bass-drive-switch, customer",
        "bass-drive-switch, bench",
        "jack-repair, bench",
        "lifted-joint, customer",
        "lifted-joint, bench",
        "diode-renewal, bench"
    })
    void noPageIsMoreThanAThirdEmptyNoneEndsInAHeadAndNoTextsOverlap(String job, String template) throws IOException {
        try (PageLook look = report(job, template)) {
            for (int page = 1; page <= look.pages(); page++) {
                assertThat(look.overlaps(page))
                        .as("overlapping on page %s", page)
                        .isEmpty();
                assertThat(look.firstLine(page))
                        .as("beginning of page %s", page)
                        .doesNotContainPattern("^[⁰¹²³⁴-⁹]")
                        .doesNotStartWith("■");
                if (page < look.pages()) {
                    assertThat(look.headAtEnd(page)).as("end of page %s", page).isEmpty();
                    assertThat(look.empty(page)).as("empty on page %s", page).isLessThanOrEqualTo(1 / 3.0);
                }
            }
        }
    }

    private PageLook report(String job, String template) throws IOException {
        return report(Path.of("sample-captures", job), template);
    }

    private PageLook report(Path job, String template) throws IOException {
        ReportOptions options = new ReportOptions(Optional.of(out), List.of(template), "clipwitness 0.1.0");
        JobOutcome outcome = new Batch(options, (o, place, all) -> {}, Progress.NONE)
                .run(List.of(job))
                .get(0);
        assertThat(outcome).isInstanceOf(JobOutcome.Reported.class);
        try (Stream<Path> files = Files.list(out)) {
            Path pdf =
                    files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
            return PageLook.of(Files.readAllBytes(pdf));
        }
    }
}
