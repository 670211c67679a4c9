package clipwitness.report.evidence;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** A report that was read again. Nothing of it is written anywhere, and no name in it is taken for the name of a file. */
public final class PaperFile {
    private static final long LARGEST = 256L << 20;
    private static final int PART_OF_MEMORY = 6;
    private static final String OWN = "clipwitness ";
    private static final String REMEDY = "Name a PDF that this program made, as it came from there";

    private final byte[] bytes;
    private final String software;
    private final String identity;
    private final Attached attached;
    private final Optional<SealCheck> seal;

    private PaperFile(byte[] bytes, PDDocument document) {
        this.bytes = bytes;
        this.software = Optional.ofNullable(document.getDocumentInformation().getProducer())
                .orElse("");
        this.identity = identity(document);
        this.attached = Attached.to(document);
        this.seal = SealCheck.of(bytes, document);
    }

    /**
     * Reads a report.
     *
     * @param file any file
     * @throws InputException if it cannot be read, or is no report of this program
     */
    public static PaperFile of(Path file) throws InputException {
        byte[] bytes = bytes(file);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            if (document.isEncrypted()) {
                throw encrypted(file);
            }
            PaperFile paper = new PaperFile(bytes, document);
            if (!paper.software.startsWith(OWN)) {
                throw fault(ErrorCode.NOT_A_REPORT, file, "is no report of this program, or a damaged one");
            }
            return paper;
        } catch (InvalidPasswordException e) {
            throw encrypted(file);
        } catch (IOException
                | RuntimeException
                | StackOverflowError e) { // the library throws many kinds over damaged files
            throw fault(ErrorCode.NOT_A_REPORT, file, "is damaged: it cannot be read as a PDF");
        } catch (OutOfMemoryError e) {
            throw fault(ErrorCode.OUT_OF_MEMORY, file, "needs more memory than the program has");
        }
    }

    private static byte[] bytes(Path file) throws InputException {
        try {
            if (!Files.isRegularFile(file)) {
                throw fault(
                        Files.exists(file) ? ErrorCode.NOT_A_FILE : ErrorCode.NO_SUCH_FILE,
                        file,
                        Files.exists(file) ? "is no file" : "there is no such file");
            }
            long most = Math.min(LARGEST, Runtime.getRuntime().maxMemory() / PART_OF_MEMORY);
            if (Files.size(file) > most) {
                throw fault(
                        ErrorCode.NOT_A_REPORT,
                        file,
                        "is larger than any report: more than " + most / 1_000_000 + " MB");
            }
            byte[] bytes = Files.readAllBytes(file);
            if (bytes.length < 5 || bytes[0] != '%' || bytes[1] != 'P' || bytes[2] != 'D' || bytes[3] != 'F') {
                throw fault(ErrorCode.NOT_A_REPORT, file, "is no PDF");
            }
            return bytes;
        } catch (IOException e) {
            throw fault(ErrorCode.UNREADABLE, file, "cannot be read");
        }
    }

    private static InputException encrypted(Path file) {
        return fault(ErrorCode.NOT_A_REPORT, file, "is encrypted, which a report of this program never is");
    }

    private static InputException fault(ErrorCode code, Path file, String what) {
        return new InputException(code, Origin.of(file.toString()), what, REMEDY);
    }

    private static String identity(PDDocument document) {
        return document.getDocument().getTrailer().getDictionaryObject(COSName.ID) instanceof COSArray pair
                        && pair.size() > 0
                        && pair.getObject(0) instanceof COSString first
                ? HexFormat.of().formatHex(first.getBytes())
                : "";
    }

    /** Name and version of the program that made it. */
    public String software() {
        return software;
    }

    /** Identity of the document, hexadecimal: the beginning of the digest of the inputs. */
    public String identity() {
        return identity;
    }

    /** Attachments by name. */
    public Map<String, byte[]> attachments() {
        return Collections.unmodifiableMap(attached.files());
    }

    /** What is wrong with attachments, a clause each that begins with the name. */
    public List<String> faults() {
        return attached.faults();
    }

    /** The signature, where there is one. */
    public Optional<SealCheck> seal() {
        return seal;
    }

    /** The document as it was before it was signed; the whole file where it was not, or where another program signed it. */
    public byte[] unsigned() {
        int length = seal.map(SealCheck::unsignedLength).filter(n -> n > 0).orElse(bytes.length);
        return java.util.Arrays.copyOf(bytes, length);
    }
}
