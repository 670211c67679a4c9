package clipwitness.report.page;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A built-in template as files to be changed: its pages, the style sheets, and the sentences, each of which is a comment until
 * somebody words it otherwise. The copy makes the same report as the original.
 */
public final class TemplateCopy {
    private static final List<String> PAGES =
            List.of(TemplateSource.PAGE, "report.css", "tables.html", "method.html", "method-de.html");
    private static final String STYLE = "base.css";
    private static final String GUIDE = "README.md";

    private static final String HEAD = """
            # The sentences of the report. Each line is a comment: take the # away before those that you word otherwise.
            # README.md beside this file explains holes and brackets. Lines that stay comments are worded by the program.

            """;

    private TemplateCopy() {}

    /**
     * The files by name.
     *
     * @param template one of the built-in templates
     */
    public static Map<String, byte[]> files(String template) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String page : PAGES) {
            TemplateSource.builtInFile(template, page).ifPresent(f -> files.put(page, f));
        }
        files.put(STYLE, common(STYLE));
        for (String language : TemplateSource.languages()) {
            String words = TemplateSource.wordsIn(language);
            files.put(words, commented(new String(common(words), StandardCharsets.UTF_8)));
        }
        TemplateSource.builtInFile("", GUIDE).ifPresent(f -> files.put(GUIDE, f));
        return files;
    }

    private static byte[] common(String file) {
        Optional<byte[]> bytes = TemplateSource.common(file);
        return bytes.orElseThrow(() -> new IllegalArgumentException("the program lacks its own file " + file));
    }

    private static byte[] commented(String sentences) {
        String lines = sentences
                .lines()
                .map(l -> l.isBlank() || l.startsWith("#") ? l : "# " + l)
                .collect(Collectors.joining("\n", HEAD, "\n"));
        return lines.getBytes(StandardCharsets.UTF_8);
    }
}
