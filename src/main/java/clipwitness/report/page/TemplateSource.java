package clipwitness.report.page;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A template: a folder with {@code report.html}, what that names, and perhaps {@code words.properties}. The program's own
 * templates lie on the class path; any other folder is used as it stands. What a template does not have itself is taken from the
 * program's folder {@code common}.
 */
public final class TemplateSource {
    private static final List<String> BUILT_IN = List.of("customer", "bench");
    private static final String ROOT = "/report-templates/";
    private static final String COMMON = ROOT + "common/";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** The file that every template has. */
    public static final String PAGE = "report.html";

    private final String name;
    private final Optional<Path> folder;

    private TemplateSource(String name, Optional<Path> folder) {
        this.name = name;
        this.folder = folder;
    }

    /** The template of the sheet that goes into the drawer with the parts. */
    public static TemplateSource drawer() {
        return new TemplateSource("drawer", Optional.empty());
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
                Origin.of(nameOrPath),
                "there is no template of this name and no folder with a file " + PAGE,
                "Built-in templates are " + String.join(" and ", BUILT_IN)
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
        return folder.map(f -> f.resolve(file).toString()).orElse("report-templates/" + name + "/" + file);
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
        return folder.isPresent() ? inFolder(folder.get(), file) : onClassPath(ROOT + name + "/", file);
    }

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
