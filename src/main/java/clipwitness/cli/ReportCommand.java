package clipwitness.cli;

import clipwitness.batch.Batch;
import clipwitness.batch.JobOutcome;
import clipwitness.batch.ReportOptions;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** {@code report}: makes the report of each job. */
@Command(
        name = "report",
        description = {
            "Make the report of each job: N.pdf, N-results.json and N-results.csv.",
            "Exit status: 0 all judged comparisons passed, 1 one failed or stayed undecided, 2 something could not be reported."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class ReportCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "JOB", arity = "1..*", description = "A job folder, or a folder of job folders.")
    private List<Path> jobs = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the results (default: JOB/report).")
    private Path folder;

    @Option(
            names = "--template",
            paramLabel = "NAME|DIR",
            description =
                    "Template instead of the sheet's: customer, bench, or a folder. Each further one makes N-TEMPLATE.pdf.")
    private List<String> templates = new ArrayList<>();

    @Option(
            names = "--page-time",
            paramLabel = "SECONDS",
            defaultValue = "60",
            description = "Longest time for the making of one PDF (default: ${DEFAULT-VALUE}).")
    private int pageTime;

    @Option(
            names = "--pages",
            paramLabel = "N",
            defaultValue = "400",
            description = "Most pages of one PDF (default: ${DEFAULT-VALUE}).")
    private int pages;

    @Option(
            names = "--sign",
            paramLabel = "KEYSTORE.p12",
            description = "Sign each PDF with the shop's own key, from a key store (PKCS #12).")
    private Path keyStore;

    @Option(
            names = "--sign-password-file",
            paramLabel = "FILE",
            description =
                    "File whose first line is the password of the key store; without it the terminal asks for it.")
    private Path passwordFile;

    ReportCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        if (templates.contains("")) {
            throw new ParameterException(
                    spec.commandLine(), "--template is empty; name a built-in template or a template folder");
        }
        ReportOptions options = new ReportOptions(Optional.ofNullable(folder), templates, Clipwitness.software())
                .within(Duration.ofSeconds(atLeast1("--page-time", pageTime)), atLeast1("--pages", pages));
        if (keyStore == null && passwordFile != null) {
            throw new ParameterException(spec.commandLine(), "--sign-password-file goes with --sign");
        }
        try {
            return run(keyStore == null ? options : options.signedWith(ShopKey.of(keyStore, passwordFile)));
        } catch (InputException e) {
            Messages.print(err, e.problems());
            return Clipwitness.TROUBLE;
        }
    }

    private int run(ReportOptions options) {
        List<JobOutcome> outcomes;
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            outcomes = new Batch(options, (outcome, place, all) -> ended(outcome, all, bar), bar).run(jobs);
        }
        if (outcomes.size() > 1) {
            out.print(ClosingTable.of(outcomes));
        }
        return outcomes.stream().mapToInt(ReportCommand::status).max().orElse(Clipwitness.TROUBLE);
    }

    private int atLeast1(String option, int value) {
        if (value < 1) {
            throw new ParameterException(spec.commandLine(), option + " must be 1 or more but is " + value);
        }
        return value;
    }

    /** Says how a job ended, at once: whoever stops a batch knows what is done. */
    private void ended(JobOutcome outcome, int all, ReadingBar bar) {
        problems(outcome, bar);
        result(outcome);
        if (all > 1 && outcome instanceof JobOutcome.Failed) {
            out.println(outcome.folder() + ": " + ClosingTable.ended(outcome));
        }
        out.flush();
    }

    private void problems(JobOutcome outcome, ReadingBar bar) {
        bar.clear();
        if (outcome instanceof JobOutcome.Failed failed) {
            failed.problems().forEach(p -> err.println(place(failed, p)));
        }
        if (outcome instanceof JobOutcome.Reported reported) {
            reported.warnings().forEach(p -> err.println("Warning: " + place(reported, p)));
        }
    }

    /** A message, with the job's folder before it where the message names only a file within. */
    private static String place(JobOutcome outcome, Problem problem) {
        String folder = outcome.folder().toString();
        String message = problem.message();
        return message.startsWith(folder) ? message : folder + ": " + message;
    }

    private void result(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Reported reported) {
            for (Comparison c : reported.results().comparisons()) {
                out.println(reported.results().job().sheet().report().number() + ": " + c.to() + " against " + c.from()
                        + ": " + c.verdict().code());
            }
            reported.written().forEach(out::println);
        }
    }

    private static int status(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Reported reported) {
            boolean bad = reported.results().comparisons().stream()
                    .anyMatch(c -> c.verdict() == Decision.FAIL || c.verdict() == Decision.UNDECIDED);
            return bad ? Clipwitness.NOT_PASSED : Clipwitness.OK;
        }
        return Clipwitness.TROUBLE;
    }
}
