package clipwitness.report.data;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Results that an earlier run has written.
 *
 * @param software  name and version of the program that wrote them
 * @param digest    digest of the inputs
 * @param templates the templates of the PDFs that were made with them, see {@link ResultsJson#bytes}
 * @param summary   what they say
 */
public record StandingResults(String software, String digest, List<String> templates, JobSummary summary) {
    /** Copies what it is given. */
    public StandingResults {
        templates = List.copyOf(templates);
    }

    /** Reads {@code N-results.json}; empty where it is no such document, or of another version. */
    public static Optional<StandingResults> read(byte[] document) {
        return JsonValue.read(document)
                .filter(whole -> whole.textAt("schema").equals(ResultsJson.SCHEMA))
                .flatMap(StandingResults::of);
    }

    private static Optional<StandingResults> of(JsonValue whole) {
        JsonValue report = whole.at("report");
        List<Optional<JobSummary.Compared>> comparisons = whole.at("comparisons").elements().stream()
                .map(StandingResults::compared)
                .toList();
        if (comparisons.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        JobSummary summary = new JobSummary(
                report.textAt("number"),
                comparisons.stream().flatMap(Optional::stream).toList(),
                whole.at("hints").elements().stream()
                        .map(h -> new JobSummary.Hinted(h.textAt("code"), h.textAt("state"), h.textAt("text")))
                        .toList());
        List<String> templates = report.at("templates").elements().stream()
                .map(t -> t.text().orElse(""))
                .toList();
        return Optional.of(
                new StandingResults(report.textAt("software"), report.textAt("inputsDigest"), templates, summary));
    }

    private static Optional<JobSummary.Compared> compared(JsonValue comparison) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        for (JsonValue item : comparison.at("items").elements()) {
            Optional<Decision> decision = decision(item.textAt("decision"));
            if (decision.isEmpty()) {
                return Optional.empty();
            }
            JobSummary.count(tallies, item.textAt("quantity"), decision.get());
        }
        return decision(comparison.textAt("verdict"))
                .map(verdict -> new JobSummary.Compared(
                        comparison.textAt("to"),
                        comparison.textAt("from"),
                        comparison.textAt("intent").equals(Intent.DESCRIBED.code()),
                        verdict,
                        List.copyOf(tallies.values())));
    }

    private static Optional<Decision> decision(String code) {
        return Arrays.stream(Decision.values())
                .filter(d -> d.code().equals(code))
                .findFirst();
    }
}
