package clipwitness.cli;

import clipwitness.batch.Ready;
import clipwitness.compare.result.ReadyResult;
import clipwitness.fault.InputException;
import clipwitness.report.data.ReadyJson;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code ready}: says, before the unit is opened, whether the captures before the work are good enough. */
@Command(
        name = "ready",
        description = {
            "Before the unit is opened: say how small a change the captures before the work can show, and what is missing.",
            "Exit status: 0 good enough, 1 not yet, 2 something could not be read."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class ReadyCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(paramLabel = "JOB", description = "A job folder; only states with role before need captures.")
    private Path job;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    ReadyCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            ReadyResult result = Ready.of(job, bar);
            bar.clear();
            out.print(json ? ReadyJson.text(result) : ReadyText.of(result));
            return result.sufficient() ? Clipwitness.OK : Clipwitness.NOT_PASSED;
        } catch (InputException e) {
            Messages.print(err, e.problems());
            return Clipwitness.TROUBLE;
        }
    }
}
