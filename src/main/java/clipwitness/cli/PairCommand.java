package clipwitness.cli;

import clipwitness.batch.PairMaking;
import clipwitness.batch.Unwritten;
import clipwitness.capture.InputException;
import clipwitness.quantity.Unit;
import clipwitness.report.DrawerSheet;
import clipwitness.report.FolderSink;
import clipwitness.report.Ranking;
import clipwitness.report.RankingJson;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        PairMaking making = new PairMaking(files, OptionValue.of(spec, "--temperature", temperature, Unit.CELSIUS));
        Messages.print(err, making.problems());
        boolean trouble = !making.problems().isEmpty();
        try {
            Ranking ranking = making.ranking(Optional.ofNullable(job));
            out.print(json ? RankingJson.text(ranking) : PairText.of(ranking));
            if (sheet != null) {
                trouble |= !written(ranking);
            }
        } catch (InputException e) {
            Messages.print(err, e.problems());
            trouble = true;
        }
        return trouble ? Clipwitness.TROUBLE : Clipwitness.OK;
    }

    private boolean written(Ranking ranking) {
        if (!DrawerSheet.hasCurves(ranking)) {
            err.println(sheet + ": not written, because no device conducts.");
            return false;
        }
        Path page = sheet.toAbsolutePath();
        try {
            new FolderSink(page.getParent())
                    .put(Map.of(page.getFileName().toString(), DrawerSheet.bytes(ranking, Clipwitness.software())));
            return true;
        } catch (IOException e) {
            Messages.print(err, List.of(Unwritten.problem(sheet, e)));
            return false;
        }
    }
}
