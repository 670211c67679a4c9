package clipwitness.report.data;

import clipwitness.compare.result.StateNoise;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.Band;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.NoiseFigure;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Noise and hum of the states in the results. */
final class NoiseJson {
    private static final String AT_INPUT = "AtInput";

    private final JsonText json;

    NoiseJson(JsonText json) {
        this.json = json;
    }

    /** Name of a figure referred to the input. */
    static String atInput(NoiseFigure figure) {
        return figure.key() + AT_INPUT;
    }

    void write(List<StateNoise> states) throws IOException {
        json.array("noise", () -> {
            for (StateNoise s : states) {
                json.object(() -> write(s));
            }
        });
    }

    private void write(StateNoise s) throws IOException {
        json.text("state", s.state());
        json.condition(s.condition());
        json.numbers("band", s.band().map(NoiseJson::ends).orElse(List.of()));
        json.object("values", () -> {
            for (Map.Entry<NoiseFigure, Measured> e : s.values().entrySet()) {
                json.object(e.getKey().key(), () -> json.measured("value", e.getValue()));
            }
            for (Map.Entry<NoiseFigure, Measured> e : s.atInput().entrySet()) {
                json.object(atInput(e.getKey()), () -> json.measured("value", e.getValue()));
            }
        });
        json.array("hum", () -> {
            for (HumLine line : s.hum()) {
                json.object(() -> write(line));
            }
        });
        json.number("mains", s.mains().map(v -> OptionalDouble.of(v.number())).orElse(OptionalDouble.empty()));
        json.number(
                "mainsUncertainty",
                s.mains().map(v -> OptionalDouble.of(v.expanded())).orElse(OptionalDouble.empty()));
        json.number("floor", s.floor());
    }

    private static List<Double> ends(Band band) {
        return List.of(band.low(), band.high());
    }

    private void write(HumLine line) throws IOException {
        json.number("frequency", line.frequency());
        json.measured("level", line.level());
    }
}
