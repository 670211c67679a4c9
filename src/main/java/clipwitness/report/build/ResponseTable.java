package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.StateResponse;
import clipwitness.measure.Measured;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.measure.response.SweptResponse;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Frequency response, states side by side: a table for each condition. Of a sweep three points an octave are printed; the results hold all. */
final class ResponseTable {
    /** States side by side in one table: what a page is wide enough for. */
    private static final int STATES = 4;

    /** Steps of a sweep from one printed point to the next. */
    private static final int STEP = SweptResponse.PER_OCTAVE / 3;

    private static final double CENTRE = 1000;

    private final JobWording wording;

    ResponseTable(JobWording wording) {
        this.wording = wording;
    }

    List<Table> of(JobResults results) {
        List<Table> tables = new ArrayList<>();
        results.responses().stream().map(StateResponse::condition).distinct().forEach(c -> {
            List<StateResponse> here = results.responses().stream()
                    .filter(r -> r.condition().equals(c))
                    .toList();
            Parts.of(here, STATES).forEach(part -> tables.add(table(c, part)));
        });
        return tables;
    }

    private Table table(Condition condition, List<StateResponse> states) {
        Cells cells = new Cells(wording);
        List<Row> rows = new ArrayList<>();
        rows.add(cells.row(
                wording.say("response.corner.lower"),
                states.stream().map(s -> Optional.of(s.curve().lowerCorner())).toList()));
        rows.add(cells.row(
                wording.say("response.corner.upper"),
                states.stream().map(s -> Optional.of(s.curve().upperCorner())).toList()));
        for (double frequency : frequencies(states)) {
            rows.add(row(frequency, states, cells));
        }
        return new Table(
                wording.say("response.title", "condition", wording.named(condition)),
                wording.say("response.corner"),
                states.stream().map(s -> wording.headed(s.state())).toList(),
                rows,
                cells.notes());
    }

    private Row row(double frequency, List<StateResponse> states, Cells cells) {
        List<Optional<Measured>> gains = states.stream()
                .map(s -> s.curve().at(frequency).map(ResponsePoint::gain))
                .toList();
        Row row = cells.row(
                wording.say("response.at", "frequency", wording.numbers().frequency(frequency)), gains);
        return new Row(row.name(), "", row.cells(), row.note()); // decibels, as the head says
    }

    private static Set<Double> frequencies(List<StateResponse> states) {
        TreeSet<Double> frequencies = new TreeSet<>();
        for (StateResponse s : states) {
            s.curve().points().stream()
                    .map(ResponsePoint::frequency)
                    .filter(f -> !s.swept() || isPrinted(f))
                    .forEach(frequencies::add);
        }
        return frequencies;
    }

    private static boolean isPrinted(double frequency) {
        double steps = SweptResponse.PER_OCTAVE * Math.log(frequency / CENTRE) / Math.log(2);
        return Math.abs(steps / STEP - Math.rint(steps / STEP)) * STEP < 0.1;
    }
}
