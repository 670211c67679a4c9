package clipwitness.report.evidence;

import java.io.ByteArrayInputStream;
import java.security.GeneralSecurityException;
import java.security.Signature;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.interfaces.RSAPublicKey;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A signature as {@link SignedMessage} writes it, read back: whatever is written otherwise is not taken for one. */
final class ReadMessage {
    private static final int DIGEST = 32;
    private static final int SEQUENCE = 0x30;
    private static final int TWO_BYTES_OF_LENGTH = 0x82;

    private final List<X509Certificate> chain;
    private final byte[] signature;
    private final byte[] digest;

    private ReadMessage(List<X509Certificate> chain, byte[] signature, byte[] digest) {
        this.chain = List.copyOf(chain);
        this.signature = signature;
        this.digest = digest;
    }

    /**
     * Reads a signature.
     *
     * @param contents the message, zeros after it
     * @return empty where another program wrote it
     */
    static Optional<ReadMessage> of(byte[] contents) {
        int length = length(contents);
        if (length == 0) {
            return Optional.empty();
        }
        byte[] message = Arrays.copyOf(contents, length);
        List<X509Certificate> certificates = certificates(message);
        for (X509Certificate signer : certificates) {
            if (signer.getPublicKey() instanceof RSAPublicKey key) {
                List<X509Certificate> chain = new ArrayList<>(certificates);
                chain.remove(signer);
                chain.add(0, signer);
                Optional<ReadMessage> read =
                        of(chain, message, (key.getModulus().bitLength() + 7) / 8);
                if (read.isPresent()) {
                    return read;
                }
            }
        }
        return Optional.empty();
    }

    /** The signature is at the end; the digest is where it is in a message that is written with another digest. */
    private static Optional<ReadMessage> of(List<X509Certificate> chain, byte[] message, int signatureLength) {
        if (signatureLength >= message.length) {
            return Optional.empty();
        }
        byte[] signature = Arrays.copyOfRange(message, message.length - signatureLength, message.length);
        byte[] zero = new SignedMessage(chain, new byte[DIGEST]).with(signature);
        byte[] one = new SignedMessage(chain, filled((byte) 1)).with(signature);
        int at = Arrays.mismatch(zero, one);
        if (zero.length != message.length) {
            return Optional.empty();
        }
        byte[] digest = Arrays.copyOfRange(message, at, at + DIGEST);
        return Arrays.equals(new SignedMessage(chain, digest).with(signature), message)
                ? Optional.of(new ReadMessage(chain, signature, digest))
                : Optional.empty();
    }

    private static byte[] filled(byte value) {
        byte[] digest = new byte[DIGEST];
        Arrays.fill(digest, value);
        return digest;
    }

    /** Length that the outermost sequence states (X.690, 8.1.3), its head included; 0 where it states none, or more than there is. */
    private static int length(byte[] contents) {
        if (contents.length < 4 || contents[0] != SEQUENCE || (contents[1] & 0xFF) != TWO_BYTES_OF_LENGTH) {
            return 0;
        }
        int length = 4 + (contents[2] & 0xFF) * 256 + (contents[3] & 0xFF);
        return length <= contents.length ? length : 0;
    }

    private static List<X509Certificate> certificates(byte[] message) {
        try {
            return CertificateFactory.getInstance("X.509")
                    .generateCertPath(new ByteArrayInputStream(message), "PKCS7")
                    .getCertificates()
                    .stream()
                    .map(X509Certificate.class::cast)
                    .toList();
        } catch (GeneralSecurityException | RuntimeException e) {
            return List.of();
        }
    }

    /** Whether the signer's key made the signature, and made it over this content. */
    boolean isSignedOver(byte[] content) {
        try {
            Signature check = Signature.getInstance("SHA256withRSA");
            check.initVerify(chain.get(0).getPublicKey());
            check.update(new SignedMessage(chain, digest).toBeSigned());
            return check.verify(signature) && Arrays.equals(digest, SignedMessage.sha256(content));
        } catch (GeneralSecurityException e) {
            return false;
        }
    }

    /** Name of the signer. */
    String signer() {
        return CertificateName.of(chain.get(0));
    }

    /** SHA-256 of the signer's certificate. */
    String fingerprint() {
        return CertificateName.fingerprint(chain.get(0));
    }

    /** From which to which day the signer's certificate is valid. */
    String validity() {
        X509Certificate c = chain.get(0);
        return "from " + c.getNotBefore().toInstant().atZone(ZoneOffset.UTC).toLocalDate() + " to "
                + c.getNotAfter().toInstant().atZone(ZoneOffset.UTC).toLocalDate();
    }
}
