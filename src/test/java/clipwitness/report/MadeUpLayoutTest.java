package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.figure.FigureCatalogue;
import clipwitness.fixture.DemoJobs;
import clipwitness.fixture.PageLook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Odd jobs on paper: many states, many settings, one of each, no input channel, steps of level. */
class MadeUpLayoutTest {
    @ParameterizedTest
    @CsvSource({
        "six-states, bench",
        "six-states, customer",
        "twelve-gains, bench",
        "one-gain, bench",
        "one-state, bench",
        "one-state, customer",
        "no-input, bench",
        "level-steps, bench",
        "long-labels, bench",
        "long-labels, customer"
    })
    void noPageEndsInAHeadAndNoTextsOverlap(String job, String template) throws Exception {
        JobResults results = DemoJobs.all().get(job);
        byte[] pdf =
                Rendered.bytes(results, template, FigureCatalogue.of(results).all());
        assertThat(pdf.length).isLessThan(2_000_000);
        try (PageLook look = PageLook.of(pdf)) {
            for (int page = 1; page <= look.pages(); page++) {
                assertThat(look.overlaps(page))
                        .as("overlapping on page %s", page)
                        .isEmpty();
                assertThat(look.firstLine(page))
                        .as("beginning of page %s", page)
                        .doesNotContainPattern("^[⁰¹²³⁴-⁹]")
                        .doesNotContainPattern("^\\d+ ") // a row of a table without its head
                        .doesNotStartWith("■");
                if (page < look.pages()) {
                    assertThat(look.headAtEnd(page)).as("end of page %s", page).isEmpty();
                }
            }
        }
    }
}
