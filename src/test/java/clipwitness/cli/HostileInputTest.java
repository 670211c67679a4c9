package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A job sheet, a captures table or a template of somebody else reads and writes nothing outside its own folder and the folder of the results, runs
 * nothing and fetches nothing. A server on this machine counts who asks it; before and after each run the folders are compared.
 */
class HostileInputTest {
    private static final String SECRET = "for-nobody-else";

    @TempDir
    private Path temp;

    private final StringWriter err = new StringWriter();
    private ServerSocketChannel server;
    private JobFolder job;
    private Map<String, String> before;

    @BeforeEach
    void prepare() throws IOException {
        server = ServerSocketChannel.open().bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
        server.configureBlocking(false);
        job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        Path secret = Files.createDirectory(temp.resolve("secret"));
        Files.writeString(secret.resolve("secret.csv"), "Time (s),OUT (V)\n0,1\n1,2\n2,3\n");
        Files.writeString(secret.resolve("secret.html"), "<p>" + SECRET + "</p>");
        Files.writeString(secret.resolve("secret.css"), "body:before { content: '" + SECRET + "' }");
        ImageIO.write(
                new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB),
                "png",
                secret.resolve("secret.png").toFile());
    }

    /** Nobody has asked the server, and nothing but the results is new or other than before. */
    @AfterEach
    void nothingWasFetchedOrTouched() throws IOException {
        assertThat(server.accept()).isNull();
        server.close();
        assertThat(files()).isEqualTo(before);
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(temp)) {
            for (Path file : walk.filter(Files::isRegularFile)
                    .filter(f -> !f.startsWith(temp.resolve("out")))
                    .toList()) {
                all.put(file.toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }

    private int report(String... options) throws IOException {
        before = files();
        String[] usual = {
            "report", job.path().toString(), "--out", temp.resolve("out").toString()
        };
        return new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(err, true))
                .run(Stream.concat(Stream.of(usual), Stream.of(options)).toArray(String[]::new));
    }

    private String address() throws IOException {
        return "http://127.0.0.1:" + ((InetSocketAddress) server.getLocalAddress()).getPort();
    }

    /** A text with the places of this run in it. */
    private String filled(String text) throws IOException {
        return text.replace("SERVER", address())
                .replace("SECRET", temp.resolve("secret").toString());
    }

    private void sheet(String more) throws IOException {
        job.write("job.yaml", Files.readString(job.path().resolve("job.yaml")) + filled(more));
    }

    private void refused(String code) throws IOException {
        assertThat(report()).isEqualTo(Clipwitness.TROUBLE);
        assertThat(err.toString()).contains("[" + code + "]").doesNotContain("\tat ");
        assertThat(temp.resolve("out")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "photos: [{file: ../secret/secret.png}]",
                "photos: [{file: 'SECRET/secret.png'}]",
                "photos: [{file: captures/../../secret/secret.png}]"
            })
    void noPictureLeadsOut(String line) throws IOException {
        sheet(line + "\n");
        refused("outside-folder");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret/secret.csv,", "SECRET/secret.csv,", "before-0.csv,../secret/secret.csv"})
    void noRowLeadsOut(String files) throws IOException {
        job.write("captures.csv", "file,input-file,state,kind,gain\n" + filled(files) + ",before,waveform,0\n");
        refused("outside-folder");
    }

    @Test
    void noLogoLeadsOutThroughALink() throws IOException {
        Files.createSymbolicLink(job.path().resolve("logo.png"), temp.resolve("secret/secret.png"));
        job.write(
                "job.yaml",
                Files.readString(job.path().resolve("job.yaml"))
                        .replace("{name: Invented bench}", "{name: Invented bench, logo: logo.png}"));
        refused("outside-folder");
    }

    @Test
    void noNumberOfAReportIsAPath() throws IOException {
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write("job.yaml", sheet.replace("number: T-1", "number: ../../T-1"));
        refused("bad-value");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "customer: !!java.net.URL [\"SERVER/a\"]",
                "photos: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL [\"SERVER\"]]]]",
                "photos: [&a [x, x], *a]"
            })
    void aSheetMakesNoObjects(String line) throws IOException {
        String sheet = Files.readString(job.path().resolve("job.yaml")).replaceFirst("(?m)^customer.*\n", "");
        job.write("job.yaml", sheet + filled(line) + "\n");
        refused("bad-yaml");
    }

    /** Markup, expressions of the template language and of spreadsheets are letters like any other. */
    @Test
    void whatTheSheetSaysIsText() throws IOException {
        String said = "<script>alert(1)</script> {{ report.getClass() }} {% include \"../secret/secret.html\" %}";
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write("job.yaml", sheet.replace("customer: Invented customer", "customer: '" + said + "'"));
        assertThat(report()).isZero();
        try (PDDocument document = Loader.loadPDF(temp.resolve("out/T-1.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("<script>alert(1)</script> {{ report.getClass() }} {% include")
                    .doesNotContain(SECRET);
            assertThat(document.getDocumentCatalog().getOpenAction()).isNull();
            assertThat(document.getDocumentCatalog().getNames().getJavaScript()).isNull();
        }
    }

    /** Each may be an error or be left out; neither the server nor a file outside is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "<link rel='stylesheet' href='SERVER/a.css'/># ",
                "<link rel='stylesheet' href='file://SECRET/secret.css'/># ",
                "<link rel='stylesheet' href='../secret/secret.css'/># ",
                " #<img src='SERVER/a.png' alt='a'/>",
                " #<img src='file://SECRET/secret.png' alt='a'/>",
                " #<object data='SERVER/a.svg' width='20'></object>",
                " #<iframe src='SERVER/a.html'></iframe>",
                " #<script src='SERVER/a.js'></script><script>document.location='SERVER/b'</script>",
                "<style>@import url(SERVER/a.css);</style># ",
                "<style>body { background: url(SERVER/a.png) }</style># ",
                "<style>@font-face { font-family: a; src: url(SERVER/a.ttf) } p { font-family: a }</style>#<p>a</p>",
                " #{% include '../secret/secret.html' %}",
                " #{% include 'SECRET/secret.html' %}",
                " #{% import '../secret/secret.html' %}",
                " #{{ report.getClass().forName('java.lang.Runtime').getRuntime().exec('id') }}",
                " #<form action='SERVER/a'><input type='submit'/></form>"
            })
    void aTemplateReachesNothing(String head, String body) throws IOException {
        Path template = Files.createDirectory(temp.resolve("template"));
        Files.writeString(
                template.resolve("report.html"),
                filled("<html lang='en'><head><title>t</title>" + (head == null ? "" : head)
                        + "</head><body><p>printed</p>" + (body == null ? "" : body) + "</body></html>"));
        int status = report("--template", template.toString());
        if (status == Clipwitness.TROUBLE) {
            assertThat(err.toString()).containsPattern("\\[(bad-template|outside-folder)\\]");
            return;
        }
        try (PDDocument document = Loader.loadPDF(temp.resolve("out/T-1.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("printed")
                    .doesNotContain(SECRET);
            for (PDPage page : document.getPages()) {
                assertThat(page.getAnnotations()).isEmpty();
            }
        }
    }
}
