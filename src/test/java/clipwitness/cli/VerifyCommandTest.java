package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import clipwitness.fixture.KeyStoreFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyCommandTest {
    private static final String JSON = "T-1-results.json";

    @TempDir
    static Path made;

    @TempDir
    Path temp;

    private JobFolder job;
    private Path report;
    private String out = "";
    private String err = "";

    @BeforeAll
    static void makeTheReport() throws IOException {
        JobFolder.unchanged(made.resolve("job"), "T-1");
        KeyStoreFile.write(made.resolve("shop.p12"), "RSA", "Invented shop");
        Files.writeString(made.resolve("password"), KeyStoreFile.PASSWORD + "\n");
        StringWriter messages = new StringWriter();
        assertThat(new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(messages))
                        .run("report", made.resolve("job").toString()))
                .as(messages.toString())
                .isEqualTo(0);
    }

    @BeforeEach
    void copy() throws IOException {
        job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        report = temp.resolve("T-1.pdf");
        Files.copy(made.resolve("job/report/T-1.pdf"), report);
    }

    private int verify(Object... args) {
        String[] words = Stream.concat(Stream.of("verify"), Stream.of(args).map(Object::toString))
                .toArray(String[]::new);
        StringWriter printed = new StringWriter();
        StringWriter messages = new StringWriter();
        int status = new Clipwitness(new PrintWriter(printed), new PrintWriter(messages)).run(words);
        out = printed.toString();
        err = messages.toString();
        return status;
    }

    @Test
    void anUntouchedReportMatchesItsJobAndEachThingIsNamed() {
        assertThat(verify(report, job.path())).as(out + err).isEqualTo(0);
        assertThat(out.lines())
                .contains(
                        "holds    T-1-results.json: the digest of the inputs is that of the PDF.",
                        "holds    T-1-results.csv: the figures of captures and comparisons are those of T-1-results.json.",
                        "holds    job.yaml: the attached one is the one that the results were made from.",
                        "holds    6 files of " + job.path() + " are those that the report was made from.",
                        "holds    The attached T-1-results.json: computed again from the files, all results are the same.",
                        "holds    The attached T-1-results.csv: computed again from the files, the whole table is the same.",
                        "holds    The pages, printed again with the template customer, are the same byte by byte.",
                        report + ": matches its data.");
        assertThat(err).isEmpty();
    }

    @Test
    void withoutAJobTheAttachmentsAreHeldAgainstEachOther() {
        assertThat(verify(report)).isEqualTo(0);
        assertThat(out)
                .contains("note     The report is not signed.")
                .contains(
                        "note     Without the job folder neither its files nor the pages of the report were looked at.")
                .endsWith(": agrees with itself. Name the job folder as well to hold it against the data.\n");
    }

    @Test
    void aChangedExportIsNamed() throws IOException {
        job.capture("after-100.csv", 0.99, 5, 4);
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains(
                        "DIFFERS  after-100.csv: the file was changed after the report was made. Find the file as it was, or make the report anew.\n")
                .endsWith(": does not match its data.\n");
    }

    @Test
    void aChangedSheetAndAChangedTableAreNamedWithTheLine() throws IOException {
        Path sheet = job.path().resolve("job.yaml");
        job.write("job.yaml", Files.readString(sheet).replace("Invented customer", "Somebody else"));
        job.write("captures.csv", Files.readString(job.path().resolve("captures.csv")) + "\n");
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains("DIFFERS  job.yaml: the file was changed after the report was made, first in line 3.")
                .contains("DIFFERS  captures.csv: the file was changed after the report was made, first in line 6.");
    }

    @Test
    void resultsBesideTheReportThatAreNotItsOwnAreNamed() throws IOException {
        Path table = temp.resolve("T-1-results.csv");
        Files.copy(made.resolve("job/report/T-1-results.csv"), table);
        assertThat(verify(report)).isZero();
        assertThat(out).contains("holds    T-1-results.csv: the file beside the report is the attached one.");
        Files.writeString(table, Files.readString(table).replaceFirst("0\\.1", "0.2"));
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out).contains("DIFFERS  T-1-results.csv: the file beside the report is not the attached one.");
    }

    /** The pages of a template that is not named on the sheet cannot be printed again: that is no difference. */
    @Test
    void aReportInATemplateThatIsNotHereIsNotCalledChanged() throws IOException {
        Path template = temp.resolve("mine");
        assertThat(run("template", "customer", template.toString())).isZero();
        Path style = template.resolve("report.css");
        Files.writeString(style, Files.readString(style) + "\nh2 { color: #802020; }\n");
        assertThat(run(
                        "report",
                        job.path().toString(),
                        "--template",
                        template.toString(),
                        "--out",
                        temp.toString() + "/o"))
                .isZero();
        assertThat(verify(temp.resolve("o/T-1.pdf"), job.path())).isEqualTo(2);
        assertThat(out).contains("may have been made with the template mine, which is not here or was changed");
    }

    private static int run(String... words) {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        return new Clipwitness(nowhere, nowhere).run(words);
    }

    @Test
    void aLostExportIsNamed() throws IOException {
        Files.delete(job.path().resolve("before-0.csv"));
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains("DIFFERS  before-0.csv: the report was made from this file, and it is not in " + job.path());
    }

    /** An editor of PDF files writes a new check sum with the file. */
    @Test
    void aFigureThatWasChangedInOneAttachmentIsNamed() throws IOException {
        attach(JSON, VerifyCommandTest::louder, false);
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out)
                .contains(
                        "DIFFERS  T-1-results.csv and T-1-results.json differ: capture before before-0.csv rms 0.0 1000.0 0.1: ")
                .endsWith(": does not agree with itself.\n");
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains(
                        "DIFFERS  T-1-results.json, captures, before-0.csv before at gain 0.0 %, values, rms, value: 9.5 in the report, ");
    }

    private static String louder(String json) {
        int rms = json.indexOf("\"value\" : ", json.indexOf("\"rms\"")) + "\"value\" : ".length();
        return json.substring(0, rms) + "9.5" + json.substring(json.indexOf(',', rms));
    }

    @Test
    void anAttachmentThatWasChangedAndKeptItsCheckSumIsNamed() throws IOException {
        attach("captures.csv", text -> text.replace("before-0", "before-1"), true);
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out)
                .contains("DIFFERS  captures.csv: the attachment was changed after the report was made.")
                .contains("DIFFERS  captures.csv: the attached one is not the one that the results were made from.");
    }

    @Test
    void theResultsOfAnotherReportAreNoticed() throws IOException {
        attach(JSON, text -> text.replaceFirst("\"inputsDigest\" : \"..", "\"inputsDigest\" : \"zz"), false);
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out).contains("DIFFERS  T-1-results.json: the digest of the inputs is not that of the PDF.");
        attach(JSON, text -> text.replaceFirst("\"sha256\" : \"(.)(.)", "\"sha256\" : \"00"), false);
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out).contains("the results state two different SHA-256 of this file");
    }

    @Test
    void aReportWithoutItsResultsCannotBeJudged() throws IOException {
        edit(d -> d.getDocumentCatalog().getNames().setEmbeddedFiles(null));
        assertThat(verify(report, job.path())).isEqualTo(2);
        assertThat(out)
                .contains("unknown  The results are not attached, so nothing can be compared.")
                .endsWith(": whether it matches its data cannot be said.\n");
    }

    @Test
    void textThatWasPutOnAPageIsShown() throws IOException {
        edit(d -> {
            try (PDPageContentStream page =
                    new PDPageContentStream(d, d.getPage(0), PDPageContentStream.AppendMode.PREPEND, true)) {
                page.beginText();
                page.setFont(
                        new org.apache.pdfbox.pdmodel.font.PDType1Font(
                                org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName.HELVETICA),
                        12);
                page.newLineAtOffset(60, 800);
                page.showText("Passed with praise");
                page.endText();
            }
        });
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains("DIFFERS  The report differs from what the data give: page 1 says “Passed with praise");
    }

    @Test
    void aLineThatWasDrawnOverAPageIsNoticed() throws IOException {
        edit(d -> {
            try (PDPageContentStream page =
                    new PDPageContentStream(d, d.getPage(0), PDPageContentStream.AppendMode.APPEND, true)) {
                page.addRect(60, 400, 300, 200);
                page.fill();
            }
        });
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out)
                .contains(
                        "page 1 has the text that the data give, but a figure, line or picture on it is drawn otherwise");
    }

    @Test
    void aReportThatWasOnlyPackedAnewStillMatches() throws IOException {
        edit(d -> d.setVersion(1.7f));
        assertThat(verify(report, job.path())).as(out).isEqualTo(0);
        assertThat(out).contains("holds    The pages, printed again, hold the same text, lines and pictures;");
    }

    /** A figure within its uncertainty counts as the same between versions, a decision that is another one does not. */
    @Test
    void aReportOfAnotherVersionIsComparedWithinTheUncertainties() throws IOException {
        attach(JSON, text -> text.replaceFirst("clipwitness development", "clipwitness 0.0.1"), false);
        assertThat(verify(report, job.path())).as(out).isEqualTo(0);
        assertThat(out)
                .contains(
                        "note     The report was made by clipwitness 0.0.1, this is clipwitness development: figures are compared within their uncertainty.")
                .contains("all figures agree within their uncertainty, and all decisions are the same.");
        attach(JSON, text -> text.replaceFirst("\"verdict\" : \"pass\"", "\"verdict\" : \"fail\""), false);
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out).contains("verdict: fail in the report, pass from the data");
    }

    /** Earlier versions listed no inputs but the exports, and stated no check sums. */
    @Test
    void aReportThatListsNoInputsIsHeldAgainstTheDigestOverAllOfThem() throws IOException {
        attach(JSON, text -> text.replaceFirst("(?s)\"inputs\" : \\[.*?\\]", "\"inputs\" : [ ]"), false);
        verify(report, job.path());
        assertThat(out)
                .contains(
                        "holds    4 files of " + job.path() + " are those that the report was made from: its exports.")
                .contains("holds    The digest over sheet, table, exports and pictures is that of the report.");
        job.write(
                "job.yaml", Files.readString(job.path().resolve("job.yaml")).replace("Invented customer", "Somebody"));
        assertThat(verify(report, job.path())).isEqualTo(1);
        assertThat(out).contains("The exports are the same: job.yaml, captures.csv or a picture was changed.");
    }

    @Test
    void aSignedReportIsMadeAndItsSignatureIsNamed() {
        Path folder = temp.resolve("signed");
        StringWriter messages = new StringWriter();
        Clipwitness program = new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(messages));
        assertThat(program.run(
                        "report",
                        job.path().toString(),
                        "--out",
                        folder.toString(),
                        "--sign",
                        made.resolve("shop.p12").toString(),
                        "--sign-password-file",
                        made.resolve("password").toString()))
                .as(messages.toString())
                .isEqualTo(0);
        assertThat(verify(folder.resolve("T-1.pdf"), job.path())).as(out).isEqualTo(0);
        assertThat(out)
                .contains("holds    The signature of 'Invented shop' holds: nothing was changed after it was made.")
                .contains("valid from 2026-01-01 to 2027-12-31, SHA-256 ")
                .contains("holds    The pages, printed again with the template customer, are the same byte by byte.");
    }

    @Test
    void aKeyThatCannotBeUsedEndsTheCallBeforeAnythingIsWritten() {
        Path folder = temp.resolve("unsigned");
        StringWriter messages = new StringWriter();
        Clipwitness program = new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(messages));
        String[] call = {"report", job.path().toString(), "--out", folder.toString(), "--sign", "nowhere.p12"};
        assertThat(program.run(call)).isEqualTo(2);
        assertThat(messages.toString()).contains("nowhere.p12: there is no such file");
        call[5] = made.resolve("shop.p12").toString();
        assertThat(program.run(call)).isEqualTo(2);
        assertThat(messages.toString()).contains("--sign-password-file");
        call[4] = "--sign-password-file";
        assertThat(program.run(call)).isEqualTo(2);
        assertThat(messages.toString()).contains("--sign-password-file goes with --sign");
        assertThat(folder).doesNotExist();
    }

    @Test
    void whatIsNoReportEndsWithASentence() throws IOException {
        Path file = temp.resolve("x.pdf");
        assertThat(verify(file)).isEqualTo(2);
        assertThat(err).contains("x.pdf: there is no such file");
        assertThat(verify(temp)).isEqualTo(2);
        assertThat(err).contains("is no file");
        Files.writeString(file, "no report");
        assertThat(verify(file)).isEqualTo(2);
        assertThat(err).contains("x.pdf: is no PDF. Name a PDF that this program made, as it came from there");
        Files.write(file, java.util.Arrays.copyOf(Files.readAllBytes(report), 5000));
        assertThat(verify(file)).isEqualTo(2);
        try (PDDocument other = new PDDocument()) {
            other.addPage(new org.apache.pdfbox.pdmodel.PDPage());
            other.save(file.toFile());
        }
        assertThat(verify(file)).isEqualTo(2);
        assertThat(err).contains("is no report of this program, or a damaged one");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(5L << 30);
        }
        assertThat(verify(file)).isEqualTo(2);
        assertThat(err).contains("is larger than any report");
        assertThat(verify(report, temp)).isEqualTo(2);
        assertThat(err).contains("has no job.yaml");
    }

    @Test
    void anEncryptedReportEndsWithASentence() throws IOException {
        edit(d -> d.protect(new StandardProtectionPolicy("owner", "", new AccessPermission())));
        assertThat(verify(report)).isEqualTo(2);
        assertThat(err).contains("is encrypted, which a report of this program never is");
    }

    /** A hundred megabytes of zeros in a hundred kilobytes, and names that lead out of a folder: nothing is unpacked, nothing written. */
    @Test
    void attachmentsThatNoReportHasAreNamedAndWriteNothing() throws IOException {
        edit(d -> {
            Map<String, PDComplexFileSpecification> files = new LinkedHashMap<>(
                    d.getDocumentCatalog().getNames().getEmbeddedFiles().getNames());
            files.put("../../evil.sh", specification(d, new byte[] {'x'}));
            files.put("zeros.csv", specification(d, new byte[100 << 20]));
            PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
            tree.setNames(files);
            d.getDocumentCatalog().getNames().setEmbeddedFiles(tree);
        });
        long before = files();
        assertThat(verify(report)).isEqualTo(1);
        assertThat(out)
                .contains("DIFFERS  ../../evil.sh: no attachment of this program has such a name.")
                .contains(
                        "DIFFERS  zeros.csv: the attachment is not there, damaged, or packed as this program never does.");
        assertThat(files()).isEqualTo(before);
    }

    private long files() throws IOException {
        try (Stream<Path> all = Files.walk(temp)) {
            return all.count();
        }
    }

    private interface Edit {
        void on(PDDocument document) throws IOException;
    }

    /** Changes the report as an editor of PDF files does, which writes the whole file anew. */
    private void edit(Edit edit) throws IOException {
        byte[] before = Files.readAllBytes(report);
        try (PDDocument document = Loader.loadPDF(before)) {
            edit.on(document);
            document.save(report.toFile());
        }
    }

    private void attach(String name, UnaryOperator<String> change, boolean keepCheckSum) throws IOException {
        edit(d -> {
            PDComplexFileSpecification file = d.getDocumentCatalog()
                    .getNames()
                    .getEmbeddedFiles()
                    .getNames()
                    .get(name);
            PDEmbeddedFile old = file.getEmbeddedFile();
            byte[] content = change.apply(new String(old.toByteArray(), StandardCharsets.UTF_8))
                    .getBytes(StandardCharsets.UTF_8);
            PDEmbeddedFile embedded = new PDEmbeddedFile(d, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
            if (keepCheckSum) {
                embedded.getCOSObject()
                        .setItem(COSName.PARAMS, old.getCOSObject().getItem(COSName.PARAMS));
            }
            file.setEmbeddedFile(embedded);
            file.setEmbeddedFileUnicode(embedded);
        });
    }

    private static PDComplexFileSpecification specification(PDDocument document, byte[] content) throws IOException {
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setEmbeddedFile(new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE));
        return file;
    }
}
