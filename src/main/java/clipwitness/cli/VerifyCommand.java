package clipwitness.cli;

import clipwitness.batch.Verification;
import clipwitness.batch.Verifying;
import clipwitness.fault.InputException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code verify}: says whether a report still matches its data. */
@Command(
        name = "verify",
        description = {
            "Say whether a report still matches its data: signature, attachments, and with JOB its files, figures and pages.",
            "Exit status: 0 it does, 1 it does not, 2 that cannot be said. Nothing is written."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class VerifyCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @Parameters(index = "0", paramLabel = "REPORT.pdf", description = "A report that this program made.")
    private Path report;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "JOB",
            description = "The job folder that it was made from; without it the report is held against itself alone.")
    private Path job;

    VerifyCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            Verification verification = Verifying.of(report, Optional.ofNullable(job), Clipwitness.software(), bar);
            bar.clear();
            out.print(VerifyText.of(report, Optional.ofNullable(job), verification));
            if (verification.differ()) {
                return Clipwitness.NOT_PASSED;
            }
            return verification.isOpen() ? Clipwitness.TROUBLE : Clipwitness.OK;
        } catch (InputException e) {
            Messages.print(err, e.problems());
            return Clipwitness.TROUBLE;
        }
    }
}
