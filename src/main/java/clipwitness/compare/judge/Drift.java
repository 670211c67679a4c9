package clipwitness.compare.judge;

import clipwitness.job.CaptureRow;
import clipwitness.job.JobSheet;
import clipwitness.measure.Contribution;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What differs between two occasions at the bench and is no work on the unit: the stimulus, the range, the temperature, how the instrument was
 * coupled and how it acquired. It becomes a doubt and a contribution to the uncertainty, never harm.
 */
public final class Drift {
    private final TemperatureChange temperature;

    Drift(TemperatureChange temperature) {
        this.temperature = temperature;
    }

    /** Drift at the bench of a job sheet. */
    public static Drift of(JobSheet sheet) {
        double outputGain = sheet.clipper().map(c -> c.outputGain().orElse(1)).orElse(1.0);
        return new Drift(new TemperatureChange(sheet.bench().temperature(), outputGain));
    }

    /** Contributions to a change of a figure in its unit: of the level, and as far as ranges differ of the gain. */
    List<Contribution> of(StateAtCondition from, StateAtCondition to, ItemValue figure) {
        return switch (figure.item()) {
            case LEVEL -> ofLevel(from, to);
            case GAIN -> RangeChange.ofLevel(from, to).stream().toList();
            default -> List.of();
        };
    }

    private List<Contribution> ofLevel(StateAtCondition from, StateAtCondition to) {
        return Stream.of(StimulusChange.ofLevel(from, to), RangeChange.ofLevel(from, to), temperature.ofLevel(from, to))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What the second setting has to be doubted for beside the first. */
    List<Doubt> doubts(StateAtCondition from, StateAtCondition to) {
        return Stream.of(
                        StimulusChange.doubt(from, to),
                        temperature.doubt(from, to),
                        otherwise(from, to, Word.COUPLING, CaptureRow::coupling),
                        otherwise(from, to, Word.ACQUISITION, CaptureRow::acquisition))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Doubt> otherwise(
            StateAtCondition from, StateAtCondition to, Word what, Function<CaptureRow, Optional<String>> column) {
        Optional<String> before = column.apply(from.replicates().get(0).row());
        Optional<String> after = column.apply(to.replicates().get(0).row());
        if (before.isEmpty() || after.isEmpty() || before.equals(after)) {
            return Optional.empty();
        }
        return Optional.of(Doubt.of(
                Severity.WARNING,
                DoubtReason.NOT_COMPARABLE_INSTRUMENT,
                Argument.word(what),
                Argument.name(after.get()),
                Argument.name(before.get()),
                from.name()));
    }
}
