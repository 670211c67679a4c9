package clipwitness.cli;

import clipwitness.batch.PairMaking;
import clipwitness.batch.Unwritten;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.DrawerSheet;
import clipwitness.report.FolderSink;
import clipwitness.report.data.Ranking;
import clipwitness.report.data.RankingJson;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
        OptionalDouble celsius = OptionValue.temperature(spec, "--temperature", temperature);
        List<Problem> problems = new ArrayList<>();
        try (ReadingBar bar = ReadingBar.onTerminal(err)) {
            PairMaking making = new PairMaking(files, celsius, bar);
            problems.addAll(making.problems());
            Optional<Ranking> ranking = ranking(making, problems);
            bar.clear();
            Messages.print(err, making.notes());
            ranking.ifPresent(r -> out.print(json ? RankingJson.text(r) : PairText.of(r)));
            if (sheet != null && ranking.isPresent()) {
                write(ranking.get()).ifPresent(problems::add);
            }
        }
        Messages.print(err, problems);
        return problems.isEmpty() ? Clipwitness.OK : Clipwitness.TROUBLE;
    }

    private Optional<Ranking> ranking(PairMaking making, List<Problem> problems) {
        try {
            return Optional.of(making.ranking(Optional.ofNullable(job)));
        } catch (InputException e) {
            problems.addAll(e.problems());
            return Optional.empty();
        }
    }

    private Optional<Problem> write(Ranking ranking) {
        if (!DrawerSheet.hasCurves(ranking)) {
            return Optional.of(new Problem(
                    ErrorCode.NO_CURVE,
                    Origin.of(sheet.toString()),
                    "the page is not written, because no device conducts",
                    ""));
        }
        Path page = sheet.toAbsolutePath();
        try {
            if (!PagePlace.mayHold(page)) {
                return Optional.of(PagePlace.taken(sheet));
            }
            FolderSink sink = new FolderSink(page.getParent());
            sink.requireFree(List.of(page.getFileName().toString()), files);
            sink.put(Map.of(page.getFileName().toString(), DrawerSheet.bytes(ranking, Clipwitness.software())));
            return Optional.empty();
        } catch (InputException e) {
            return Optional.of(e.problems().get(0));
        } catch (IOException e) {
            return Optional.of(Unwritten.problem(sheet, e));
        }
    }
}
