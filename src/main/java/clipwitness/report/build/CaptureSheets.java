package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureRow;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Block;
import clipwitness.report.model.CaptureSheet;
import clipwitness.report.model.Cell;
import clipwitness.report.model.ListedDoubt;
import clipwitness.report.model.Parts;
import clipwitness.report.model.Row;
import clipwitness.report.words.Amount;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Figures of the captures side by side, those of one setting together. */
final class CaptureSheets {
    /** Captures side by side: what a page is wide enough for. */
    private static final int COLUMNS = 6;

    private static final int DECIMALS_OF_FREQUENCY = 3;
    /** Figures of the upper and the lower half in volts: each two have one unit. */
    private static final List<List<WaveformQuantity>> HALVES = List.of(
            List.of(WaveformQuantity.PEAK_UP, WaveformQuantity.PEAK_DOWN),
            List.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN),
            List.of(WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN));

    private final JobWording wording;
    private final JobResults results;
    private final Together together;

    CaptureSheets(JobWording wording, JobResults results) {
        this.wording = wording;
        this.results = results;
        this.together = new Together(wording, results);
    }

    List<CaptureSheet> all() {
        Map<Condition, List<CaptureResult>> byCondition = new LinkedHashMap<>();
        results.captures().stream()
                .filter(c -> c.waveform().isPresent())
                .forEach(c -> byCondition
                        .computeIfAbsent(c.row().condition(), k -> new ArrayList<>())
                        .add(c));
        return shared(byCondition).stream().map(this::sheet).toList();
    }

    /** The captures of a sheet: whole settings, as many as find room, or a part of one that has more. */
    private static List<List<CaptureResult>> shared(Map<Condition, List<CaptureResult>> byCondition) {
        List<List<CaptureResult>> sheets = new ArrayList<>();
        List<CaptureResult> open = new ArrayList<>();
        for (List<CaptureResult> setting : byCondition.values()) {
            for (List<CaptureResult> part : Parts.of(setting, COLUMNS)) {
                if (open.size() + part.size() > COLUMNS) {
                    sheets.add(open);
                    open = new ArrayList<>();
                }
                open.addAll(part);
            }
        }
        if (!open.isEmpty()) {
            sheets.add(open);
        }
        return sheets;
    }

    private CaptureSheet sheet(List<CaptureResult> captures) {
        Cells cells = new Cells(wording);
        List<WaveformResult> waves =
                captures.stream().map(c -> c.waveform().orElseThrow()).toList();
        List<Row> values = cells.kept(values(waves, cells));
        List<Row> harmonics = harmonics(waves, cells);
        List<CaptureSheet.Column> columns = captures.stream().map(this::column).toList();
        List<String> settings =
                columns.stream().map(CaptureSheet.Column::setting).distinct().toList();
        return new CaptureSheet(
                wording.say("sheet.title", "settings", wording.list(settings)),
                columns,
                values,
                harmonics,
                cells.notes(),
                captures.stream()
                        .flatMap(c -> together.of(c.row()).stream())
                        .distinct()
                        .toList(),
                doubts(captures));
    }

    /** Doubts about these captures; on one of several sheets without those about all captures, which the list of all doubts has once. */
    private List<ListedDoubt> doubts(List<CaptureResult> captures) {
        DoubtBuilder doubts = new DoubtBuilder(wording);
        List<CaptureResult> waves = results.captures().stream()
                .filter(c -> c.waveform().isPresent())
                .toList();
        return captures.size() < waves.size() ? doubts.own(captures, waves) : doubts.all(captures);
    }

    private CaptureSheet.Column column(CaptureResult capture) {
        CaptureRow row = capture.row();
        String run = together.hasRuns(row) ? wording.say("capture.run", "run", Integer.toString(row.run())) : "";
        return new CaptureSheet.Column(
                wording.condition(row.condition()),
                row.state().map(wording::headed).orElse(""),
                run,
                wording.say("capture.row", "row", Integer.toString(row.row())));
    }

    private List<Row> values(List<WaveformResult> waves, Cells cells) {
        List<Row> rows = new ArrayList<>();
        for (WaveformQuantity quantity : WaveformQuantity.values()) {
            if (waves.stream().anyMatch(w -> w.values().containsKey(quantity))) {
                rows.add(value(quantity, waves, cells));
            }
        }
        return rows;
    }

    /** Frequencies in Hz, so that captures compare at a glance; everything else with the prefix that suits the row. */
    private Row value(WaveformQuantity quantity, List<WaveformResult> waves, Cells cells) {
        String name = wording.say("value." + quantity.key());
        List<Optional<Measured>> figures = figures(quantity, waves);
        if (quantity != WaveformQuantity.FREQUENCY) {
            return cells.row(name, figures, bothHalves(quantity, waves));
        }
        List<Amount> amounts = figures.stream()
                .map(f -> wording.amount(f.orElseThrow(), DECIMALS_OF_FREQUENCY))
                .toList();
        return new Row(
                name,
                amounts.stream()
                        .map(Amount::unit)
                        .filter(u -> !u.isEmpty())
                        .findFirst()
                        .orElse(""),
                amounts.stream().map(cells::cell).toList(),
                "");
    }

    private static List<Optional<Measured>> figures(WaveformQuantity quantity, List<WaveformResult> waves) {
        return waves.stream()
                .map(w -> Optional.ofNullable(w.values().get(quantity)).map(m -> Told.figure(quantity, m)))
                .toList();
    }

    private static List<Optional<Measured>> bothHalves(WaveformQuantity quantity, List<WaveformResult> waves) {
        return HALVES.stream()
                .filter(h -> h.contains(quantity))
                .flatMap(List::stream)
                .flatMap(q -> figures(q, waves).stream())
                .toList();
    }

    private List<Row> harmonics(List<WaveformResult> waves, Cells cells) {
        TreeSet<Integer> orders = new TreeSet<>();
        waves.forEach(w -> w.harmonics().forEach(h -> orders.add(h.order())));
        List<List<Optional<Measured>>> levels = orders.stream()
                .map(o -> waves.stream()
                        .map(w -> harmonic(w, o).map(Harmonic::level))
                        .toList())
                .toList();
        Block block = cells.block(orders.stream().map(o -> Integer.toString(o)).toList(), levels, false);
        List<Row> rows = new ArrayList<>();
        int index = 0;
        for (int order : orders) {
            Row row = block.rows().get(index++);
            List<Cell> both = new ArrayList<>();
            for (int i = 0; i < waves.size(); i++) {
                both.add(row.cells().get(i));
                both.add(Cell.of(harmonic(waves.get(i), order).map(this::phase).orElse("")));
            }
            rows.add(new Row(row.name(), block.unit(), both, ""));
        }
        return rows;
    }

    private static Optional<Harmonic> harmonic(WaveformResult wave, int order) {
        return wave.harmonics().stream().filter(h -> h.order() == order).findFirst();
    }

    private String phase(Harmonic harmonic) {
        return harmonic.phase().isPresent()
                ? wording.numbers().nominal(Math.rint(harmonic.phase().getAsDouble()), Unit.DEGREE)
                : "";
    }
}
