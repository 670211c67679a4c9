package clipwitness.report.data;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.words.Speech;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

/** What an export holds, as JSON. */
public final class LookJson {
    private LookJson() {}

    /**
     * The array that {@code look --json} prints.
     *
     * @param looks one object each
     */
    public static String text(List<Look> looks) {
        byte[] bytes = JsonText.bytes(json -> json.array(() -> {
            for (Look look : looks) {
                json.object(() -> write(json, look));
            }
        }));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void write(JsonText json, Look look) throws IOException {
        Export export = look.export();
        json.text("file", export.file());
        json.text("kind", export instanceof TimeRecord ? "time" : "curve");
        json.integer("samples", export.size());
        if (export instanceof TimeRecord record) {
            json.number("sampleInterval", record.sampleInterval());
        }
        json.array("channels", () -> {
            for (Look.ChannelLook c : look.channels()) {
                json.object(() -> channel(json, c));
            }
        });
        json.array("quality", () -> {
            for (Doubt d : look.doubts()) {
                json.object(() -> json.doubt(d));
            }
        });
        json.texts(
                "evidence", export.evidence().stream().map(Speech.ENGLISH::text).toList());
    }

    private static void channel(JsonText json, Look.ChannelLook look) throws IOException {
        Channel c = look.channel();
        json.text("name", c.name());
        json.text("unit", c.unit().map(Unit::symbol));
        boolean empty = c.samples().gaps() == c.samples().size();
        json.number(
                "minimum",
                empty ? OptionalDouble.empty() : OptionalDouble.of(c.samples().minimum()));
        json.number(
                "maximum",
                empty ? OptionalDouble.empty() : OptionalDouble.of(c.samples().maximum()));
        for (WaveformQuantity q : new WaveformQuantity[] {WaveformQuantity.FREQUENCY, WaveformQuantity.THD}) {
            OptionalDouble value =
                    look.waveform().map(w -> w.get(q)).map(Measured::value).orElse(OptionalDouble.empty());
            if (value.isPresent()) {
                json.number(q.key(), value);
            }
        }
    }
}
