package clipwitness.cli;

import clipwitness.batch.Unwritten;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Nearest;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.FolderSink;
import clipwitness.report.page.TemplateCopy;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code template}: copies a built-in template out, to be changed. */
@Command(
        name = "template",
        description =
                "Copy a built-in template into a new folder, to change its logo, colours, fonts, wording or language.",
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class TemplateCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(
            index = "0",
            paramLabel = "NAME",
            completionCandidates = BuiltIn.class,
            description = "customer or bench.")
    private String name;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "A folder that does not exist yet, or is empty.")
    private Path folder;

    /** What a shell completes as the name. */
    private static final class BuiltIn implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return TemplateSource.builtIn().iterator();
        }
    }

    TemplateCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Optional<Problem> problem = copy();
        Messages.print(err, problem.stream().toList());
        return problem.isEmpty() ? Clipwitness.OK : Clipwitness.TROUBLE;
    }

    private Optional<Problem> copy() {
        if (!TemplateSource.builtIn().contains(name)) {
            return Optional.of(unknown());
        }
        try {
            if (!isFree()) {
                return Optional.of(new Problem(
                        ErrorCode.PLACE_TAKEN,
                        Origin.of(folder.toString()),
                        "something is there already, and it is left as it is",
                        "Name a folder that does not exist yet, or an empty one"));
            }
            Map<String, byte[]> files = TemplateCopy.files(name);
            new FolderSink(folder).put(files);
            files.keySet().forEach(file -> out.println(folder.resolve(file)));
            err.println("Name the copy on a job sheet, report: {template: PATH}, or with --template PATH.");
            return Optional.empty();
        } catch (InputException e) {
            return Optional.of(e.problems().get(0));
        } catch (IOException e) {
            return Optional.of(Unwritten.problem(folder, e));
        }
    }

    private Problem unknown() {
        List<String> known = TemplateSource.builtIn();
        return new Problem(
                ErrorCode.NO_TEMPLATE,
                Origin.of(name),
                "there is no built-in template of this name",
                Nearest.slipOf(name, known)
                                .map(k -> "Did you mean '" + k + "'? ")
                                .orElse("") + "Built-in templates are " + String.join(" and ", known));
    }

    private boolean isFree() throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }
}
