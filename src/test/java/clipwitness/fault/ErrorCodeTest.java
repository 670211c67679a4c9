package clipwitness.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each error says which row of the manual it belongs to. */
class ErrorCodeTest {
    private static final Pattern USE = Pattern.compile("ErrorCode\\.([A-Z_]+)");

    @Test
    void aMessageEndsInItsCode() {
        Problem problem = new Problem(
                ErrorCode.UNKNOWN_KEY, new Origin("job.yaml", 9, "stimulus"), "unknown key 'hz'", "Correct it");
        assertThat(problem.line()).isEqualTo("job.yaml, line 9, stimulus: unknown key 'hz'. Correct it [unknown-key]");
    }

    /** A code that nothing gives would be a row of the manual about nothing. */
    @Test
    void everyCodeIsGivenSomewhere() throws IOException {
        Set<String> all = Stream.of(ErrorCode.values()).map(Enum::name).collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            files.filter(f -> f.toString().endsWith(".java"))
                    .flatMap(f -> USE.matcher(text(f)).results())
                    .forEach(m -> all.remove(m.group(1)));
        }
        assertThat(all).isEmpty();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
