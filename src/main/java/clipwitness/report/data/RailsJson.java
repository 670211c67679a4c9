package clipwitness.report.data;

import clipwitness.compare.rail.RailJudge;
import clipwitness.compare.result.RailResult;
import clipwitness.job.JobSheet;
import clipwitness.quantity.Quantity;
import java.io.IOException;
import java.util.Locale;
import java.util.OptionalDouble;

/** The list {@code rails} of the results: each meter reading with its uncertainty, what it was compared with and what was decided. */
final class RailsJson {
    private final JsonText json;

    RailsJson(JsonText json) {
        this.json = json;
    }

    void write(JobSheet sheet) throws IOException {
        json.array("rails", () -> {
            for (RailResult rail : new RailJudge(sheet).all()) {
                json.object(() -> write(rail));
            }
        });
    }

    private void write(RailResult rail) throws IOException {
        json.text("name", rail.name());
        json.text("state", rail.state());
        json.measured("value", rail.reading());
        json.number(
                "expected",
                rail.expected().map(Quantity::value).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
        json.text("decision", rail.decision().code());
        json.object("deviation", () -> {
            json.text("against", rail.against().name().toLowerCase(Locale.ROOT));
            json.measured("value", rail.deviation());
            json.number("limit", rail.limit());
            json.number("conformanceProbability", rail.conformanceProbability());
        });
    }
}
