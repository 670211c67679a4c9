package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Block;
import clipwitness.report.model.Cell;
import clipwitness.report.model.GroupTable;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.Amount;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** Figures over the gain control, and over level. */
final class SeriesBuilder {
    /** States side by side in one table: what a page is wide enough for. */
    private static final int STATES = 4;

    /** Settings side by side in one table. */
    private static final int GAINS = 5;

    private final JobWording wording;

    SeriesBuilder(JobWording wording) {
        this.wording = wording;
    }

    /** Figures over the gain control, those of one condition together; none where no capture has any. */
    List<GroupTable> overGain(JobResults results) {
        List<GroupTable> tables = new ArrayList<>();
        Map<Condition, List<Series>> all = byCondition(results);
        all.forEach((condition, series) -> {
            TreeSet<Double> gains = new TreeSet<>();
            series.forEach(s -> s.points().forEach(p -> gains.add(p.gainPercent())));
            String title = wording.say("series.title", "condition", all.size() > 1 ? wording.condition(condition) : "");
            Parts.of(List.copyOf(gains), GAINS).stream()
                    .map(part -> table(title, series, part))
                    .filter(t -> !t.groups().isEmpty())
                    .forEach(tables::add);
        });
        return tables;
    }

    /** Where distortion reaches a mark, and level steps. */
    List<Table> of(JobResults results) {
        List<Table> tables = new ArrayList<>();
        byCondition(results)
                .values()
                .forEach(series -> Parts.of(series, STATES).stream()
                        .filter(part -> part.stream().anyMatch(SeriesBuilder::hasOnset))
                        .forEach(part -> tables.add(onsets(part))));
        results.series().forEach(s -> s.levelSeries().forEach(l -> tables.add(levels(s, l))));
        return tables;
    }

    private static Map<Condition, List<Series>> byCondition(JobResults results) {
        Map<Condition, List<Series>> byCondition = new LinkedHashMap<>();
        results.series()
                .forEach(s -> byCondition
                        .computeIfAbsent(s.condition(), c -> new ArrayList<>())
                        .add(s));
        return byCondition;
    }

    private GroupTable table(String title, List<Series> series, List<Double> gains) {
        Cells cells = new Cells(wording);
        List<GroupTable.Group> groups = new ArrayList<>();
        for (WaveformQuantity quantity : WaveformQuantity.tabled()) {
            if (series.stream().anyMatch(s -> s.points().stream().anyMatch(p -> hasValue(p, quantity)))) {
                groups.add(group(series, gains, quantity, cells));
            }
        }
        return new GroupTable(
                title,
                List.of(wording.say("table.quantity"), wording.say("table.state")),
                gains.stream().map(g -> wording.speech().gain(g)).toList(),
                groups,
                cells.notes());
    }

    private GroupTable.Group group(List<Series> series, List<Double> gains, WaveformQuantity quantity, Cells cells) {
        Block block = cells.block(
                labels(series),
                series.stream()
                        .map(s -> gains.stream().map(g -> at(s, g, quantity)).toList())
                        .toList(),
                false);
        return new GroupTable.Group(wording.say("value." + quantity.key()), block.unit(), block.rows());
    }

    private static boolean hasValue(SeriesPoint point, WaveformQuantity quantity) {
        return value(point, quantity).flatMap(Measured::asValue).isPresent();
    }

    private static Optional<Measured> at(Series series, double gain, WaveformQuantity quantity) {
        return series.points().stream()
                .filter(p -> p.gainPercent() == gain)
                .findFirst()
                .flatMap(p -> value(p, quantity));
    }

    private static Optional<Measured> value(SeriesPoint point, WaveformQuantity quantity) {
        return Optional.ofNullable(point.values().get(quantity)).map(m -> Told.figure(quantity, m));
    }

    private static boolean hasOnset(Series series) {
        return series.onsetGain().stream()
                .anyMatch(o -> o.gainPercent().asValue().isPresent());
    }

    private Table onsets(List<Series> series) {
        List<Double> marks = series.stream()
                .flatMap(s -> s.onsetGain().stream())
                .map(OnsetGain::thdPercent)
                .distinct()
                .toList();
        Cells cells = new Cells(wording);
        List<Row> rows = marks.stream()
                .map(m -> new Row(
                        wording.percent(m),
                        "",
                        series.stream().map(s -> onset(s, m, cells)).toList(),
                        ""))
                .toList();
        return new Table(
                wording.say("series.onset"),
                wording.say("value.thd"),
                labels(series),
                cells.aligned(rows),
                cells.notes());
    }

    private Cell onset(Series series, double mark, Cells cells) {
        Optional<Measured> gain = series.onsetGain().stream()
                .filter(o -> o.thdPercent() == mark)
                .map(OnsetGain::gainPercent)
                .findFirst();
        return gain.map(g -> cells.cell(wording.rotation(g))).orElse(Cell.of(""));
    }

    private List<String> labels(List<Series> series) {
        return series.stream().map(s -> wording.headed(s.state())).toList();
    }

    private Table levels(Series series, LevelSeries levels) {
        Condition at = new Condition(
                levels.gainPercent(),
                series.condition().frequency(),
                series.condition().level(),
                series.condition().setting());
        List<String> inputs = levels.steps().stream()
                .map(step -> wording.numbers().nominal(step.input(), Unit.VOLT))
                .toList();
        Cells cells = new Cells(wording);
        Block outputs = column(inputs, levels, LevelStep::output, cells);
        Block slopes = column(inputs, levels, LevelStep::slope, cells);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            rows.add(new Row(
                    inputs.get(i),
                    "",
                    List.of(
                            outputs.rows().get(i).cells().get(0),
                            slopes.rows().get(i).cells().get(0)),
                    ""));
        }
        rows.add(compression(levels.compressionPoint(), cells));
        return new Table(
                wording.headed(series.state()) + ": " + wording.say("series.level", "condition", wording.named(at)),
                wording.say("value.inputFundamental"),
                List.of(outputs.titled(wording.say("series.step.output")), wording.say("series.step.slope")),
                rows,
                cells.notes());
    }

    private static Block column(
            List<String> inputs, LevelSeries levels, Function<LevelStep, Measured> figure, Cells cells) {
        return cells.block(
                inputs,
                levels.steps().stream()
                        .map(step -> List.of(Optional.of(figure.apply(step))))
                        .toList(),
                false);
    }

    private Row compression(Measured point, Cells cells) {
        Amount amount = wording.amount(point);
        Cell cell = amount.number().isEmpty() ? cells.cell(amount) : Cell.of(amount.full());
        return new Row(wording.say("series.compression"), "", List.of(cell, Cell.of("")), "");
    }
}
