package clipwitness.cli;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.report.evidence.SigningKey;
import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Opens the shop's key store. Its password comes from a file or from the terminal, never from the command line, which others can read. */
final class ShopKey {
    private static final int LONGEST = 1 << 12;

    private ShopKey() {}

    /**
     * The key.
     *
     * @param keyStore     key store
     * @param passwordFile file with the password; null: the terminal asks for it
     * @throws InputException if one of the two cannot be read
     */
    static SigningKey of(Path keyStore, Path passwordFile) throws InputException {
        if (!Files.isRegularFile(keyStore)) {
            throw new InputException(
                    ErrorCode.NO_SUCH_FILE,
                    Origin.of(keyStore.toString()),
                    "there is no such file",
                    "Name the key store of the shop, a file that ends in .p12 or .pfx");
        }
        char[] password = passwordFile == null ? asked(keyStore) : inFile(passwordFile);
        try {
            return SigningKey.of(keyStore, password);
        } finally {
            Arrays.fill(password, ' ');
        }
    }

    @SuppressWarnings(
            "SystemConsoleNull") // from Java 22 on there is a console without a terminal: it gives no password, then
    private static char[] asked(Path keyStore) throws InputException {
        Console console = System.console();
        char[] password = console == null ? null : console.readPassword("Password of %s: ", keyStore);
        if (password == null) {
            throw new InputException(
                    ErrorCode.BAD_KEY,
                    Origin.of("--sign"),
                    "the password of " + keyStore + " cannot be asked for, because this is no terminal",
                    "Write the password into a file that only you can read, and name it with --sign-password-file");
        }
        return password;
    }

    private static char[] inFile(Path file) throws InputException {
        try {
            if (Files.size(file) <= LONGEST) {
                return SigningKey.password(Files.readAllBytes(file));
            }
        } catch (IOException e) {
            // said below
        }
        throw new InputException(
                ErrorCode.BAD_KEY,
                Origin.of(file.toString()),
                "cannot be read as a password file",
                "Name a file whose first line is the password of the key store");
    }
}
