package clipwitness.fault;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Which names of files the locale of the terminal lets this program see. Under the locale C a Java program can name no file with a letter outside
 * ASCII, and receives such a letter of its command line as a replacement character.
 *
 * @param charset charset in which the system hands over names
 */
public record NativeNames(Charset charset) {
    private static final char REPLACEMENT = '\ufffd';

    /** Names as this system hands them over. */
    public static NativeNames here() {
        String name = System.getProperty("sun.jnu.encoding", "UTF-8");
        return new NativeNames(Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.UTF_8);
    }

    /**
     * What to do about a name that this locale cannot write.
     *
     * @param name a name, as it came from the command line or from a file
     * @return a sentence without full stop; empty where the locale is not the cause
     */
    public Optional<String> remedy(String name) {
        boolean unicode = charset.name().startsWith("UTF-");
        boolean lost = name.indexOf(REPLACEMENT) >= 0 || !charset.newEncoder().canEncode(name);
        return !unicode && lost
                ? Optional.of(
                        "The locale of this terminal (" + charset.name()
                                + ") has no such letters. Choose one that has them, for example LC_ALL=C.UTF-8, and run the program again")
                : Optional.empty();
    }
}
