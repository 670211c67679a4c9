package clipwitness.report.evidence;

import java.math.BigInteger;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.List;

/**
 * A signature with what is needed to check it (RFC 5652, signed data without its content): RSA with PKCS #1 v1.5 over SHA-256, which gives the same
 * bytes for the same document, the certificates, and no time. The signed attributes are those that RFC 5652, 11 and RFC 5035 ask for.
 */
final class SignedMessage {
    private static final String DATA = "1.2.840.113549.1.7.1";
    private static final String SIGNED_DATA = "1.2.840.113549.1.7.2";
    private static final String CONTENT_TYPE = "1.2.840.113549.1.9.3";
    private static final String MESSAGE_DIGEST = "1.2.840.113549.1.9.4";
    private static final String SIGNING_CERTIFICATE = "1.2.840.113549.1.9.16.2.47";
    private static final String SHA_256 = "2.16.840.1.101.3.4.2.1";
    private static final String RSA = "1.2.840.113549.1.1.1";

    private final List<X509Certificate> chain;
    private final byte[] digest;

    /**
     * A message.
     *
     * @param chain  the signer's certificate, then those of its issuers
     * @param digest SHA-256 of what is signed
     */
    SignedMessage(List<X509Certificate> chain, byte[] digest) {
        this.chain = List.copyOf(chain);
        this.digest = digest.clone();
    }

    /** What the key has to sign (RFC 5652, 5.4). */
    byte[] toBeSigned() {
        return Der.set(attributes());
    }

    /** The whole message with the signature in it. */
    byte[] with(byte[] signature) {
        X509Certificate signer = chain.get(0);
        byte[] sha256 = Der.sequence(Der.identifier(SHA_256));
        byte[] info = Der.sequence(
                Der.integer(BigInteger.ONE),
                Der.sequence(signer.getIssuerX500Principal().getEncoded(), Der.integer(signer.getSerialNumber())),
                sha256,
                Der.numberedSet(0, attributes()),
                Der.sequence(Der.identifier(RSA), Der.nothing()),
                Der.octets(signature));
        byte[] data = Der.sequence(
                Der.integer(BigInteger.ONE),
                Der.set(sha256),
                Der.sequence(Der.identifier(DATA)),
                Der.numberedSet(0, chain.stream().map(SignedMessage::encoded).toArray(byte[][]::new)),
                Der.set(info));
        return Der.sequence(Der.identifier(SIGNED_DATA), Der.numbered(0, data));
    }

    private byte[][] attributes() {
        byte[] certificate = Der.sequence(Der.sequence(Der.sequence(Der.octets(sha256(encoded(chain.get(0)))))));
        return new byte[][] {
            attribute(CONTENT_TYPE, Der.identifier(DATA)),
            attribute(MESSAGE_DIGEST, Der.octets(digest)),
            attribute(SIGNING_CERTIFICATE, certificate)
        };
    }

    private static byte[] attribute(String type, byte[] value) {
        return Der.sequence(Der.identifier(type), Der.set(value));
    }

    static byte[] encoded(X509Certificate certificate) {
        try {
            return certificate.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalArgumentException("a certificate that was read cannot be written", e);
        }
    }

    static byte[] sha256(byte[] bytes) {
        return digest().digest(bytes);
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has it
            throw new IllegalStateException(impossible);
        }
    }
}
