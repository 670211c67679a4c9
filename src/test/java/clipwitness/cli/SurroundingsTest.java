package clipwitness.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clipwitness.fault.NativeNames;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SurroundingsTest {
    private static final NativeNames UTF_8 = new NativeNames(StandardCharsets.UTF_8);

    private static Optional<String> fault(Charset charset, NativeNames names, String... args) {
        return Surroundings.fault(charset, names, List.of(args));
    }

    @Test
    void aDefaultCharsetThatIsNoAsciiIsRefused() {
        assertEquals(
                Optional.of(
                        "Java was told that texts are UTF-16: the library that lays out pages would misread its own style sheet. "
                                + "Start it without -Dfile.encoding, or with UTF-8."),
                fault(StandardCharsets.UTF_16, UTF_8, "report", "job"));
    }

    @Test
    void usualCharsetsAreFine() {
        for (Charset charset :
                List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1, StandardCharsets.US_ASCII)) {
            assertEquals(Optional.empty(), fault(charset, UTF_8, "report", "Gerät"));
        }
    }

    @Test
    void aLostLetterOfAnArgumentNamesTheLocale() {
        assertEquals(
                Optional.of(
                        "'J\ufffdb' cannot be read as it was typed. The locale of this terminal (US-ASCII) has no such letters. "
                                + "Choose one that has them, for example LC_ALL=C.UTF-8, and run the program again."),
                fault(StandardCharsets.UTF_8, new NativeNames(StandardCharsets.US_ASCII), "report", "J\ufffdb"));
    }
}
