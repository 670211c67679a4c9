package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import clipwitness.fixture.PdfStandards;
import clipwitness.reading.Progress;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A job with German and Greek names, a sign of the fallback font, a letter that no font has, photos with and without transparency, and all
 * attachments: what an independent validator says of it, and what it can not say.
 */
class NamesAndPhotosKeepTheStandardsTest {
    @TempDir
    static Path temp;

    private static byte[] customer;
    private static byte[] bench;

    @BeforeAll
    static void print() throws IOException {
        JobFolder job = JobFolder.sample("jack-repair", temp.resolve("job"));
        String sheet = Files.readString(job.path().resolve("job.yaml"))
                .replace("Harbour Lane Bench", "Werkstatt für Klänge & Söhne")
                .replace("As received, contact held", "Όπως ήρθε, Übergang gehalten")
                .replace("the keeper of a rehearsal room (invented)", "Ελένη Ψαρά ☂ 漢 (invented)");
        job.write("job.yaml", sheet + """
                photos:
                  - {file: photos/board.jpg, caption: "Λυχνία und Röhre", state: original}
                  - {file: photos/clear.png, caption: "", state: received}
                """);
        Files.createDirectories(job.path().resolve("photos"));
        picture("jpeg", BufferedImage.TYPE_INT_RGB, job.path().resolve("photos/board.jpg"));
        picture("png", BufferedImage.TYPE_INT_ARGB, job.path().resolve("photos/clear.png"));
        Path out = temp.resolve("out");
        ReportOptions options = new ReportOptions(Optional.of(out), List.of("customer", "bench"), "clipwitness 0.1.0");
        assertThat(new Batch(options, (outcome, place, all) -> {}, Progress.NONE).run(List.of(job.path())))
                .hasOnlyElementsOfType(JobOutcome.Reported.class);
        customer = Files.readAllBytes(out.resolve("HL-0229.pdf"));
        bench = Files.readAllBytes(out.resolve("HL-0229-bench.pdf"));
    }

    private static void picture(String format, int type, Path file) throws IOException {
        BufferedImage image = new BufferedImage(60, 40, type);
        for (int x = 0; x < image.getWidth(); x++) {
            image.setRGB(x, x % image.getHeight(), 0x80FF0000);
        }
        assertThat(ImageIO.write(image, format, file.toFile())).isTrue();
    }

    @Test
    void bothTemplatesKeepBothStandards() throws IOException {
        assertThat(PdfStandards.faults(customer)).isEmpty();
        assertThat(PdfStandards.faults(bench)).isEmpty();
    }

    @Test
    void everyPictureHasAnAlternativeText() throws IOException {
        try (PDDocument document = Loader.loadPDF(bench)) {
            PDStructureNode root = document.getDocumentCatalog().getStructureTreeRoot();
            assertThat(count(root, "Figure")).isGreaterThan(5);
            assertThat(elements(root, "Figure"))
                    .allSatisfy(f -> assertThat(f.getAlternateDescription()).isNotBlank());
        }
    }

    /** A reader that speaks announces the rows and columns of a table: those that only set things side by side are none. */
    @Test
    void everyTableHasHeaderCellsWithAScope() throws IOException {
        try (PDDocument document = Loader.loadPDF(bench)) {
            List<PDStructureElement> tables =
                    elements(document.getDocumentCatalog().getStructureTreeRoot(), "Table");
            assertThat(tables).hasSizeGreaterThan(5);
            for (PDStructureElement table : tables) {
                assertThat(elements(table, "TH"))
                        .isNotEmpty()
                        .allSatisfy(cell -> assertThat(cell.getCOSObject()
                                        .getCOSDictionary(COSName.A)
                                        .getNameAsString("Scope"))
                                .isIn("Row", "Column"));
            }
        }
    }

    @Test
    void everyHeadingOfTheSecondLevelHasABookmark() throws IOException {
        for (byte[] pdf : List.of(customer, bench)) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                long bookmarks = 0;
                for (var item :
                        document.getDocumentCatalog().getDocumentOutline().children()) {
                    assertThat(item.findDestinationPage(document)).isNotNull();
                    bookmarks++;
                }
                assertThat(bookmarks)
                        .isGreaterThanOrEqualTo(
                                count(document.getDocumentCatalog().getStructureTreeRoot(), "H2"));
            }
        }
    }

    /** ISO 19005-3, 6.8 and annex E: an attachment says its kind and what it is to the document. */
    @Test
    void attachmentsSayTheirKindAndWhatTheyAre() throws IOException {
        try (PDDocument document = Loader.loadPDF(customer)) {
            Map<String, PDComplexFileSpecification> files =
                    document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            assertThat(files)
                    .containsOnlyKeys("HL-0229-results.csv", "HL-0229-results.json", "captures.csv", "job.yaml");
            files.forEach((name, file) -> {
                assertThat(file.getEmbeddedFile().getSubtype())
                        .isEqualTo(
                                name.endsWith(".json")
                                        ? "application/json"
                                        : name.endsWith(".csv") ? "text/csv" : "application/yaml");
                assertThat(file.getCOSObject().getNameAsString("AFRelationship"))
                        .isEqualTo(name.startsWith("HL-") ? "Data" : "Source");
            });
        }
    }

    private static long count(PDStructureNode node, String type) {
        return elements(node, type).size();
    }

    private static List<PDStructureElement> elements(PDStructureNode node, String type) {
        List<PDStructureElement> found = new ArrayList<>();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (type.equals(element.getStructureType())) {
                    found.add(element);
                }
                found.addAll(elements(element, type));
            }
        }
        return found;
    }
}
