package clipwitness.cli;

import clipwitness.batch.Drafting;
import clipwitness.draft.DraftNotes;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code draft}: writes a job sheet and a captures table for a folder of exports. */
@Command(
        name = "draft",
        description = {
            "Write a job sheet and a captures table for a folder of exports: what each shows, as far as names and contents tell.",
            "What cannot be told stands in them as a question. Nothing is written where one of the two is there."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class DraftCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(paramLabel = "FOLDER", description = "A folder that holds exports, at any depth.")
    private Path folder;

    DraftCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            Drafting.Drafted drafted = Drafting.of(folder, bar);
            bar.clear();
            DraftNotes.of(drafted.draft()).forEach(out::println);
            drafted.left().forEach((file, why) -> out.println("not taken: " + file + " (" + why + ")"));
            out.println();
            out.println(folder.resolve(Job.SHEET_FILE));
            out.println(folder.resolve(Job.TABLE_FILE));
            return Clipwitness.OK;
        } catch (InputException e) {
            Messages.print(err, e.problems());
            return Clipwitness.TROUBLE;
        }
    }
}
