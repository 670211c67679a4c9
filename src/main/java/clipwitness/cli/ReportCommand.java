package clipwitness.cli;

import clipwitness.batch.Batch;
import clipwitness.batch.BatchSummary;
import clipwitness.batch.JobOutcome;
import clipwitness.batch.ReportOptions;
import clipwitness.fault.InputException;
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
            "Make the report of each job: N.pdf, N-results.json and N-results.csv; of many jobs with --out summary.html and summary.csv, too.",
            "Exit status: 0 all judged comparisons passed, 1 one failed or stayed undecided, 2 something could not be reported."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class ReportCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(
            paramLabel = "JOB",
            arity = "1..*",
            description = "A job folder, or a folder of job folders, nested or not.")
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

    @Option(
            names = "--changed-only",
            description =
                    "Leave a report as it is that would come out the same: same inputs, templates and version of the program.")
    private boolean changedOnly;

    @Option(names = "--quiet", description = "Say nothing but what went wrong.")
    private boolean quiet;

    @Option(names = "--verbose", description = "Say each step, too.")
    private boolean verbose;

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
                .within(Duration.ofSeconds(atLeast1("--page-time", pageTime)), atLeast1("--pages", pages))
                .changedOnly(changedOnly);
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
        ReadingBar reading = quiet ? new ReadingBar(err, false) : ReadingBar.onTerminal(err);
        try (ReportConsole console = new ReportConsole(out, err, talk(), reading)) {
            outcomes = new Batch(options, console, reading).run(jobs);
        }
        BatchSummary.Ended summary = BatchSummary.write(outcomes, options);
        Messages.print(err, summary.problems());
        summary.leftover().ifPresent(p -> err.println("Warning: " + p.line()));
        if (outcomes.size() > 1 && !quiet) {
            out.print(ClosingTable.of(outcomes));
            summary.written().forEach(out::println);
        }
        return summary.problems().isEmpty() ? status(outcomes) : Clipwitness.TROUBLE;
    }

    private ReportConsole.Talk talk() {
        if (quiet && verbose) {
            throw new ParameterException(spec.commandLine(), "--quiet and --verbose contradict each other");
        }
        if (quiet) {
            return ReportConsole.Talk.QUIET;
        }
        return verbose ? ReportConsole.Talk.VERBOSE : ReportConsole.Talk.USUAL;
    }

    private int atLeast1(String option, int value) {
        if (value < 1) {
            throw new ParameterException(spec.commandLine(), option + " must be 1 or more but is " + value);
        }
        return value;
    }

    private static int status(List<JobOutcome> outcomes) {
        return outcomes.stream().mapToInt(ReportCommand::status).max().orElse(Clipwitness.TROUBLE);
    }

    private static int status(JobOutcome outcome) {
        return outcome.said()
                .map(said -> said.notPassed() ? Clipwitness.NOT_PASSED : Clipwitness.OK)
                .orElse(Clipwitness.TROUBLE);
    }
}
