package clipwitness.report.build;

import clipwitness.compare.rail.RailJudge;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.RailResult;
import clipwitness.job.JobSheet;
import clipwitness.job.Rail;
import clipwitness.job.RailReading;
import clipwitness.job.State;
import clipwitness.quantity.Quantity;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Cell;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.Amount;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Meter readings as they were written down, and what was decided about them: rails in rows, the expectation and the states in columns; many states make several tables. */
final class RailTable {
    private static final int STATES = 4;

    private final JobWording wording;
    private final JobSheet sheet;
    private final List<RailResult> results;

    RailTable(JobWording wording, JobSheet sheet) {
        this.wording = wording;
        this.sheet = sheet;
        this.results = new RailJudge(sheet).all();
    }

    List<Table> all() {
        List<State> states = sheet.states().stream()
                .filter(s -> sheet.rails().stream().anyMatch(r -> r.readings().containsKey(s.name())))
                .toList();
        if (sheet.rails().isEmpty()) {
            return List.of();
        }
        List<List<State>> parts = states.isEmpty() ? List.of(states) : Parts.of(states, STATES);
        return parts.stream().map(this::table).toList();
    }

    private Table table(List<State> states) {
        List<String> columns = new ArrayList<>();
        columns.add(wording.say("rails.expected"));
        states.forEach(s -> columns.add(wording.headed(s.name())));
        List<Row> rows = sheet.rails().stream().map(r -> row(r, states)).toList();
        return new Table(wording.say("rails.title"), wording.say("rails.corner"), columns, rows);
    }

    private Row row(Rail rail, List<State> states) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(rail.expected().map(this::stated).orElse("")));
        states.forEach(s ->
                cells.add(Cell.of(Optional.ofNullable(rail.readings().get(s.name()))
                        .map(this::read)
                        .orElse(""))));
        return new Row(rail.name(), "", cells, note(rail));
    }

    /** What was decided about the readings of a rail; empty where there is nothing to compare them with. */
    private String note(Rail rail) {
        List<RailResult> compared = results.stream()
                .filter(r ->
                        r.name().equals(rail.name()) && r.deviation().value().isPresent())
                .toList();
        if (compared.isEmpty()) {
            return "";
        }
        boolean expected = compared.get(0).against() == ItemSubject.Against.EXPECTATION;
        return wording.say(
                expected ? "rails.note.expected" : "rails.note.before",
                "list",
                String.join("; ", compared.stream().map(this::decision).toList()),
                "limit",
                wording.numbers().nominal(compared.get(0).limit(), Unit.PERCENT));
    }

    private String decision(RailResult rail) {
        return wording.say(
                "rails.decision",
                "state",
                wording.called(rail.state()),
                "deviation",
                Amount.ofChange(rail.deviation(), wording.numbers()).full(),
                "verdict",
                wording.decision(rail.decision()).toLowerCase(Locale.ROOT));
    }

    private String stated(Quantity quantity) {
        return wording.numbers().nominal(quantity.value(), quantity.unit());
    }

    /** A reading with the digits that the meter showed. */
    private String read(RailReading reading) {
        Quantity quantity = reading.quantity();
        if (quantity.value() == 0 || !(reading.digit() > 0)) {
            return stated(quantity);
        }
        long first = (long) Math.floor(Math.log10(Math.abs(quantity.value())));
        long last = Math.round(Math.log10(reading.digit()));
        return wording.numbers().rounded(quantity.value(), quantity.unit(), (int) Math.max(1, first - last + 1));
    }
}
