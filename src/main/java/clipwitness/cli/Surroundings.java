package clipwitness.cli;

import clipwitness.fault.NativeNames;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Checks of the machine that must pass before anything else is done. */
final class Surroundings {
    /** Letters and marks that every style sheet uses. */
    private static final String ASCII = "azAZ09 .{}";

    private Surroundings() {}

    /**
     * What keeps the program from working.
     *
     * @param charset default charset of this machine
     * @param names   how names of files are handed over
     * @param args    the command line
     * @return a message; empty where nothing is wrong
     */
    static Optional<String> fault(Charset charset, NativeNames names, List<String> args) {
        if (!Arrays.equals(ASCII.getBytes(charset), ASCII.getBytes(StandardCharsets.US_ASCII))) {
            return Optional.of(
                    "Java was told that texts are " + charset.name()
                            + ": the library that lays out pages would misread its own style sheet. Start it without -Dfile.encoding, or with UTF-8.");
        }
        return args.stream()
                .flatMap(
                        arg -> names
                                .remedy(arg)
                                .map(remedy -> "'" + arg + "' cannot be read as it was typed. " + remedy + ".")
                                .stream())
                .findFirst();
    }
}
