package clipwitness.report.evidence;

import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.List;
import javax.naming.InvalidNameException;
import javax.naming.ldap.LdapName;
import javax.naming.ldap.Rdn;

/** How a certificate is told from others. */
final class CertificateName {
    private static final String COMMON_NAME = "CN";

    private CertificateName() {}

    /** The common name of its owner; where it has none, all that is said of the owner. */
    static String of(X509Certificate certificate) {
        String whole = certificate.getSubjectX500Principal().getName();
        try {
            List<Rdn> parts = new LdapName(whole).getRdns();
            return parts.stream()
                    .filter(r -> r.getType().equalsIgnoreCase(COMMON_NAME))
                    .map(r -> String.valueOf(r.getValue()))
                    .findFirst()
                    .orElse(whole);
        } catch (InvalidNameException e) {
            return whole;
        }
    }

    /** SHA-256 of the certificate, in pairs of digits. */
    static String fingerprint(X509Certificate certificate) {
        return HexFormat.ofDelimiter(":")
                .withUpperCase()
                .formatHex(SignedMessage.sha256(SignedMessage.encoded(certificate)));
    }
}
