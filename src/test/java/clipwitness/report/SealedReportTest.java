package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.KeyStoreFile;
import clipwitness.fixture.PdfStandards;
import clipwitness.report.evidence.PaperFile;
import clipwitness.report.evidence.Seal;
import clipwitness.report.evidence.SealCheck;
import clipwitness.report.evidence.SigningKey;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signed reports, their signature checked by a library that the program does not use. */
class SealedReportTest {
    private static final char[] PASSWORD = KeyStoreFile.PASSWORD.toCharArray();

    @TempDir
    static Path temp;

    private static SigningKey key;
    private static byte[] plain;
    private static byte[] signed;

    @BeforeAll
    static void sign() throws Exception {
        key = SigningKey.of(KeyStoreFile.write(temp.resolve("shop.p12"), "RSA", "Werkstatt für Klänge"), PASSWORD);
        plain = Rendered.bytes(ExampleJob.good().results(), "customer");
        signed = Seal.on(plain, key);
    }

    @Test
    void anIndependentLibraryFindsTheSignatureValidAndWithoutATime() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed)) {
            PDSignature signature = document.getSignatureDictionaries().get(0);
            assertThat(signature.getSignDate()).isNull();
            assertThat(signature.getByteRange()[2] + signature.getByteRange()[3])
                    .isEqualTo(signed.length);
            CMSSignedData message = new CMSSignedData(
                    new CMSProcessableByteArray(signature.getSignedContent(signed)),
                    new ByteArrayInputStream(signature.getContents(signed)));
            SignerInformation signer =
                    message.getSignerInfos().getSigners().iterator().next();
            X509CertificateHolder certificate = certificate(message, signer);
            assertThat(signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(certificate)))
                    .isTrue();
            assertThat(certificate.getSubject().toString()).contains("Werkstatt für Klänge");
            assertThat(signer.getSignedAttributes().size()).isEqualTo(3);
        }
    }

    @SuppressWarnings("unchecked") // the library's selector of certificates says no type
    private static X509CertificateHolder certificate(CMSSignedData message, SignerInformation signer) {
        return (X509CertificateHolder)
                message.getCertificates().getMatches(signer.getSID()).iterator().next();
    }

    @Test
    void aSignedReportKeepsBothStandards() throws IOException {
        assertThat(PdfStandards.faults(signed)).isEmpty();
    }

    @Test
    void theSameReportSignedAgainGivesTheSameBytesAndBeginsWithTheUnsignedOne() {
        assertThat(Seal.on(plain, key)).isEqualTo(signed);
        assertThat(Arrays.copyOf(signed, plain.length)).isEqualTo(plain);
    }

    private static PaperFile read(byte[] pdf) throws IOException, InputException {
        Path file = temp.resolve("report.pdf");
        Files.write(file, pdf);
        return PaperFile.of(file);
    }

    @Test
    void whatIsReadAgainNamesTheSignerAndGivesTheReportAsItWasPrinted() throws Exception {
        PaperFile paper = read(signed);
        SealCheck seal = paper.seal().orElseThrow();
        assertThat(seal.state()).isEqualTo(SealCheck.State.HOLDS);
        assertThat(seal.signer()).isEqualTo("Werkstatt für Klänge");
        assertThat(seal.validity()).isEqualTo("from 2026-01-01 to 2027-12-31");
        assertThat(seal.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
        assertThat(paper.unsigned()).isEqualTo(plain);
        assertThat(read(plain).seal()).isEmpty();
    }

    @Test
    void oneByteThatWasChangedBreaksTheSignature() throws Exception {
        String text = new String(signed, StandardCharsets.ISO_8859_1);
        int producer = text.indexOf("<xmp:CreatorTool>");
        byte[] changed = signed.clone();
        changed[producer + "<xmp:CreatorTool>".length()]++;
        assertThat(read(changed).seal().orElseThrow().state()).isEqualTo(SealCheck.State.BROKEN);
    }

    /** A later part of a file may replace pages without touching what was signed (ISO 32000-1, 7.5.6). */
    @Test
    void whatIsAddedAfterTheSignatureBreaksIt() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed)) {
            document.getPage(0).setRotation(180);
            document.getPage(0).getCOSObject().setNeedToBeUpdated(true);
            document.setDocumentId(1L);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            assertThat(read(bytes.toByteArray()).seal().orElseThrow().state()).isEqualTo(SealCheck.State.BROKEN);
        }
    }

    /** What was replaced before the shop signed is the shop's own word; what somebody else signs names him. */
    @Test
    void theSignatureOfAnotherKeyNamesTheOtherCertificate() throws Exception {
        SigningKey other = SigningKey.of(KeyStoreFile.write(temp.resolve("other.p12"), "RSA", "Somebody"), PASSWORD);
        SealCheck seal = read(Seal.on(plain, other)).seal().orElseThrow();
        assertThat(seal.signer()).isEqualTo("Somebody");
        assertThat(seal.fingerprint())
                .isNotEqualTo(read(signed).seal().orElseThrow().fingerprint());
    }

    @Test
    void aSignatureInAnotherFormIsNotTakenForOneThatHolds() throws Exception {
        byte[] foreign = signed.clone();
        String text = new String(signed, StandardCharsets.ISO_8859_1);
        int contents = text.indexOf("/Contents <3082");
        Arrays.fill(foreign, contents + 11, contents + 31, (byte) '0');
        assertThat(read(foreign).seal().orElseThrow().state()).isEqualTo(SealCheck.State.FOREIGN);
    }

    @Test
    void aKeyStoreThatCannotBeUsedSaysWhyAndWhatToDo() throws Exception {
        Path shop = temp.resolve("shop.p12");
        assertThatThrownBy(() -> SigningKey.of(shop, "other".toCharArray()))
                .hasMessageContaining(
                        "shop.p12: does not open with this password. Write its password, and nothing else,");
        assertThatThrownBy(() -> SigningKey.of(shop, "Größe".toCharArray()))
                .hasMessageContaining("has a password with letters outside ASCII, which Java does not take");
        Path two = KeyStoreFile.write(temp.resolve("two.p12"), "RSA", "a", "b");
        assertThatThrownBy(() -> SigningKey.of(two, PASSWORD))
                .hasMessageContaining("holds 2 keys. Use a key store with one key");
        Path none = KeyStoreFile.write(temp.resolve("none.p12"), "RSA");
        assertThatThrownBy(() -> SigningKey.of(none, PASSWORD)).hasMessageContaining("holds no key");
        Path curve = KeyStoreFile.write(temp.resolve("curve.p12"), "EC", "a");
        assertThatThrownBy(() -> SigningKey.of(curve, PASSWORD)).hasMessageContaining("holds a key that is no RSA key");
        Path text = Files.writeString(temp.resolve("text.p12"), "no key store");
        assertThatThrownBy(() -> SigningKey.of(text, PASSWORD)).hasMessageContaining("cannot be read as a key store");
    }

    @Test
    void aCertificateIsHeldAgainstTheDateOfTheReport() throws Exception {
        key.requireValidOn(LocalDate.of(2026, 1, 1));
        assertThatThrownBy(() -> key.requireValidOn(LocalDate.of(2028, 1, 1)))
                .hasMessageContaining(
                        "the certificate of Werkstatt für Klänge is valid from 2026-01-01 to 2027-12-31, not on the report's date, 2028-01-01");
    }

    @Test
    void thePasswordIsTheFirstLineOfItsFile() {
        byte[] file = "Paper 7\r\nsecond\n".getBytes(StandardCharsets.UTF_8);
        assertThat(SigningKey.password(file)).containsExactly(KeyStoreFile.PASSWORD.toCharArray());
    }
}
