package clipwitness.batch.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/** SHA-256 digests (FIPS 180-4), hexadecimal. */
public final class Sha256 {
    private Sha256() {}

    /** Begins a digest. */
    public static MessageDigest start() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has it
            throw new IllegalStateException(impossible);
        }
    }

    /** Ends a digest. */
    public static String end(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Digest of bytes. */
    public static String of(byte[] bytes) {
        MessageDigest digest = start();
        digest.update(bytes);
        return end(digest);
    }

    /** Digest of a file. */
    public static String of(Path file) throws IOException {
        MessageDigest digest = start();
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
        }
        return end(digest);
    }

    /** One digest over named digests: the digest of lines {@code name, space, digest}, sorted by name. */
    public static String over(Map<String, String> digests) {
        MessageDigest digest = start();
        new TreeMap<>(digests)
                .forEach((name, sha) -> digest.update((name + " " + sha + "\n").getBytes(StandardCharsets.UTF_8)));
        return end(digest);
    }
}
