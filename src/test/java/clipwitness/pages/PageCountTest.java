package clipwitness.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long the sample reports are. A customer reads three pages; German words are longer than English ones, German reports are not. */
class PageCountTest {
    private static int pages(String name) throws IOException {
        try (PDDocument document = SamplePages.open(name)) {
            return document.getNumberOfPages();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "diode-renewal", "jack-repair", "lifted-joint"})
    void aCustomersReportHasThreePagesAtMostInBothLanguages(String job) throws IOException {
        assertThat(pages(job + "-customer")).isLessThanOrEqualTo(3);
        assertThat(pages(job + "-customer" + SamplePages.GERMAN)).isLessThanOrEqualTo(3);
    }

    /** Three states at five settings, one of them twice. */
    @Test
    void theBenchReportOfTheSwitchHasFourteenPagesAtMostInBothLanguages() throws IOException {
        assertThat(pages("bass-drive-switch-bench")).isLessThanOrEqualTo(14);
        assertThat(pages("bass-drive-switch-bench" + SamplePages.GERMAN)).isLessThanOrEqualTo(14);
    }
}
