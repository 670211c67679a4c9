package clipwitness.report.model;

import clipwitness.compare.Devices;
import clipwitness.compare.StatePrediction;
import clipwitness.compare.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.ForwardVoltage;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.junction.MatchedPair;
import clipwitness.quantity.Unit;
import clipwitness.report.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Makes the tables of the traced devices. */
final class DevicesBuilder {
    private static final int DEVICES_A_TABLE = 4;

    private final Wording wording;
    private final Cells cells;

    DevicesBuilder(Wording wording) {
        this.wording = wording;
        this.cells = new Cells(wording);
    }

    DevicesPart of(Devices devices) {
        return new DevicesPart(
                new DeviceSentences(wording).summary(devices),
                new DeviceSentences(wording).of(devices),
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
        List<Row> rows = new ArrayList<>();
        List<ForwardVoltage> forward = devices.get(0).result().forwardVoltages();
        for (int i = 0; i < forward.size(); i++) {
            int index = i;
            String current = wording.numbers().nominal(forward.get(i).current(), Unit.AMPERE);
            rows.add(row(
                    wording.say("device.forward", "current", current),
                    devices,
                    r -> r.forwardVoltages().get(index).voltage()));
        }
        rows.add(fitted("device.ideality", devices, JunctionFit::ideality, Unit.ONE));
        rows.add(fitted("device.saturation", devices, JunctionFit::saturationCurrent, Unit.AMPERE));
        rows.add(fitted("device.series", devices, JunctionFit::seriesResistance, Unit.OHM));
        if (devices.stream()
                .anyMatch(d -> d.result().fit().filter(DevicesBuilder::hasShunt).isPresent())) {
            rows.add(fitted("device.shunt", devices, JunctionFit::shuntResistance, Unit.OHM));
        }
        rows.add(row(wording.say("device.decade"), devices, r -> r.decadeSlope().voltage()));
        rows.add(row(wording.say("device.knee"), devices, JunctionResult::kneeWidth));
        rows.add(row(wording.say("device.retrace"), devices, JunctionResult::retraceGap));
        return new Table(
                wording.say("device.title"),
                wording.say("device.corner"),
                devices.stream().map(DevicesBuilder::heading).toList(),
                rows);
    }

    private static boolean hasShunt(JunctionFit fit) {
        return fit.shuntResistance().asValue().isPresent();
    }

    private static String heading(TracedDevice device) {
        return device.name();
    }

    private Row fitted(String name, List<TracedDevice> devices, Function<JunctionFit, Measured> figure, Unit unit) {
        return row(
                wording.say(name),
                devices,
                r -> r.fit().map(figure).orElseGet(() -> Measured.refused(unit, r.refusal())));
    }

    private Row row(String name, List<TracedDevice> devices, Function<JunctionResult, Measured> figure) {
        return cells.row(
                name,
                devices.stream()
                        .map(d -> Optional.of(figure.apply(d.result()))
                                .filter(m -> m.asValue().isPresent()))
                        .toList());
    }

    private Table pairs(Devices devices) {
        List<MatchedPair> pairs = devices.pairing().pairs();
        List<Row> rows = new ArrayList<>();
        for (MatchedPair p : pairs) {
            Row row = cells.row(
                    wording.list(p.devices()), List.of(Optional.of(p.mismatch()), Optional.of(p.mismatchAt1mA())));
            rows.add(
                    p.tracedApart()
                            ? new Row(
                                    row.name(),
                                    row.unit(),
                                    row.cells(),
                                    wording.say(
                                            "pairs.apart",
                                            "kelvin",
                                            wording.numbers().rounded(p.temperatureApart(), Unit.KELVIN, 2)))
                            : row);
        }
        return new Table(
                wording.say("pairs.title"),
                wording.say("pairs.corner"),
                List.of(wording.say("pairs.rms"), wording.say("pairs.at")),
                rows);
    }

    private List<Table> predicted(Devices devices) {
        List<Table> tables = new ArrayList<>();
        for (String state : devices.predictions().stream()
                .map(StatePrediction::state)
                .distinct()
                .toList()) {
            List<Row> rows = devices.predictions().stream()
                    .filter(p -> p.state().equals(state))
                    .flatMap(p -> row(p).stream())
                    .toList();
            if (!rows.isEmpty()) {
                tables.add(new Table(
                        wording.say("predicted.title", "state", wording.label(state)),
                        wording.say("predicted.corner"),
                        List.of(
                                wording.say("predicted.up"),
                                wording.say("measured.up"),
                                wording.say("predicted.down"),
                                wording.say("measured.down")),
                        rows));
            }
        }
        return tables;
    }

    private Optional<Row> row(StatePrediction prediction) {
        List<Optional<Measured>> figures = new ArrayList<>();
        for (WaveformQuantity q : List.of(WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN)) {
            figures.add(prediction
                    .figure(q.key())
                    .map(f -> f.predicted())
                    .filter(m -> m.asValue().isPresent()));
            figures.add(prediction
                    .figure(q.key())
                    .map(f -> f.measured())
                    .filter(m -> m.asValue().isPresent()));
        }
        return figures.get(0).isPresent()
                ? Optional.of(cells.row(wording.condition(prediction.condition()), figures))
                : Optional.empty();
    }
}
