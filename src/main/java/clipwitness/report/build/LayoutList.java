package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.report.model.Fact;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the layouts of the exports were read; what several exports share is said once. */
final class LayoutList {
    private LayoutList() {}

    static List<Fact> of(List<CaptureResult> captures, Speech speech) {
        Map<String, List<String>> files = new LinkedHashMap<>();
        for (CaptureResult capture : captures) {
            files.computeIfAbsent(text(capture, speech), k -> new ArrayList<>())
                    .add(capture.row().file());
        }
        return files.entrySet().stream()
                .map(e -> new Fact(String.join(", ", e.getValue()), e.getKey()))
                .toList();
    }

    private static String text(CaptureResult capture, Speech speech) {
        return String.join(
                "; ", capture.export().evidence().stream().map(speech::text).toList());
    }
}
