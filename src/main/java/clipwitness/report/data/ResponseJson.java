package clipwitness.report.data;

import clipwitness.compare.result.StateResponse;
import clipwitness.measure.response.ResponsePoint;
import java.io.IOException;
import java.util.List;

/** Frequency response of the states in the results. */
final class ResponseJson {
    private final JsonText json;

    ResponseJson(JsonText json) {
        this.json = json;
    }

    void write(List<StateResponse> states) throws IOException {
        json.array("response", () -> {
            for (StateResponse s : states) {
                json.object(() -> write(s));
            }
        });
    }

    private void write(StateResponse s) throws IOException {
        json.text("state", s.state());
        json.number("gainPercent", s.condition().gainPercent());
        json.number("level", s.condition().level());
        json.text("setting", s.condition().setting());
        json.object("lowerCorner", () -> json.measured("value", s.curve().lowerCorner()));
        json.object("upperCorner", () -> json.measured("value", s.curve().upperCorner()));
        json.array("points", () -> {
            for (ResponsePoint p : s.curve().points()) {
                json.object(() -> write(p, s.swept()));
            }
        });
    }

    private void write(ResponsePoint p, boolean swept) throws IOException {
        json.number("frequency", p.frequency());
        json.measured("gain", p.gain());
        json.number("phase", p.phase().value());
        json.number("phaseUncertainty", p.phase().expandedUncertainty());
        if (p.gain().reason().isEmpty()) { // else the reason of the gain stands for both
            json.reasonOfNone("phaseReason", p.phase().reason());
        }
        if (swept) {
            json.number("coherence", p.coherence());
        }
    }
}
