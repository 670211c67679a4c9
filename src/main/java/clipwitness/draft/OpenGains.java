package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Waves of one state that nothing tells apart but their names: captured at several positions of the gain control, or several times. */
final class OpenGains {
    private OpenGains() {}

    /** The question for them; empty where there are none. */
    static Optional<String> question(List<DraftRow> rows) {
        Map<List<Object>, List<DraftRow>> alike =
                rows.stream().filter(OpenGains::isOpen).collect(Collectors.groupingBy(OpenGains::told));
        List<String> files = rows.stream()
                .filter(OpenGains::isOpen)
                .filter(r -> alike.get(told(r)).size() > 1)
                .map(r -> r.source().path())
                .toList();
        return files.isEmpty()
                ? Optional.empty()
                : Optional.of("where did the gain control stand in these captures: " + Listed.of(files)
                        + "? Write it in column gain, in percent of the rotation; captures that were only repeated have the same gain and each their own"
                        + " number in column run");
    }

    private static boolean isOpen(DraftRow row) {
        return row.kind().value() == DraftKind.WAVEFORM
                && row.facts().gain().isEmpty()
                && row.questions().isEmpty();
    }

    private static List<Object> told(DraftRow row) {
        return List.of(
                row.state(),
                row.frequency().map(Guess::value),
                row.level().map(Guess::value),
                row.facts().setting().map(Guess::value),
                row.facts().run().map(Guess::value));
    }
}
