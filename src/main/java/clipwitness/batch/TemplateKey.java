package clipwitness.batch;

import clipwitness.batch.load.Sha256;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What shows whether a report was made with the same template: the name, and of a template folder the digest of all its files. */
final class TemplateKey {
    private TemplateKey() {}

    /**
     * The keys of templates, in order.
     *
     * @throws IOException if a template folder cannot be read
     */
    static List<String> of(Task task) throws IOException {
        try {
            return task.templates().stream().map(TemplateKey::of).toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** The key of one template. */
    static String of(TemplateSource template) {
        return template.folder().map(f -> template.name() + " " + digest(f)).orElse(template.name());
    }

    private static String digest(Path folder) {
        Map<String, String> digests = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                digests.put(folder.relativize(file).toString().replace('\\', '/'), Sha256.of(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Sha256.over(digests);
    }
}
