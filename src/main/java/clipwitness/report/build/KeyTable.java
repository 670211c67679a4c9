package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.StateValues;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.report.model.Block;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The small table of the first page: what a customer hears, a row a state. */
final class KeyTable {
    private final JobWording wording;

    KeyTable(JobWording wording) {
        this.wording = wording;
    }

    /**
     * The table.
     *
     * @param page condition of which the first page speaks
     */
    Table of(JobResults results, Optional<Condition> page) {
        return page.map(c -> at(c, results)).orElse(new Table("", "", List.of(), List.of()));
    }

    private Table at(Condition condition, JobResults results) {
        StateValues values = new StateValues(results);
        List<State> states = results.job().sheet().states().stream()
                .filter(s -> values.capture(s.name(), condition).isPresent())
                .toList();
        Cells cells = new Cells(wording);
        List<String> columns = new ArrayList<>();
        List<Block> blocks = new ArrayList<>();
        for (WaveformQuantity wanted : WaveformQuantity.onFirstPage()) {
            shown(wanted, condition, states, values).ifPresent(quantity -> {
                Block block = column(quantity, condition, states, values, cells);
                columns.add(block.titled(wording.say("value." + quantity.key())));
                blocks.add(block);
            });
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < states.size() && !blocks.isEmpty(); i++) {
            int row = i;
            rows.add(new Row(
                    wording.headed(states.get(i).name()),
                    "",
                    blocks.stream().map(b -> b.rows().get(row).cells().get(0)).toList(),
                    ""));
        }
        return new Table(
                wording.say("key.title", "condition", wording.named(condition)),
                wording.say("table.state"),
                columns,
                rows,
                cells.notes());
    }

    private static Block column(
            WaveformQuantity quantity, Condition condition, List<State> states, StateValues values, Cells cells) {
        return cells.block(
                states.stream().map(State::label).toList(),
                states.stream()
                        .map(s ->
                                List.of(values.of(s.name(), condition, quantity).map(m -> Told.figure(quantity, m))))
                        .toList(),
                false);
    }

    /** The quantity, or the asymmetry of the peaks where there is none of the clip levels; empty where no state has it. */
    private static Optional<WaveformQuantity> shown(
            WaveformQuantity wanted, Condition condition, List<State> states, StateValues values) {
        if (!none(wanted, condition, states, values)) {
            return Optional.of(wanted);
        }
        boolean peaks = wanted == WaveformQuantity.CLIP_ASYMMETRY
                && !none(WaveformQuantity.ASYMMETRY, condition, states, values);
        return peaks ? Optional.of(WaveformQuantity.ASYMMETRY) : Optional.empty();
    }

    private static boolean none(
            WaveformQuantity quantity, Condition condition, List<State> states, StateValues values) {
        return states.stream()
                .allMatch(s -> values.of(s.name(), condition, quantity)
                        .map(m -> Told.figure(quantity, m))
                        .flatMap(Measured::asValue)
                        .isEmpty());
    }
}
