package clipwitness.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program as a function: arguments in, exit status out, text on two writers. */
public final class Clipwitness {
    /** Exit status: done, and nothing speaks against the unit. */
    static final int OK = 0;

    /** Exit status: a comparison failed or stayed undecided. */
    static final int NOT_PASSED = 1;

    /** Exit status: wrong usage, or something could not be read or reported. */
    static final int TROUBLE = 2;

    private final CommandLine line;

    /**
     * The program.
     *
     * @param out where results go
     * @param err where everything else goes
     */
    public Clipwitness(PrintWriter out, PrintWriter err) {
        line = new CommandLine(new Root())
                .addSubcommand(new ReportCommand(out, err))
                .addSubcommand(new LookCommand(out, err))
                .addSubcommand(new ReadyCommand(out, err))
                .addSubcommand(new PairCommand(out, err))
                .setOut(out)
                .setErr(err)
                .setUsageHelpAutoWidth(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setExitCodeExceptionMapper(e -> TROUBLE);
    }

    /**
     * Runs one command.
     *
     * @param args the command line
     * @return 0, 1 or 2
     */
    public int run(String... args) {
        return line.execute(args);
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
            throw new CommandLine.ParameterException(
                    spec.commandLine(),
                    "Name a command: report makes a report, look says what an export holds,"
                            + " ready whether what was captured before the work is good enough,"
                            + " pair ranks traced devices into pairs");
        }
    }
}
