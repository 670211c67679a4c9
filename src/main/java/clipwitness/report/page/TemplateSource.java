package clipwitness.report.page;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Nearest;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A template: a folder with {@code report.html}, what that names, and perhaps {@code words.properties}. The program's own
 * templates lie on the class path; any other folder is used as it stands. What a template does not have itself is taken from the
 * program's folder {@code common}. A file {@code NAME-de.EXT} takes the place of {@code NAME.EXT} in a report in German, and so on.
 */
public final class TemplateSource {
    private static final List<String> BUILT_IN = List.of("customer", "bench");

    /** Languages of the program's own templates. */
    private static final List<String> LANGUAGES = List.of("en", "de");

    private static final String WORDS = "words.properties";
    private static final String MACROS = "macros.html";
    private static final List<String> COMMON_FILES = List.of("base.css", MACROS);
    private static final String ROOT = "/report-templates/";
    private static final String COMMON = ROOT + "common/";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** The file that every template has. */
    public static final String PAGE = "report.html";

    private final String name;
    private final Optional<Path> folder;
    private final String language;

    private TemplateSource(String name, Optional<Path> folder) {
        this(name, folder, LANGUAGES.get(0));
    }

    private TemplateSource(String name, Optional<Path> folder, String language) {
        this.name = name;
        this.folder = folder;
        this.language = language;
    }

    /** Names of the program's own templates of reports. */
    public static List<String> builtIn() {
        return BUILT_IN;
    }

    /** Languages of the program's own templates, tags after BCP 47. */
    public static List<String> languages() {
        return LANGUAGES;
    }

    /**
     * The same template for reports in a language.
     *
     * @param tag tag after BCP 47; which country's language it is does not matter
     */
    public TemplateSource in(String tag) {
        return new TemplateSource(name, folder, Locale.forLanguageTag(tag).getLanguage());
    }

    /** The name of a file for the language of the report: {@code words-de.properties}. */
    private String inLanguage(String file) {
        return inLanguage(file, language);
    }

    private static String inLanguage(String file, String language) {
        int dot = file.lastIndexOf('.');
        return dot < 0 ? file : file.substring(0, dot) + "-" + language + file.substring(dot);
    }

    /** The program's own file of sentences in one of its languages. */
    static String wordsIn(String language) {
        return language.equals(LANGUAGES.get(0)) ? WORDS : inLanguage(WORDS, language);
    }

    /** A file of a built-in template, or of the folder that holds them all. */
    static Optional<byte[]> builtInFile(String template, String file) {
        return onClassPath(template.isEmpty() ? ROOT : ROOT + template + "/", file);
    }

    /** The file that is used for a name: the one for the language of the report where there is one. */
    private String used(String file) {
        String variant = inLanguage(file);
        return exactly(variant).isPresent() ? variant : file;
    }

    /** The template of the sheet that goes into the drawer with the parts. */
    public static TemplateSource drawer() {
        return new TemplateSource("drawer", Optional.empty());
    }

    /** The template of the bench plan. */
    public static TemplateSource plan() {
        return new TemplateSource("plan", Optional.empty());
    }

    /** The template of the page that sums up many jobs. */
    public static TemplateSource summary() {
        return new TemplateSource("summary", Optional.empty());
    }

