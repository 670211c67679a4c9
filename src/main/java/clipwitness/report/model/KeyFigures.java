package clipwitness.report.model;

import clipwitness.capture.Condition;
import clipwitness.compare.JobResults;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.report.words.Figures;
import clipwitness.report.words.MainCondition;
import clipwitness.report.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The small table of the first page: what a customer hears, all states side by side. */
final class KeyFigures {
    private static final List<WaveformQuantity> SHOWN = List.of(
            WaveformQuantity.RMS,
            WaveformQuantity.THD,
            WaveformQuantity.HIGH_HARMONICS,
            WaveformQuantity.CLIP_ASYMMETRY,
            WaveformQuantity.CREST_FACTOR);

    private final Wording wording;
    private final Cells cells;

    KeyFigures(Wording wording) {
        this.wording = wording;
        this.cells = new Cells(wording);
    }

    Table of(JobResults results) {
        Optional<Condition> main = MainCondition.of(results);
        return main.map(c -> at(c, results)).orElse(new Table("", "", List.of(), List.of()));
    }

    private Table at(Condition condition, JobResults results) {
        Figures figures = new Figures(results);
        List<State> states = results.job().sheet().states().stream()
                .filter(s -> figures.capture(s.name(), condition).isPresent())
                .toList();
        List<Row> rows = new ArrayList<>();
        for (WaveformQuantity quantity : SHOWN) {
            row(quantity, condition, states, figures).ifPresent(rows::add);
        }
        return new Table(
                wording.say("key.title", "condition", wording.condition(condition)),
                wording.say("table.quantity"),
                states.stream().map(State::label).toList(),
                rows);
    }

    private Optional<Row> row(WaveformQuantity wanted, Condition condition, List<State> states, Figures figures) {
        WaveformQuantity quantity = wanted;
        if (wanted == WaveformQuantity.CLIP_ASYMMETRY && none(wanted, condition, states, figures)) {
            quantity = WaveformQuantity.ASYMMETRY;
        }
        if (none(quantity, condition, states, figures)) {
            return Optional.empty();
        }
        WaveformQuantity shown = quantity;
        List<Optional<Measured>> row =
                states.stream().map(s -> figures.of(s.name(), condition, shown)).toList();
        return Optional.of(cells.row(wording.say("value." + shown.key()), row));
    }

    private static boolean none(WaveformQuantity quantity, Condition condition, List<State> states, Figures figures) {
        return states.stream()
                .allMatch(s -> figures.of(s.name(), condition, quantity)
                        .flatMap(Measured::asValue)
                        .isEmpty());
    }
}
