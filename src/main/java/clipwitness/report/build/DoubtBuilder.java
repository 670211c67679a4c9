package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.reason.Doubt;
import clipwitness.report.model.ListedDoubt;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Doubts in words; one that several captures share is said once. */
final class DoubtBuilder {
    private final JobWording wording;

    DoubtBuilder(JobWording wording) {
        this.wording = wording;
    }

    List<ListedDoubt> all(List<CaptureResult> captures) {
        Map<Doubt, List<String>> files = new LinkedHashMap<>();
        for (CaptureResult capture : captures) {
            capture.doubts()
                    .forEach(d -> files.computeIfAbsent(d, k -> new ArrayList<>())
                            .add(capture.row().file()));
        }
        return files.entrySet().stream()
                .map(e -> doubt(e.getKey(), String.join(", ", e.getValue())))
                .toList();
    }

    List<ListedDoubt> of(CaptureResult capture) {
        return capture.doubts().stream().map(d -> doubt(d, "")).toList();
    }

    private ListedDoubt doubt(Doubt doubt, String files) {
        String kind = doubt.severity().code();
        return new ListedDoubt(
                kind, wording.say("doubt." + kind), wording.speech().text(doubt), files);
    }
}