    /**
     * Finds a template.
     *
     * @param nameOrPath name of a built-in template, or a folder: relative to the job folder, else to the working folder
     * @param jobFolder  folder of the job
     * @throws InputException if there is no such template
     */
    public static TemplateSource find(String nameOrPath, Path jobFolder) throws InputException {
        if (BUILT_IN.contains(nameOrPath)) {
            return new TemplateSource(nameOrPath, Optional.empty());
        }
        for (Path candidate : List.of(jobFolder.resolve(nameOrPath), Path.of(nameOrPath))) {
            if (Files.isRegularFile(candidate.resolve(PAGE))) {
                Path folder = real(candidate);
                return new TemplateSource(folder.getFileName().toString(), Optional.of(folder));
            }
        }
        throw new InputException(
                ErrorCode.NO_TEMPLATE,
                Origin.of(nameOrPath),
                "there is no template of this name and no folder with a file " + PAGE,
                Nearest.slipOf(nameOrPath, BUILT_IN)
                                .map(n -> "Did you mean '" + n + "'? ")
                                .orElse("")
                        + "Built-in templates are " + String.join(" and ", BUILT_IN)
                        + "; a folder is looked for in the job folder and where the program runs");
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Name of the built-in template, or of the folder. */
    public String name() {
        return name;
    }

    /** Name of one of its files as messages write it. */
    public String nameOf(String file) {
        String used = used(file);
        return folder.map(f -> f.resolve(used).toString()).orElse("built-in template " + name + ", " + used);
    }

    /** Its folder; empty for one of the program's own. */
    public Optional<Path> folder() {
        return folder;
    }

    /** Whether it is one of the program's own. */
    public boolean isBuiltIn() {
        return folder.isEmpty();
    }

    /**
     * The first place in the template's own pages and style sheets where something is written.
     *
     * @param literal what is looked for; empty where nothing is known
     */
    public Origin placeOf(String literal) {
        for (String file : literal.isEmpty() ? List.<String>of() : ownFiles()) {
            int line = 1;
            for (String text : text(own(file)).orElse("").split("\\R", -1)) {
                if (text.contains(literal)) {
                    return Origin.of(nameOf(file), line);
                }
                line++;
            }
        }
        return Origin.of(nameOf(PAGE));
    }

    /** Pages of the template itself, and the program's page of macros. */
    List<String> pages() {
        return Stream.concat(Stream.of(MACROS), ownFiles().stream().filter(f -> f.endsWith(".html")))
                .distinct()
                .toList();
    }

    /** The page or style sheet that was probably meant. */
    Optional<String> fileLike(String wrong) {
        List<String> files = Stream.concat(COMMON_FILES.stream(), ownFiles().stream())
                .filter(f -> !f.equals(PAGE))
                .toList();
        return Nearest.slipOf(wrong, files);
    }

    /** Pages and style sheets of the template itself, the page first. */
    private List<String> ownFiles() {
        if (folder.isEmpty()) {
            return List.of(PAGE, "report.css");
        }
        try (Stream<Path> files = Files.list(folder.get())) {
            return Stream.concat(
                            Stream.of(PAGE),
                            files.map(f -> f.getFileName().toString())
                                    .filter(f -> f.endsWith(".html") || f.endsWith(".css"))
                                    .sorted())
                    .distinct()
                    .toList();
        } catch (IOException e) {
            return List.of(PAGE);
        }
    }

    /** A file of the template itself; empty where it has none of this name, or where the name leads out of the folder. */
    public Optional<byte[]> own(String file) {
        return exactly(used(file));
    }

    private Optional<byte[]> exactly(String file) {
        return folder.isPresent() ? inFolder(folder.get(), file) : onClassPath(ROOT + name + "/", file);
    }

    /**
     * The program's sentences in the language of the report, where they are in a file of their own.
     *
     * @return name of the file and its text
     */
    public Optional<WordFile> commonWords() {
        String file = inLanguage(WORDS);
        return text(common(file)).map(t -> new WordFile("built-in " + file, t, true));
    }

    /** The sentences that the template words otherwise: those for the language of the report where it has some. */
    public Optional<WordFile> ownWords() {
        boolean named = !used(WORDS).equals(WORDS);
        return text(own(WORDS)).map(t -> new WordFile(nameOf(WORDS), t, named));
    }

    /**
     * Sentences, as they are written.
     *
     * @param name name of the file, for messages
     * @param text its lines
     * @param ofReport whether its name says that they are in the language of the report
     */
    public record WordFile(String name, String text, boolean ofReport) {}

    /** A file of the template, else the program's common one. */
    public Optional<byte[]> any(String file) {
        Optional<byte[]> own = own(file);
        return own.isPresent() ? own : common(file);
    }

    /** A file that the program lends to every template. */
    public static Optional<byte[]> common(String file) {
        return onClassPath(COMMON, file);
    }

    /** The same as text, without the byte-order mark that some editors put before it. */
    public static Optional<String> text(Optional<byte[]> bytes) {
        return bytes.map(b -> new String(b, encoding(b)))
                .map(t -> t.startsWith(BYTE_ORDER_MARK) ? t.substring(BYTE_ORDER_MARK.length()) : t);
    }

    /** UTF-8, or UTF-16 where a mark says so. */
    private static Charset encoding(byte[] text) {
        boolean wide = text.length > 1
                && ((text[0] == (byte) 0xFF && text[1] == (byte) 0xFE)
                        || (text[0] == (byte) 0xFE && text[1] == (byte) 0xFF));
        return wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    }

    /** A file inside a folder, links followed; empty where there is none or it lies outside. */
    static Optional<byte[]> inFolder(Path folder, String file) {
        try {
            Path path = folder.resolve(file);
            boolean inside = Files.isRegularFile(path) && path.toRealPath().startsWith(folder.toRealPath());
            return inside ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
        } catch (java.nio.file.InvalidPathException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<byte[]> onClassPath(String root, String file) {
        if (file.contains("..")) {
            return Optional.empty();
        }
        try (InputStream in = TemplateSource.class.getResourceAsStream(root + file)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own file " + root + file + " cannot be read", e);
        }
    }
}
