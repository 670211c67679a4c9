package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateCommandTest {
    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** Only the digest differs, which is of the template, too. */
    @ParameterizedTest
    @ValueSource(strings = {"customer", "bench"})
    void aCopyMakesTheSameReportAtOnce(String name) throws IOException {
        Path copy = temp.resolve("own look");
        assertThat(run("template", name, copy)).isEqualTo(0);
        assertThat(err.toString()).startsWith("Name the copy on a job sheet, report: {template: PATH}");
        assertThat(out.toString().lines()).contains(copy.resolve("report.html").toString());
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(words(job, copy.toString())).isEqualTo(words(job, name));
    }

    @Test
    void everyFileOfATemplateIsCopied() throws IOException {
        run("template", "bench", temp.resolve("b"));
        try (Stream<Path> files = Files.list(Path.of("report-templates", "bench"))) {
            List<String> own = files.map(f -> f.getFileName().toString()).toList();
            assertThat(names(temp.resolve("b")))
                    .containsAll(own)
                    .contains("base.css", "words.properties", "words-de.properties", "README.md");
        }
    }

    @Test
    void aFolderThatHoldsSomethingIsLeftAsItIs() throws IOException {
        Files.writeString(temp.resolve("mine.txt"), "x");
        assertThat(run("template", "customer", temp)).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(temp
                        + ": something is there already, and it is left as it is. Name a folder that does not exist"
                        + " yet, or an empty one [place-taken]\n");
        assertThat(names(temp)).containsExactly("mine.txt");
    }

    @Test
    void aNameThatIsNoTemplateIsAnsweredWithTheNearest() {
        assertThat(run("template", "bensh", temp.resolve("x"))).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(
                        "bensh: there is no built-in template of this name. Did you mean 'bench'? Built-in templates are"
                                + " customer and bench [no-template]\n");
        assertThat(temp.resolve("x")).doesNotExist();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private String words(Path job, String template) throws IOException {
        Path made = temp.resolve("made");
        run("report", job, "--template", template, "--out", made);
        Path pdf = made.resolve(
                names(made).stream().filter(n -> n.endsWith(".pdf")).findFirst().orElseThrow());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[0-9a-f]{12,}", "");
        }
    }

    private int run(Object... args) {
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true))
                .run(Stream.of(args).map(Object::toString).toArray(String[]::new));
    }
}
