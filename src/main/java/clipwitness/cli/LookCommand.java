package clipwitness.cli;

import clipwitness.batch.Looking;
import clipwitness.fault.InputException;
import clipwitness.quantity.ColumnUnits;
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

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            description = "Unit of the values where the file has none, or one a column: mV,mA.")
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
        Optional<ColumnUnits> units = parsedUnit();
        ReadingOptions options = new ReadingOptions(
                OptionValue.withUnitAbove0(spec, "--interval", interval, Unit.SECOND),
                units,
                OptionValue.above0(
                        spec, "--scale", scale, units.map(u -> u.first().unit()).orElse(Unit.VOLT)));
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

    private Optional<ColumnUnits> parsedUnit() {
        Optional<ColumnUnits> units = Optional.ofNullable(unit).flatMap(ColumnUnits::parse);
        if (unit != null && units.isEmpty()) {
            throw misuse("--unit must be V or A, with a prefix where there is one, or a unit for each column, as mV,mA,"
                    + " but is " + unit);
        }
        if (scale != null && !units.map(ColumnUnits::takesScale).orElse(true)) {
            throw misuse("--scale goes with one unit without a prefix, V or A, but --unit is " + unit);
        }
        return units;
    }

    private CommandLine.ParameterException misuse(String what) {
        return new CommandLine.ParameterException(spec.commandLine(), what);
    }
}
