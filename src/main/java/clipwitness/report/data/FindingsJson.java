package clipwitness.report.data;

import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.FindingValue;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.Findings;
import clipwitness.figure.PictureWords;
import clipwitness.report.words.FindingText;
import clipwitness.report.words.JobWording;
import java.io.IOException;

/** The findings in the results: codes and figures, and the sentence in English whatever the language of the report. */
final class FindingsJson {
    private final JsonText json;

    FindingsJson(JsonText json) {
        this.json = json;
    }

    void write(JobResults results) throws IOException {
        FindingText sentences = new FindingText(JobWording.english(results));
        PictureWords pictures = PictureWords.english(results);
        json.array("findings", () -> {
            for (Finding finding : Findings.of(results).all()) {
                String text =
                        sentences.of(finding).or(() -> pictures.of(finding)).orElseThrow();
                json.object(() -> write(finding, text));
            }
        });
    }

    private void write(Finding finding, String text) throws IOException {
        json.text("code", finding.code());
        json.text("from", finding.subject().from());
        json.text("to", finding.subject().to());
        json.condition(finding.subject().condition());
        json.text("word", finding.word());
        json.object("figures", () -> {
            for (FindingValue value : finding.values()) {
                json.number(value.name(), value.value());
            }
        });
        json.object("units", () -> {
            for (FindingValue value : finding.values()) {
                json.text(value.name(), value.unit().symbol());
            }
        });
        json.object("expandedUncertainty", () -> {
            for (FindingValue value : finding.values()) {
                json.number(value.name(), value.expandedUncertainty());
            }
        });
        json.texts(
                "upperBounds",
                finding.values().stream()
                        .filter(FindingValue::isUpperBound)
                        .map(FindingValue::name)
                        .toList());
        json.text("text", text);
    }
}
