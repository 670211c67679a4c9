package clipwitness.report.evidence;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;

/**
 * Whether the signature of a document holds. The signed document is made again from what stands before the signature, with the signature as it is: only if
 * that gives the same bytes was nothing but a signature added, and nothing afterwards.
 *
 * @param state          what is known
 * @param signer         who signed, as the certificate says; empty where it cannot be read
 * @param fingerprint    SHA-256 of the certificate; empty where it cannot be read
 * @param validity       days between which the certificate is valid, for a sentence; empty where it cannot be read
 * @param unsignedLength bytes of the document before it was signed; 0 where that is not known
 */
public record SealCheck(State state, String signer, String fingerprint, String validity, int unsignedLength) {
    private static final byte[] END = "%%EOF\n".getBytes(StandardCharsets.US_ASCII);
    private static final int MOST_ENDS = 8;

    /** What is known of a signature. */
    public enum State {
        /** It is the signer's, over the whole document. */
        HOLDS,
        /** The document was changed after it was signed. */
        BROKEN,
        /** Another program made it, in a form that this one does not check. */
        FOREIGN
    }

    /** The last signature of a document. */
    static Optional<SealCheck> of(byte[] file, PDDocument document) {
        List<PDSignature> signatures = document.getSignatureDictionaries();
        return signatures.isEmpty() ? Optional.empty() : Optional.of(of(file, signatures.get(signatures.size() - 1)));
    }

    private static SealCheck of(byte[] file, PDSignature signature) {
        byte[] contents = signature.getContents();
        Optional<ReadMessage> message = contents == null ? Optional.empty() : ReadMessage.of(contents);
        if (message.isEmpty()) {
            String name = signature.getName();
            return new SealCheck(State.FOREIGN, name == null ? "" : name, "", "", 0);
        }
        int unsigned = message.get().isSignedOver(signedPart(file, signature))
                ? unsigned(file, message.get().signer(), contents)
                : 0;
        return new SealCheck(
                unsigned > 0 ? State.HOLDS : State.BROKEN,
                message.get().signer(),
                message.get().fingerprint(),
                message.get().validity(),
                unsigned);
    }

    private static byte[] signedPart(byte[] file, PDSignature signature) {
        try {
            return signature.getSignedContent(file);
        } catch (IOException | RuntimeException e) { // a range that leads out of the file
            return new byte[0];
        }
    }

    /** Length of the document to which the signature was added; 0 where no beginning of the file, signed so, gives the file. */
    private static int unsigned(byte[] file, String name, byte[] contents) {
        int ends = 0;
        for (int at = 0; at + END.length < file.length && ends < MOST_ENDS; at++) {
            if (Arrays.equals(file, at, at + END.length, END, 0, END.length)) {
                ends++;
                int length = at + END.length;
                if (givesAgain(file, length, name, contents)) {
                    return length;
                }
            }
        }
        return 0;
    }

    private static boolean givesAgain(byte[] file, int length, String name, byte[] contents) {
        try {
            return Arrays.equals(Seal.assembled(Arrays.copyOf(file, length), name, content -> contents), file);
        } catch (RuntimeException e) { // that beginning is no document
            return false;
        }
    }
}
