package clipwitness.report.data;

import clipwitness.compare.result.Missing;
import clipwitness.compare.result.ReadyItem;
import clipwitness.compare.result.ReadyResult;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Whether the captures before the work are good enough, as JSON. */
public final class ReadyJson {
    private ReadyJson() {}

    /** The object that {@code ready --json} prints. */
    public static String text(ReadyResult result) {
        byte[] bytes = JsonText.bytes(json -> json.object(() -> {
            json.flag("sufficient", result.sufficient());
            json.array("items", () -> {
                for (ReadyItem item : result.items()) {
                    json.object(() -> item(json, item));
                }
            });
            json.array("missing", () -> {
                for (Missing m : result.missing()) {
                    json.object(() -> {
                        json.text("code", m.code());
                        json.statement("text", Optional.of(m.what()));
                    });
                }
            });
        }));
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void item(JsonText json, ReadyItem item) throws IOException {
        json.text("quantity", item.quantity().key());
        json.condition(item.condition());
        json.number("limit", item.limit());
        json.number("smallestChange", item.smallestChange().value());
        json.text("unit", item.smallestChange().unit().symbol());
        json.flag("sufficient", item.sufficient());
        json.statement("remedy", item.remedy());
    }
}
