package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderSinkTest {
    @TempDir
    private Path temp;

    @Test
    void documentsAppearUnderTheirNamesAndNothingElse() throws IOException {
        Path out = temp.resolve("a/b");
        new FolderSink(out).put(documents("N-results.json", "{}", "N.pdf", "%PDF-"));
        assertThat(names(out)).containsExactly("N-results.json", "N.pdf");
        assertThat(out.resolve("N.pdf")).hasContent("%PDF-");
    }

    @Test
    void anEarlierReportIsReplaced() throws IOException {
        new FolderSink(temp).put(documents("N.pdf", "old"));
        new FolderSink(temp).put(documents("N.pdf", "new"));
        assertThat(temp.resolve("N.pdf")).hasContent("new");
    }

    @Test
    void aFailingRunLeavesTheEarlierReportAndNothingOfItsOwn() throws IOException {
        new FolderSink(temp).put(documents("N-results.json", "old", "N.pdf", "old"));
        Files.createDirectories(temp.resolve("N-results.csv/in-the-way"));
        assertThatThrownBy(() -> new FolderSink(temp)
                        .put(documents("N-results.csv", "new", "N-results.json", "new", "N.pdf", "new")))
                .isInstanceOf(IOException.class);
        assertThat(names(temp)).containsExactly("N-results.csv", "N-results.json", "N.pdf");
        assertThat(temp.resolve("N.pdf")).hasContent("old");
        assertThat(temp.resolve("N-results.json")).hasContent("old");
    }

    @Test
    void aFolderThatAFailingRunMadeIsRemoved() throws IOException {
        Path out = temp.resolve("a/b");
        assertThatThrownBy(() -> new FolderSink(out).put(documents("no/such/folder.pdf", "x")))
                .isInstanceOf(IOException.class);
        assertThat(names(temp)).isEmpty();
    }

    private static Map<String, byte[]> documents(String... namesAndTexts) {
        Map<String, byte[]> documents = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            documents.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        return documents;
    }

    private static Stream<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList().stream();
        }
    }
}
