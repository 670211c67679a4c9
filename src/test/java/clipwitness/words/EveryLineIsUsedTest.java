package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Each line of words.properties is named in the program or in a page, and each line that they name is there. */
class EveryLineIsUsedTest {
    private static final WordBundle WORDS = WordBundle.builtIn();
    private static final Pattern TEXT = Pattern.compile("\"([^\"\\n\\\\]*)\"");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([a-z][\\w.-]*)\"\\s*[,)]");
    private static final Pattern CONSTANT = Pattern.compile("^ +([A-Z][A-Z0-9_]*)(?=[(,;]|$)", Pattern.MULTILINE);
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    /** Texts of the program, and names of the lines that it asks for. */
    private static final Set<String> TEXTS = new HashSet<>();

    private static final Set<String> ASKED = new TreeSet<>();

    @BeforeAll
    static void read() throws IOException {
        for (Path file : files("src/main/java", ".java")) {
            String source = Files.readString(file);
            TEXT.matcher(source).results().forEach(m -> TEXTS.add(m.group(1)));
            SAID.matcher(source).results().forEach(m -> ASKED.add(m.group(1)));
            CONSTANT.matcher(source).results().forEach(m -> TEXTS.add(code(m.group(1))));
        }
        for (Path file : files("report-templates", ".html")) {
            SAID.matcher(Files.readString(file)).results().forEach(m -> ASKED.add(m.group(1)));
        }
        EveryPhraseHasItsLineTest.phrases().forEach(p -> ASKED.add(p.key()));
    }

    private static List<Path> files(String folder, String end) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(f -> f.toString().endsWith(end)).toList();
        }
    }

    /** A constant's name as codes are made of it. */
    private static String code(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Test
    void eachLineThatIsAskedForIsThere() {
        assertThat(ASKED).hasSizeGreaterThan(300).allMatch(WORDS::has);
    }

    @Test
    void noLineIsLeftOver() {
        assertThat(WORDS.names().stream()
                        .filter(n -> !n.equals("language"))
                        .filter(n -> !ASKED.contains(n))
                        .filter(n -> !isComposed(n)))
                .isEmpty();
    }

    /** Whether a name is a text of the program, or put together from one that holds its beginning, and codes. */
    private static boolean isComposed(String name) {
        if (TEXTS.contains(name)) {
            return true;
        }
        for (int dot = name.indexOf('.'); dot > 0; dot = name.indexOf('.', dot + 1)) {
            String head = name.substring(0, dot);
            boolean before = TEXTS.contains(head + ".") && areCodes(name.substring(dot + 1));
            boolean after = TEXTS.contains(head) && beginsWithText(name.substring(dot));
            if (before || after) {
                return true;
            }
        }
        return false;
    }

    /** Whether a rest such as {@code .beyond} is a text of the program as far as its next dot, and codes behind it. */
    private static boolean beginsWithText(String rest) {
        int dot = rest.indexOf('.', 1);
        return dot < 0
                ? TEXTS.contains(rest)
                : (TEXTS.contains(rest.substring(0, dot)) || TEXTS.contains(rest.substring(0, dot + 1)))
                        && areCodes(rest.substring(dot + 1));
    }

    private static boolean areCodes(String rest) {
        return Stream.of(rest.split("\\."))
                .allMatch(c -> TEXTS.contains(c)
                        || TEXTS.contains("." + c)
                        || TEXTS.contains(c + ".")
                        || NUMBER.matcher(c).matches());
    }
}
