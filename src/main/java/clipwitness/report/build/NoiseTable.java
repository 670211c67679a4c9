package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.StateNoise;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.Band;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Cell;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Noise and hum, states side by side: a table for each condition. */
final class NoiseTable {
    /** States side by side in one table: what a page is wide enough for. */
    private static final int STATES = 4;

    private final JobWording wording;

    NoiseTable(JobWording wording) {
        this.wording = wording;
    }

    List<Table> of(JobResults results) {
        List<Table> tables = new ArrayList<>();
        results.noise().stream().map(StateNoise::condition).distinct().forEach(c -> {
            List<StateNoise> here = results.noise().stream()
                    .filter(n -> n.condition().equals(c))
                    .toList();
            Parts.of(here, STATES).forEach(part -> tables.add(table(c, part)));
        });
        return tables;
    }

    private Table table(Condition condition, List<StateNoise> states) {
        Cells cells = new Cells(wording);
        List<Row> rows = new ArrayList<>();
        rows.add(band(states));
        for (NoiseFigure f : NoiseFigure.values()) {
            rows.add(cells.row(
                    wording.say("noise." + f.key()),
                    states.stream().map(s -> Optional.of(s.values().get(f))).toList()));
        }
        for (NoiseFigure f : NoiseFigure.values()) {
            if (states.stream().anyMatch(s -> s.atInput().get(f).value().isPresent())) {
                rows.add(cells.row(
                        wording.say("noise.input." + f.key()),
                        states.stream()
                                .map(s -> Optional.of(s.atInput().get(f)))
                                .toList()));
            }
        }
        lines(states).forEach(f -> rows.add(line(f, states, cells)));
        rows.add(mains(states, cells));
        rows.add(floor(states));
        return new Table(
                wording.say("noise.title", "condition", wording.named(condition)),
                wording.say("table.quantity"),
                states.stream().map(s -> wording.headed(s.state())).toList(),
                rows,
                cells.notes());
    }

    private Row band(List<StateNoise> states) {
        return new Row(
                wording.say("noise.band"),
                "",
                states.stream()
                        .map(s -> Cell.of(s.band().map(this::band).orElse("–")))
                        .toList(),
                "");
    }

    private String band(Band band) {
        return wording.say(
                "noise.band.ends",
                "low",
                wording.numbers().nominal(Math.rint(band.low()), Unit.HERTZ),
                "high",
                wording.numbers().nominal(Math.rint(band.high()), Unit.HERTZ));
    }

    /** Frequencies of the lines that stand out in one of the states; those of the mains itself where none does. */
    private static Set<Double> lines(List<StateNoise> states) {
        TreeSet<Double> lines = new TreeSet<>();
        states.forEach(
                s -> s.hum().stream().filter(l -> l.stands() || l.order() == 1).forEach(l -> lines.add(l.frequency())));
        return lines;
    }

    private Row line(double frequency, List<StateNoise> states, Cells cells) {
        List<Optional<Measured>> levels = states.stream()
                .map(s -> s.hum().stream()
                        .filter(l -> l.frequency() == frequency)
                        .map(HumLine::level)
                        .findFirst())
                .toList();
        return cells.row(
                wording.say("noise.line", "frequency", wording.numbers().nominal(frequency, Unit.HERTZ)), levels);
    }

    private Row floor(List<StateNoise> states) {
        return new Row(
                wording.say("noise.floor"),
                "",
                states.stream()
                        .map(s -> Cell.of(
                                s.floor().isPresent()
                                        ? wording.numbers().rounded(s.floor().getAsDouble(), Unit.VOLT, 2)
                                        : "–"))
                        .toList(),
                "");
    }

    private Row mains(List<StateNoise> states, Cells cells) {
        List<Optional<Measured>> found =
                states.stream().map(s -> s.mains().map(v -> (Measured) v)).toList();
        return cells.row(wording.say("noise.mains"), found);
    }
}
