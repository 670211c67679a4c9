package clipwitness.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NativeNamesTest {
    @Test
    void underTheLocaleCAnUmlautCannotNameAFile() {
        NativeNames c = new NativeNames(StandardCharsets.US_ASCII);
        Optional<String> wanted = Optional.of("The locale of this terminal (US-ASCII) has no such letters. "
                + "Choose one that has them, for example LC_ALL=C.UTF-8, and run the program again");
        assertEquals(wanted, c.remedy("Gerät"));
        assertEquals(wanted, c.remedy("Ger\ufffd\ufffdt"));
        assertEquals(Optional.empty(), c.remedy("unit"));
    }

    @Test
    void underUtf8TheLocaleIsNeverTheCause() {
        NativeNames utf8 = new NativeNames(StandardCharsets.UTF_8);
        assertEquals(Optional.empty(), utf8.remedy("Gerät"));
        assertEquals(Optional.empty(), utf8.remedy("Ger\ufffdt"));
    }
}
