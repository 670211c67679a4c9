package clipwitness.report.data;

import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.ForwardVoltage;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.junction.Leakage;
import clipwitness.measure.match.MatchedPair;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The parts {@code junctions}, {@code pairs} and {@code prediction} of the results. Uncertainties of a fit are standard, all others expanded. */
final class DevicesJson {
    private final JsonText json;

    DevicesJson(JsonText json) {
        this.json = json;
    }

    void write(Devices devices) throws IOException {
        json.array("junctions", () -> {
            for (TracedDevice d : devices.traced()) {
                json.object(() -> junction(d));
            }
        });
        pairs(devices.pairing().pairs());
        json.array("prediction", () -> {
            for (StatePrediction s : devices.predictions()) {
                for (Prediction p : s.figures()) {
                    json.object(() -> prediction(s, p));
                }
            }
        });
    }

    private void junction(TracedDevice device) throws IOException {
        JunctionResult r = device.result();
        json.text("device", device.name());
        json.text("file", device.row().file());
        json.text("state", device.row().state());
        json.number("temperature", r.temperature().celsius());
        json.array("forwardVoltage", () -> {
            for (ForwardVoltage f : r.forwardVoltages()) {
                json.object(() -> {
                    json.number("current", f.current());
                    json.measuredWithoutUnit("voltage", f.voltage());
                });
            }
        });
        json.object("fit", () -> fit(r));
        json.object("decadeSlope", () -> {
            json.number("from", r.decadeSlope().from());
            json.measured("value", r.decadeSlope().voltage());
        });
        json.object("kneeWidth", () -> json.measured("value", r.kneeWidth()));
        json.array("leakage", () -> {
            for (Leakage l : r.leakages()) {
                json.object(() -> {
                    json.number("voltage", l.voltage());
                    json.measuredWithoutUnit("current", l.current());
                });
            }
        });
        json.object("retraceGap", () -> json.measured("value", r.retraceGap()));
    }

    private void fit(JunctionResult result) throws IOException {
        Optional<JunctionFit> fit = result.fit();
        if (fit.isEmpty()) {
            for (String name : JunctionFit.NAMES) {
                json.number(name, OptionalDouble.empty());
            }
            json.reason(result.refusal());
            return;
        }
        Map<String, Measured> figures = fit.get().figures();
        for (Map.Entry<String, Measured> e : figures.entrySet()) {
            json.number(e.getKey(), e.getValue().value());
        }
        json.object("uncertainty", () -> {
            for (Map.Entry<String, Measured> e : figures.entrySet()) {
                Optional<Measured.Value> value = e.getValue().asValue();
                if (value.isPresent()) {
                    json.number(e.getKey(), value.get().standardUncertainty());
                }
            }
        });
        json.object("correlation", () -> {
            for (Map.Entry<String, Double> e : fit.get().correlations().entrySet()) {
                json.number(e.getKey(), e.getValue());
            }
        });
    }

    /** Pairs, smallest mismatch first, as the element {@code pairs}. */
    void pairs(List<MatchedPair> pairs) throws IOException {
        json.array("pairs", () -> {
            for (MatchedPair p : pairs) {
                json.object(() -> {
                    json.texts("devices", p.devices());
                    json.number("mismatch", p.mismatch().value());
                    json.number("mismatchAt1mA", p.mismatchAt1mA().value());
                    json.text("unit", p.mismatch().unit().symbol());
                    json.number("expandedUncertainty", p.mismatch().expandedUncertainty());
                    json.number("expandedUncertaintyAt1mA", p.mismatchAt1mA().expandedUncertainty());
                    json.number("temperatureApart", p.temperatureApart());
                });
            }
        });
    }

    private void prediction(StatePrediction at, Prediction p) throws IOException {
        json.text("state", at.state());
        json.condition(at.condition());
        json.text("quantity", p.quantity());
        if (p.order().isPresent()) {
            json.integer("order", p.order().getAsInt());
        }
        json.number("predicted", p.predicted().value());
        json.number("measured", p.measured().value());
        json.text("unit", p.unit().symbol());
        json.number("expandedUncertainty", p.expandedUncertainty());
        json.reasonOfNone(p.predicted().reason().or(p.measured()::reason));
        json.boundOf(p.measured());
        if (at.paths().filter(StatePrediction.Paths::stated).isPresent()) {
            Measured share = at.paths().get().cleanShare();
            json.number("cleanShare", share.value());
            json.number("cleanShareExpandedUncertainty", share.expandedUncertainty());
        }
        json.statement("source", at.source());
    }
}
