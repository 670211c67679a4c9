package clipwitness;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The list of libraries that is packed into the jar, held against the libraries themselves: whoever adds one, or takes a version whose
 * licence or notice differs, is told here.
 */
class ThirdPartyTest {
    private static final Path META_INF = Path.of("src/main/resources/META-INF");
    private static final Path LIST = META_INF.resolve("THIRD-PARTY.md");
    private static final Path OWN_LICENCE = Path.of("LICENSE");
    private static final Pattern ROW = Pattern.compile("\\| ([a-z0-9-]+) \\| [^|]+ \\| [^|]+ \\| (`[^|]+) \\|");
    private static final Pattern TEXT = Pattern.compile("`([^`]+)`");
    private static final Pattern JAR = Pattern.compile("(.+?)-[0-9][^/]*\\.jar");

    /** What the tests run on; it never goes into the jar. */
    private static final Pattern TEST_TOOL = Pattern.compile(
            "(junit|surefire[a-z]*|maven-surefire|common-java5|common-junit[a-z0-9]*|archunit|commonmark|assertj|byte-buddy|opentest4j|apiguardian|jspecify|org\\.jacoco|jazzer|jmh"
                    // the validator of PDF/A and PDF/UA, the checker of signatures, and what they need
                    + "|validation-model|parser|pdf-model|core|verapdf-xmp-core|feature-reporting|metadata-fixer|rhino|jaxb-api|jaxb-impl"
                    + "|jaxb-core|javax\\.activation-api|stax-utils|jackson-databind|jackson-annotations|bcpkix-jdk18on|bcprov-jdk18on|bcutil-jdk18on)\\b.*");

    @Test
    void everyLibraryHasARowAndEveryRowALibrary() throws IOException {
        assertThat(rows().keySet()).isEqualTo(libraries().keySet());
    }

    @Test
    void everyTextThatARowNamesIsPackedAndNoOther() throws IOException {
        List<Path> named = rows().values().stream()
                .flatMap(List::stream)
                .distinct()
                .sorted()
                .toList();
        assertThat(named).allSatisfy(text -> assertThat(text).isNotEmptyFile());
        try (Stream<Path> packed = Files.list(META_INF.resolve("licenses"))) {
            assertThat(packed).allSatisfy(text -> assertThat(named).contains(text));
        }
    }

    @Test
    void theRowOfALibraryNamesTheTextOfEachLicenceFileInItsJar() throws IOException {
        Map<String, List<Path>> rows = rows();
        for (Map.Entry<String, Path> library : libraries().entrySet()) {
            StringBuilder texts = new StringBuilder();
            for (Path text : rows.getOrDefault(library.getKey(), List.of())) {
                texts.append(plain(Files.readString(text, ISO_8859_1)));
            }
            for (String licence : entries(library.getValue(), "META-INF/[^/]*LICENSE[^/]*")) {
                assertThat(texts.toString()).as(library.getKey()).contains(licence);
            }
        }
    }

    @Test
    void theNoticeOfEachLibraryStandsInTheList() throws IOException {
        String list = plain(Files.readString(LIST, ISO_8859_1));
        for (Map.Entry<String, Path> library : libraries().entrySet()) {
            for (String notice : entries(library.getValue(), "META-INF/NOTICE[^/]*")) {
                assertThat(list).as(library.getKey()).contains(notice);
            }
        }
    }

    @Test
    void everyFontStandsInTheListWithItsLicence() throws IOException {
        String list = Files.readString(LIST);
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/fonts"))) {
            List<String> names = files.map(p -> p.getFileName().toString()).toList();
            assertThat(names)
                    .filteredOn(n -> n.endsWith(".ttf"))
                    .isNotEmpty()
                    .allSatisfy(n -> assertThat(list).contains(n));
            assertThat(names)
                    .filteredOn(n -> n.endsWith("-LICENSE.txt"))
                    .hasSize(2)
                    .allSatisfy(n -> assertThat(list).contains("`fonts/" + n + "`"));
        }
    }

    /** Name of each library, and the texts its row names. */
    private static Map<String, List<Path>> rows() throws IOException {
        Map<String, List<Path>> rows = new TreeMap<>();
        for (MatchResult row : matches(ROW, Files.readString(LIST))) {
            rows.put(
                    row.group(1),
                    matches(TEXT, row.group(2)).stream()
                            .map(m -> m.group(1).equals("LICENSE") ? OWN_LICENCE : META_INF.resolve(m.group(1)))
                            .toList());
        }
        return rows;
    }

    private static List<MatchResult> matches(Pattern pattern, String text) {
        return pattern.matcher(text).results().toList();
    }

    /** The jars that this test runs with, those of the tests left out, by name without version. */
    private static Map<String, Path> libraries() throws IOException {
        Map<String, Path> libraries = new TreeMap<>();
        for (URL manifest :
                Collections.list(Thread.currentThread().getContextClassLoader().getResources("META-INF/MANIFEST.MF"))) {
            if (manifest.openConnection() instanceof JarURLConnection jar) {
                Path file = Path.of(URI.create(jar.getJarFileURL().toString()));
                Matcher name = JAR.matcher(file.getFileName().toString());
                if (name.matches() && !TEST_TOOL.matcher(name.group(1)).matches()) {
                    libraries.put(name.group(1), file);
                }
            }
        }
        return libraries;
    }

    /** The texts of the files in a jar whose name matches. */
    private static List<String> entries(Path library, String name) throws IOException {
        List<String> texts = new ArrayList<>();
        try (JarFile jar = new JarFile(library.toFile())) {
            for (JarEntry e :
                    jar.stream().filter(e -> e.getName().matches(name)).toList()) {
                texts.add(plain(new String(jar.getInputStream(e).readAllBytes(), ISO_8859_1)));
            }
        }
        return texts;
    }

    /** A text, read byte by byte, without its line breaks; http and https are one. */
    private static String plain(String text) {
        return Arrays.stream(text.replace("https:", "http:").strip().split("\\s+"))
                .collect(Collectors.joining(" "));
    }
}
