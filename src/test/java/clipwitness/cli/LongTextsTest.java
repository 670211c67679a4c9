package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever the sheet calls its states, all of it is on the page. */
class LongTextsTest {
    /** Points between the text and the edge of the paper: the narrowest margin is 17 mm, a sign may reach a hair beyond. */
    private static final float LEAST_MARGIN = 46;

    @TempDir
    private Path temp;

    @ParameterizedTest
    @CsvSource({
        "customer, 'As received from the owner, contact held, tone at noon'",
        "bench, 'After the work, in the original position of the new switch with everything else at noon, second try'",
        "customer, UnbreakableLabelUnbreakableLabelUnbreakableLabelUnbreakableLabelUnbreakableLabelUnbreakableLabel",
        "bench, Unbreakable_label_Unbreakable_label_Unbreakable_label_Unbreakable_label_Unbreakable_label_Unbreakable"
    })
    void staysOnThePage(String template, String label) throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write(
                "job.yaml",
                sheet.replace("Before the repair", "\"" + label + "\"")
                        .replace("After the repair", "\"2: " + label + "\"")
                        .replace("A repair that changes nothing", "\"" + label + label + "\""));
        StringWriter out = new StringWriter();
        int status = new Clipwitness(new PrintWriter(out, true), new PrintWriter(out, true))
                .run("report", job.path().toString(), "--template", template);
        assertThat(status).as(out.toString()).isEqualTo(0);
        try (PDDocument report =
                Loader.loadPDF(job.path().resolve("report/T-1.pdf").toFile())) {
            assertThat(new Beyond().of(report)).isEmpty();
        }
    }

    /** Collects the letters that lie beyond the margins. */
    private static final class Beyond extends PDFTextStripper {
        private final List<String> beyond = new ArrayList<>();

        List<String> of(PDDocument document) throws IOException {
            getText(document);
            return beyond;
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            boolean left = text.getXDirAdj() < LEAST_MARGIN;
            boolean right = text.getXDirAdj() + text.getWidthDirAdj() > text.getPageWidth() - LEAST_MARGIN;
            if (text.getDir() == 0 && (left || right)) {
                beyond.add(text.getUnicode() + " on page " + getCurrentPageNo());
            }
        }
    }
}
