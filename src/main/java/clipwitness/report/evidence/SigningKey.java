package clipwitness.report.evidence;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A shop's own key with its certificates, from a key store file (PKCS #12, RFC 7292). */
public final class SigningKey {
    private static final String ALGORITHM = "RSA";
    private static final long LARGEST = 1 << 20;
    private static final char LAST_ASCII = 0x7F;

    private final PrivateKey key;
    private final List<X509Certificate> chain;

    private SigningKey(PrivateKey key, List<X509Certificate> chain) {
        this.key = key;
        this.chain = List.copyOf(chain);
    }

    /**
     * Reads the one key of a key store.
     *
     * @param file     key store
     * @param password its password, and that of the key
     * @throws InputException if there is no such key, or the password is another
     */
    public static SigningKey of(Path file, char[] password) throws InputException {
        for (char c : password) {
            if (c > LAST_ASCII) {
                throw fault(
                        file,
                        "has a password with letters outside ASCII, which Java does not take",
                        "Give it a password of plain letters and digits, with keytool -storepasswd");
            }
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (Files.size(file) > LARGEST) {
                throw fault(
                        file,
                        "is too large for a key store",
                        "Name the key store of the shop, a file that ends in .p12 or .pfx");
            }
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(in, password);
            return of(store, file, password);
        } catch (IOException e) {
            throw e.getCause() instanceof UnrecoverableKeyException
                    ? fault(
                            file,
                            "does not open with this password",
                            "Write its password, and nothing else, into the password file")
                    : fault(
                            file,
                            "cannot be read as a key store (PKCS #12)",
                            "Name the key store of the shop, a file that ends in .p12 or .pfx");
        } catch (GeneralSecurityException e) {
            throw fault(
                    file,
                    "cannot be used: " + e.getMessage(),
                    "Make a key store with an RSA key, for example with keytool -genkeypair -keyalg RSA -storetype PKCS12");
        }
    }

    private static SigningKey of(KeyStore store, Path file, char[] password)
            throws GeneralSecurityException, InputException {
        List<String> names = new ArrayList<>();
        for (String alias : Collections.list(store.aliases())) {
            if (store.isKeyEntry(alias)) {
                names.add(alias);
            }
        }
        if (names.size() != 1) {
            throw fault(
                    file,
                    "holds " + (names.isEmpty() ? "no key" : names.size() + " keys"),
                    "Use a key store with one key in it");
        }
        List<X509Certificate> chain = new ArrayList<>();
        for (Certificate c : store.getCertificateChain(names.get(0))) {
            chain.add((X509Certificate) c);
        }
        if (!(store.getKey(names.get(0), password) instanceof PrivateKey key)
                || !key.getAlgorithm().equals(ALGORITHM)) {
            throw fault(
                    file,
                    "holds a key that is no RSA key",
                    "Make one with keytool -genkeypair -keyalg RSA: its signatures repeat byte by byte");
        }
        return new SigningKey(key, chain);
    }

    private static InputException fault(Path file, String what, String remedy) {
        return new InputException(ErrorCode.BAD_KEY, Origin.of(file.toString()), what, remedy);
    }

    /**
     * Holds the certificate against a report's date.
     *
     * @throws InputException if it was not valid on that day
     */
    public void requireValidOn(LocalDate day) throws InputException {
        X509Certificate c = chain.get(0);
        LocalDate from = c.getNotBefore().toInstant().atZone(ZoneOffset.UTC).toLocalDate();
        LocalDate to = c.getNotAfter().toInstant().atZone(ZoneOffset.UTC).toLocalDate();
        if (day.isBefore(from) || day.isAfter(to)) {
            throw new InputException(
                    ErrorCode.BAD_KEY,
                    Origin.of("--sign"),
                    "the certificate of " + name() + " is valid from " + from + " to " + to
                            + ", not on the report's date, " + day,
                    "Sign with a key whose certificate is valid on that day, or leave --sign out");
        }
    }

    /** Name of the certificate. */
    public String name() {
        return CertificateName.of(chain.get(0));
    }

    /** Whether a report carries the signature of this key, and it holds. */
    public boolean hasSigned(PaperFile report) {
        return report.seal()
                .filter(s -> s.state() == SealCheck.State.HOLDS)
                .filter(s -> s.fingerprint().equals(CertificateName.fingerprint(chain.get(0))))
                .isPresent();
    }

    List<X509Certificate> chain() {
        return chain;
    }

    /** Signs; the same content gives the same bytes. */
    byte[] sign(byte[] content) {
        SignedMessage message = new SignedMessage(chain, SignedMessage.sha256(content));
        try {
            Signature signature = Signature.getInstance("SHA256withRSA");
            signature.initSign(key);
            signature.update(message.toBeSigned());
            return message.with(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key that was read cannot sign", e);
        }
    }

    /** The first line of a password file, without its line end. */
    public static char[] password(byte[] file) {
        char[] all = new String(file, java.nio.charset.StandardCharsets.UTF_8).toCharArray();
        int end = 0;
        while (end < all.length && all[end] != '\n' && all[end] != '\r') {
            end++;
        }
        char[] password = Arrays.copyOf(all, end);
        Arrays.fill(all, ' ');
        return password;
    }
}
