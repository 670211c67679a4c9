package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.ExportFolder;
import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void aFolderWithoutExportsGetsThePlanForTheUsualLimitsOnOnePage() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("new job"));
        Path plan = temp.resolve("plan.pdf");
        assertThat(run("draft", folder.toString(), "--plan", plan.toString())).isEqualTo(0);
        assertThat(out.toString()).isEqualTo(plan + "\n");
        assertThat(folder).isEmptyDirectory();
        assertThat(text(plan))
                .contains("Made for the usual limits: there is no job sheet yet.")
                .contains("sine, 400 Hz, 100 mV peak")
                .contains("wave, gain 75 %")
                .contains("level 0.50 dB")
                .contains("The ground clip of a mains-powered oscilloscope is earth");
    }

    @Test
    void aJobsSheetDecidesToneLimitsAndStates() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "J-1");
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write("job.yaml", sheet + "limits: {level: 0.8 dB}\n");
        Files.delete(job.path().resolve("captures.csv"));
        Path plan = temp.resolve("plan.pdf");
        assertThat(run("draft", job.path().toString(), "--plan", plan.toString()))
                .isEqualTo(0);
        assertThat(job.path().resolve("captures.csv")).doesNotExist();
        assertThat(text(plan))
                .contains("Made for the limits, the stimulus and the states of job J-1.")
                .contains("sine, 1 kHz, 100 mV peak, as the sheet states it")
                .contains("level 0.80 dB")
                .contains("Before the repair");
    }

    @Test
    void exportsAreDraftedFirstAndThePlanIsForThatDraft() throws IOException {
        ExportFolder folder = new ExportFolder(temp.resolve("HL-7"))
                .wave("stock g50.csv", 1000, 0.1, 3)
                .wave("mod g50.csv", 1000, 0.1, 4);
        Path plan = temp.resolve("plan.pdf");
        assertThat(run("draft", folder.path().toString(), "--plan", plan.toString()))
                .isEqualTo(0);
        assertThat(folder.path().resolve("job.yaml")).exists();
        assertThat(out.toString()).contains("state stock: role before").endsWith("\n" + plan + "\n");
        assertThat(text(plan)).contains("of job HL-7.").contains("Stock").contains("Mod");
    }

    @Test
    void aPlanIsWrittenOverAPlanAndOverNothingElse() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("new job"));
        Path plan = temp.resolve("plan.pdf");
        run("draft", folder.toString(), "--plan", plan.toString());
        assertThat(run("draft", folder.toString(), "--plan", plan.toString())).isEqualTo(0);
        Path foreign = Files.writeString(temp.resolve("notes.pdf"), "mine");
        assertThat(run("draft", folder.toString(), "--plan", foreign.toString()))
                .isEqualTo(2);
        assertThat(foreign).hasContent("mine");
        assertThat(err.toString())
                .contains("a file stands there that is no page of this program, and it is left as it is."
                        + " Name another file with --plan");
        assertThat(run("draft", folder.toString(), "--plan", temp.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("this is a folder. Name a file in it with --plan");
    }

    @Test
    void aSheetThatCannotBeReadIsNamedAndNoPlanWritten() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("job"));
        Files.writeString(folder.resolve("job.yaml"), "report: {number: J-1}\n");
        Path plan = temp.resolve("plan.pdf");
        assertThat(run("draft", folder.toString(), "--plan", plan.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("job.yaml, line 1");
        assertThat(plan).doesNotExist();
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private int run(String... args) {
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(args);
    }
}
