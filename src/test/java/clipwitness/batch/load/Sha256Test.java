package clipwitness.batch.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class Sha256Test {
    @TempDir
    private Path temp;

    /** FIPS 180-4 example, message "abc", from the examples that NIST publishes with the standard. */
    @Test
    void digestOfAbcIsBa7816bf() throws IOException {
        Path file = Files.writeString(temp.resolve("abc"), "abc");
        assertThat(Sha256.of(file)).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void oneDigestOverAllDoesNotDependOnTheirOrderButOnEachNameAndDigest() {
        String both = Sha256.over(Map.of("a", "1", "b", "2"));
        assertThat(Sha256.over(Map.of("b", "2", "a", "1"))).isEqualTo(both);
        assertThat(Sha256.over(Map.of("b", "1", "a", "2"))).isNotEqualTo(both);
        assertThat(Sha256.over(Map.of("a", "1"))).isNotEqualTo(both);
    }
}
