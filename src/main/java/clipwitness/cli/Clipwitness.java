package clipwitness.cli;

import clipwitness.batch.load.Exhausted;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.Nearest;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as a function: arguments in, exit status out, text on two writers. */
public final class Clipwitness {
    /** Exit status: done, and no comparison failed or stayed undecided. */
    static final int OK = 0;

    /** Exit status: a comparison failed or stayed undecided. */
    static final int NOT_PASSED = 1;

    /** Exit status: wrong usage, or something could not be read or reported. */
    static final int TROUBLE = 2;

    private final CommandLine line;
    private final PrintWriter out;
    private final PrintWriter err;

    /**
     * The program.
     *
     * @param out where results go
     * @param err where everything else goes
     */
    public Clipwitness(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
        line = new CommandLine(new Root())
                .addSubcommand(new ReportCommand(out, err))
                .addSubcommand(new LookCommand(out, err))
                .addSubcommand(new DraftCommand(out, err))
                .addSubcommand(new ReadyCommand(out, err))
                .addSubcommand(new PairCommand(out, err))
                .addSubcommand(new TemplateCommand(out, err))
                .addSubcommand(new VerifyCommand(out, err))
                .registerConverter(Path.class, PathArgument::of)
                .setExpandAtFiles(false)
                .setOut(out)
                .setErr(err)
                .setUsageHelpAutoWidth(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setExitCodeExceptionMapper(e -> TROUBLE);
        line.setParameterExceptionHandler((fault, args) ->
                isUnknownCommand(fault) ? unknownCommand(args[0]) : wrongCall(UnknownOption.insteadOf(fault)));
    }

    /** The commands with their options, for what is made of them: completion and manual page. */
    CommandLine commands() {
        return line;
    }

    private boolean isUnknownCommand(ParameterException fault) {
        return fault instanceof UnmatchedArgumentException unmatched
                && fault.getCommandLine() == line
                && !unmatched.isUnknownOption();
    }

    private int unknownCommand(String word) {
        List<String> known = List.copyOf(line.getSubcommands().keySet());
        line.getErr()
                .println(ErrorCode.WRONG_CALL.after("Unknown command '" + word + "'. "
                        + Nearest.slipOf(word, known)
                                .map(k -> "Did you mean " + k + "? ")
                                .orElse("")
                        + "Commands are " + String.join(", ", known.subList(0, known.size() - 1)) + " and "
                        + known.get(known.size() - 1) + "; --help says what they do."));
        return TROUBLE;
    }

    private int wrongCall(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        err.println(ErrorCode.WRONG_CALL.after(fault.getMessage()));
        if (!UnmatchedArgumentException.printSuggestions(fault, err)) {
            command.usage(err);
        }
        return TROUBLE;
    }

    /**
     * Runs one command.
     *
     * @param args the command line
     * @return 0, 1 or 2
     */
    public int run(String... args) {
        int status = status(args);
        if (out.checkError()) {
            err.println(ErrorCode.NOT_WRITTEN.after(
                    "standard output: not all that was to be printed could be written there. Is the disk full, or was the"
                            + " output closed?"));
            return TROUBLE;
        }
        return status;
    }

    private int status(String... args) {
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) { // an error is no verdict either
            Messages.print(err, Exhausted.problem(args[0], e).stream().toList());
            return TROUBLE;
        } catch (Error e) {
            e.printStackTrace(err);
            return TROUBLE;
        }
    }

    /** Version line of every command. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {software()};
        }
    }

    /** Name and version of the program, as results and reports carry them. */
    static String software() {
        String version = Clipwitness.class.getPackage().getImplementationVersion();
        return "clipwitness " + (version == null ? "development" : version);
    }

    @Command(
            name = "clipwitness",
            description =
                    "Before/after reports on the clipping stage of guitar and bass effects, from scope and tracer exports.",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class)
    private static final class Root implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            throw new ParameterException(
                    spec.commandLine(),
                    "Name a command: report makes a report, look says what an export holds, draft begins a job of a folder of exports,"
                            + " ready whether what was captured before the work is good enough,"
                            + " pair ranks traced devices into pairs, template copies a template of the report, to be changed,"
                            + " verify says whether a report still matches its data");
        }
    }
}
