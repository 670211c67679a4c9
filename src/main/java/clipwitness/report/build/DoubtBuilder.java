package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.reason.Doubt;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import clipwitness.report.model.ListedDoubt;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Doubts in words. One that several captures share is said once, where its figures differ with the range of them, and with the states and
 * settings that it concerns.
 */
final class DoubtBuilder {
    private final JobWording wording;
    private final CapturePlaces places;

    DoubtBuilder(JobWording wording) {
        this.wording = wording;
        this.places = new CapturePlaces(wording);
    }

    /** What several doubts have in common that are said as one. */
    private record Kind(Severity severity, List<Object> form) {}

    /** A capture that is doubted. */
    private record Doubted(Reason reason, CaptureResult capture) {}

    List<ListedDoubt> all(List<CaptureResult> captures) {
        return listed(kinds(captures), captures);
    }

    /** Doubts about some captures, without those that concern every one of more. */
    List<ListedDoubt> own(List<CaptureResult> captures, List<CaptureResult> more) {
        Map<Kind, List<Doubted>> kinds = kinds(captures);
        Map<Kind, List<Doubted>> ofMore = kinds(more);
        kinds.keySet()
                .removeIf(k ->
                        ofMore.get(k).stream().map(Doubted::capture).distinct().count() == more.size());
        return listed(kinds, captures);
    }

    private static Map<Kind, List<Doubted>> kinds(List<CaptureResult> captures) {
        Map<Kind, List<Doubted>> kinds = new LinkedHashMap<>();
        for (CaptureResult capture : captures) {
            for (Doubt doubt : capture.doubts()) {
                kinds.computeIfAbsent(new Kind(doubt.severity(), doubt.reason().form()), k -> new ArrayList<>())
                        .add(new Doubted(doubt.reason(), capture));
            }
        }
        return kinds;
    }

    private List<ListedDoubt> listed(Map<Kind, List<Doubted>> kinds, List<CaptureResult> captures) {
        return kinds.entrySet().stream()
                .map(e -> shared(e.getKey().severity(), e.getValue(), captures))
                .toList();
    }

    private ListedDoubt shared(Severity severity, List<Doubted> doubted, List<CaptureResult> all) {
        List<CaptureResult> captures =
                doubted.stream().map(Doubted::capture).distinct().toList();
        return doubt(
                severity,
                doubted.stream().map(Doubted::reason).toList(),
                String.join(", ", captures.stream().map(c -> c.row().file()).toList()),
                places.of(captures, all));
    }

    List<ListedDoubt> of(CaptureResult capture) {
        return capture.doubts().stream()
                .map(d -> doubt(d.severity(), List.of(d.reason()), "", ""))
                .toList();
    }

    private ListedDoubt doubt(Severity severity, List<Reason> reasons, String files, String places) {
        String kind = severity.code();
        return new ListedDoubt(
                kind, wording.say("doubt." + kind), wording.speech().text(reasons), files, places);
    }
}
