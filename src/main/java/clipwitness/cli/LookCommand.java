package clipwitness.cli;

import clipwitness.batch.Looking;
import clipwitness.fault.InputException;
import clipwitness.quantity.Unit;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.data.Look;
import clipwitness.report.data.LookJson;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code look}: says what an export holds and whether it is fit to measure. */
@Command(
        name = "look",
        description = "Say what an export holds, how its layout was read, and whether it is fit to measure.",
        mixinStandardHelpOptions = true,
        versionProvider = Clipwitness.Version.class)
final class LookCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "An export.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    @Option(names = "--interval", paramLabel = "TIME", description = "Sample interval where the file has none: 2 us.")
    private String interval;

    @Option(names = "--unit", paramLabel = "V|A", description = "Unit of the values where the file has none.")
    private String unit;

    @Option(
            names = "--scale",
            paramLabel = "FACTOR",
            description = "Volts or amperes a count: 0.02, 20 mV; of a sound file, at full scale: 2.5 V.")
    private String scale;

    LookCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        ReadingOptions options = new ReadingOptions(
                OptionValue.withUnitAbove0(spec, "--interval", interval, Unit.SECOND),
                parsedUnit(),
                OptionValue.above0(spec, "--scale", scale, parsedUnit().orElse(Unit.VOLT)));
        List<Look> looks = new ArrayList<>();
        boolean trouble = false;
        for (Path file : files) {
            try (ReadingBar bar = ReadingBar.onTerminal(err)) {
                looks.add(Looking.at(file, options, bar));
            } catch (InputException e) {
                trouble = true;
                Messages.print(err, e.problems());
            }
        }
        if (json) {
            out.print(LookJson.text(looks));
        } else {
            looks.forEach(l -> out.print(LookText.of(l)));
        }
        return trouble ? Clipwitness.TROUBLE : Clipwitness.OK;
    }

    private Optional<Unit> parsedUnit() {
        if (unit == null) {
            return Optional.empty();
        }
        if (unit.equals("V")) {
            return Optional.of(Unit.VOLT);
        }
        if (unit.equals("A")) {
            return Optional.of(Unit.AMPERE);
        }
        throw new CommandLine.ParameterException(spec.commandLine(), "--unit must be V or A but is " + unit);
    }
}
