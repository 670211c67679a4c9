package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The German sentences are complete: each English one has its own, and fills the same holes. */
class GermanWordsTest {
    private static final WordBundle ENGLISH = WordBundle.builtIn();
    private static final WordBundle GERMAN = german();

    /** The bench plan is printed in English alone. */
    private static final String PLAN = "plan.";

    private static WordBundle german() {
        try {
            return WordBundle.of(Files.readString(Path.of("report-templates/common/words-de.properties")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everySentenceIsThere() {
        Set<String> wanted =
                ENGLISH.names().stream().filter(n -> !n.startsWith(PLAN)).collect(Collectors.toSet());
        assertThat(GERMAN.names()).containsExactlyInAnyOrderElementsOf(wanted);
    }

    @Test
    void everySentenceSaysAllThatTheEnglishOneSays() {
        for (String name : GERMAN.names()) {
            assertThat(GERMAN.holesOf(name)).as(name).isEqualTo(ENGLISH.holesOf(name));
        }
    }
}
