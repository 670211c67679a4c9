package clipwitness.report.build;

import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.ForwardVoltage;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.match.MatchedPair;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Block;
import clipwitness.report.model.DevicesPart;
import clipwitness.report.model.GroupTable;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Makes the tables of the traced devices. */
final class DevicesBuilder {
    private static final int DEVICES_A_TABLE = 4;

    private final JobWording wording;

    DevicesBuilder(JobWording wording) {
        this.wording = wording;
    }

    DevicesPart of(Devices devices) {
        DeviceSentences sentences = new DeviceSentences(wording);
        return new DevicesPart(
                sentences.summary(devices),
                sentences.of(devices),
                figures(devices.traced()),
                devices.pairing().pairs().isEmpty() ? List.of() : List.of(pairs(devices)),
                predicted(devices));
    }

    private List<Table> figures(List<TracedDevice> devices) {
        List<Table> tables = new ArrayList<>();
        for (int i = 0; i < devices.size(); i += DEVICES_A_TABLE) {
            tables.add(table(devices.subList(i, Math.min(devices.size(), i + DEVICES_A_TABLE))));
        }
        return tables;
    }

    private Table table(List<TracedDevice> devices) {
        Cells cells = new Cells(wording);
        List<Row> rows = new ArrayList<>();
        List<ForwardVoltage> forward = devices.get(0).result().forwardVoltages();
        for (int i = 0; i < forward.size(); i++) {
            int index = i;
            String current = wording.numbers().nominal(forward.get(i).current(), Unit.AMPERE);
            rows.add(row(
                    cells,
                    wording.say("device.forward", "current", current),
                    devices,
                    r -> r.forwardVoltages().get(index).voltage()));
        }
        rows.add(fitted(cells, "device.ideality", devices, JunctionFit::ideality, Unit.ONE));
        rows.add(fitted(cells, "device.saturation", devices, JunctionFit::saturationCurrent, Unit.AMPERE));
        rows.add(fitted(cells, "device.series", devices, JunctionFit::seriesResistance, Unit.OHM));
        if (devices.stream()
                .anyMatch(d -> d.result().fit().filter(DevicesBuilder::hasShunt).isPresent())) {
            rows.add(fitted(cells, "device.shunt", devices, JunctionFit::shuntResistance, Unit.OHM));
        }
        rows.add(row(
                cells,
                wording.say("device.decade"),
                devices,
                r -> r.decadeSlope().voltage()));
        rows.add(row(cells, wording.say("device.knee"), devices, JunctionResult::kneeWidth));
        rows.add(row(cells, wording.say("device.retrace"), devices, JunctionResult::retraceGap));
        return new Table(
                wording.say("device.title"),
                wording.say("device.corner"),
                devices.stream().map(TracedDevice::name).toList(),
                rows,
                cells.notes());
    }

    private static boolean hasShunt(JunctionFit fit) {
        return fit.shuntResistance().asValue().isPresent();
    }

    private Row fitted(
            Cells cells, String name, List<TracedDevice> devices, Function<JunctionFit, Measured> figure, Unit unit) {
        return row(cells, wording.say(name), devices, r -> r.fitted(figure, unit));
    }

    private static Row row(
            Cells cells, String name, List<TracedDevice> devices, Function<JunctionResult, Measured> figure) {
        return cells.row(
                name,
                devices.stream().map(d -> Optional.of(figure.apply(d.result()))).toList());
    }

    private Table pairs(Devices devices) {
        Cells cells = new Cells(wording);
        List<Row> rows = new ArrayList<>();
        for (MatchedPair p : devices.pairing().pairs()) {
            Row row = cells.row(
                    wording.list(p.devices()), List.of(Optional.of(p.mismatch()), Optional.of(p.mismatchAt1mA())));
            rows.add(p.tracedApart() ? row.noted(apart(p)) : row);
        }
        return new Table(
                wording.say("pairs.title"),
                wording.say("pairs.corner"),
                List.of(wording.say("pairs.rms"), wording.say("pairs.at")),
                rows,
                cells.notes());
    }

    private String apart(MatchedPair pair) {
        return wording.say(
                "pairs.apart",
                "kelvin",
                wording.numbers().rounded(pair.temperatureApart(), Unit.KELVIN, 2),
                "left",
                wording.numbers().rounded(pair.leftByTemperature(), Unit.VOLT, 2));
    }

    private List<GroupTable> predicted(Devices devices) {
        List<StatePrediction> known = devices.predictions().stream()
                .filter(p -> p.figure(WaveformQuantity.CLIP_UP.key())
                        .filter(f -> f.predicted().asValue().isPresent())
                        .isPresent())
                .toList();
        return known.isEmpty() ? List.of() : List.of(clips(known));
    }

    private GroupTable clips(List<StatePrediction> predictions) {
        Cells cells = new Cells(wording);
        Block block = cells.block(
                predictions.stream().map(p -> wording.condition(p.condition())).toList(),
                predictions.stream().map(DevicesBuilder::clipLevels).toList(),
                false);
        Map<String, List<Row>> byState = new LinkedHashMap<>();
        for (int i = 0; i < predictions.size(); i++) {
            byState.computeIfAbsent(predictions.get(i).state(), s -> new ArrayList<>())
                    .add(block.rows().get(i));
        }
        return new GroupTable(
                block.titled(wording.say("predicted.title")),
                List.of(wording.say("table.state"), wording.say("predicted.corner")),
                List.of(
                        wording.say("predicted.up"),
                        wording.say("measured.up"),
                        wording.say("predicted.down"),
                        wording.say("measured.down")),
                byState.entrySet().stream()
                        .map(e -> new GroupTable.Group(wording.headed(e.getKey()), "", e.getValue()))
                        .toList(),
                cells.notes());
    }

    private static List<Optional<Measured>> clipLevels(StatePrediction prediction) {
        List<Optional<Measured>> figures = new ArrayList<>();
        for (WaveformQuantity q : List.of(WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN)) {
            Optional<Prediction> figure = prediction.figure(q.key());
            figures.add(figure.map(Prediction::predicted));
            figures.add(figure.map(Prediction::measured));
        }
        return figures;
    }
}
