package clipwitness.cli;

import clipwitness.batch.PairMaking;
import clipwitness.capture.InputException;
import clipwitness.capture.Problem;
import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.Unit;
import clipwitness.report.DrawerSheet;
import clipwitness.report.Ranking;
import clipwitness.report.RankingJson;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pair}: ranks traced devices into matched pairs. */
@Command(
        name = "pair",
        description =
                "Rank traced devices into matched pairs: of all ways, the one with the smallest sum of mismatches.",
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class PairCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "An export of one traced device.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    @Option(names = "--out", paramLabel = "FILE.pdf", description = "Write a page with all curves and the pairs.")
    private Path sheet;

    @Option(
            names = "--job",
            paramLabel = "JOB",
            description = "Say what each pair would clip at in this job's clipper, against the pair before.")
    private Path job;

    @Option(names = "--temperature", paramLabel = "T", description = "Temperature of the traces: 21 °C.")
    private String temperature;

    PairCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        PairMaking making = new PairMaking(files, celsius());
        making.problems().forEach(this::print);
        boolean trouble = !making.problems().isEmpty();
        try {
            Ranking ranking = making.ranking(Optional.ofNullable(job));
            out.print(json ? RankingJson.text(ranking) : PairText.of(ranking));
            if (sheet != null) {
                trouble |= !written(ranking);
            }
        } catch (InputException e) {
            e.problems().forEach(this::print);
            trouble = true;
        }
        return trouble ? Clipwitness.TROUBLE : Clipwitness.OK;
    }

    private boolean written(Ranking ranking) {
        if (!DrawerSheet.hasCurves(ranking)) {
            err.println(sheet + ": not written, because no device conducts.");
            return false;
        }
        try {
            Files.write(sheet, DrawerSheet.bytes(ranking, Clipwitness.software()));
            return true;
        } catch (IOException e) {
            err.println(sheet + ": the page could not be written (" + e.getMessage() + "). Choose another place.");
            return false;
        }
    }

    private OptionalDouble celsius() {
        if (temperature == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(
                    QuantityParser.parse(temperature, Unit.CELSIUS).value());
        } catch (QuantityFormatException e) {
            throw new CommandLine.ParameterException(spec.commandLine(), "--temperature: " + e.getMessage());
        }
    }

    private void print(Problem problem) {
        err.println(problem.message());
    }
}
