package clipwitness.cli;

import clipwitness.batch.Drafting;
import clipwitness.batch.Planning;
import clipwitness.batch.Unwritten;
import clipwitness.draft.DraftNotes;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import clipwitness.report.Destination;
import clipwitness.report.FolderSink;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code draft}: writes a job sheet and a captures table for a folder of exports, and the plan of what is to be captured. */
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

    @Option(
            names = "--plan",
            paramLabel = "PLAN.pdf",
            description = {
                "Write a page that says what to capture on the bench, how, and what such captures can show:",
                "for the sheet of the folder if it has one, else for the usual limits."
            })
    private Path plan;

    DraftCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            if (plan == null) {
                say(Drafting.of(folder, bar), bar);
            } else {
                plan(bar);
            }
            return Clipwitness.OK;
        } catch (InputException e) {
            Messages.print(err, e.problems());
            return Clipwitness.TROUBLE;
        }
    }

    private void say(Drafting.Drafted drafted, ReadingBar bar) {
        bar.clear();
        DraftNotes.of(drafted.draft()).forEach(out::println);
        drafted.left().forEach((file, why) -> out.println("not taken: " + file + " (" + why + ")"));
        out.println();
        out.println(folder.resolve(Job.SHEET_FILE));
        out.println(folder.resolve(Job.TABLE_FILE));
        err.println((drafted.draft().questions().isEmpty() ? "Look them through" : "Answer in them what is asked")
                + ", then make the report: clipwitness report " + quoted(folder.toString()));
    }

    /** A path as it is typed: with marks where it has blanks. */
    private static String quoted(String path) {
        return path.contains(" ") ? '"' + path + '"' : path;
    }

    private void plan(ReadingBar bar) throws InputException {
        Path page = plan.toAbsolutePath();
        try {
            if (!PagePlace.mayHold(page)) {
                throw new InputException(List.of(PagePlace.taken(plan, "--plan")));
            }
            byte[] bytes = planned(bar);
            new FolderSink(page.getParent(), Destination.PLAN)
                    .put(Map.of(page.getFileName().toString(), bytes));
            out.println(plan);
        } catch (IOException e) {
            throw new InputException(List.of(Unwritten.problem(plan, e, Destination.PLAN)));
        }
    }

    private byte[] planned(ReadingBar bar) throws InputException {
        if (Planning.hasSheet(folder)) {
            return Planning.page(folder, Clipwitness.software());
        }
        Optional<Drafting.Drafted> drafted = Drafting.ofAny(folder, bar);
        if (drafted.isEmpty()) {
            return Planning.usualPage(Clipwitness.software());
        }
        say(drafted.get(), bar);
        try {
            return Planning.page(folder, Clipwitness.software());
        } catch (InputException e) {
            out.println("the plan is for the usual limits, because the sheet has questions that are not answered yet");
            return Planning.usualPage(Clipwitness.software());
        }
    }
}
