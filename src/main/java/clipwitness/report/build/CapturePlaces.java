package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.quantity.Unit;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Where captures were taken, for sentences: of which states, and at which settings.
 *
 * @param wording words of the report
 */
record CapturePlaces(JobWording wording) {
    /** State of a capture, or the device of a traced curve. */
    String name(CaptureRow row) {
        return row.state().map(wording::called).or(row::device).orElse("");
    }

    /** The condition; of what is no wave its kind too, and the frequency of a point of the response. */
    String condition(CaptureRow row) {
        return switch (row.kind()) {
            case WAVEFORM -> wording.condition(row.condition());
            case JUNCTION -> wording.say("kind.junction");
            case NOISE -> also(wording.say("kind.noise"), row.condition());
            case LISTENING -> also(wording.say("kind.listening"), row.condition());
            case RESPONSE -> also(response(row.condition()), row.condition());
        };
    }

    /** What a capture is of, and its condition where that has a name. */
    private String also(String what, Condition condition) {
        return wording.says(condition) ? what + ", " + wording.named(condition) : what;
    }

    private String response(Condition condition) {
        return condition.frequency().isPresent()
                ? wording.say(
                        "kind.response.at",
                        "frequency",
                        wording.numbers().nominal(condition.frequency().getAsDouble(), Unit.HERTZ))
                : wording.say("kind.response");
    }

    /**
     * {@code 4 captures: as received at 25 % gain and full gain; new position in all 2}.
     *
     * @param meant captures that are spoken of
     * @param all   all captures of the job
     */
    String of(List<CaptureResult> meant, List<CaptureResult> all) {
        Map<String, List<CaptureRow>> byState = new LinkedHashMap<>();
        meant.forEach(c ->
                byState.computeIfAbsent(name(c.row()), n -> new ArrayList<>()).add(c.row()));
        List<String> places = new ArrayList<>();
        byState.forEach((state, rows) -> places.add(places(
                state,
                rows,
                all.stream()
                        .map(CaptureResult::row)
                        .filter(r -> name(r).equals(state))
                        .toList())));
        String text = String.join("; ", places);
        return meant.size() == 1
                ? text
                : wording.say("captures.at", "count", Integer.toString(meant.size()), "places", text);
    }

    private String places(String state, List<CaptureRow> rows, List<CaptureRow> ofState) {
        if (rows.size() > 1 && rows.size() == ofState.size()) {
            return wording.say("captures.of.all", "state", state, "count", Integer.toString(rows.size()));
        }
        List<String> places = rows.stream()
                .filter(r -> r.kind() == CaptureKind.WAVEFORM)
                .map(r -> place(r, ofState))
                .distinct()
                .toList();
        return wording.say("captures.of", "state", state, "places", wording.list(places))
                + others(rows.stream()
                        .filter(r -> r.kind() != CaptureKind.WAVEFORM)
                        .map(this::condition)
                        .distinct()
                        .toList());
    }

    private static String others(List<String> places) {
        return places.isEmpty() ? "" : ", " + String.join(", ", places);
    }

    /** The condition; with its run where other runs of the setting are not meant. */
    private String place(CaptureRow row, List<CaptureRow> ofState) {
        Predicate<CaptureRow> otherRun =
                r -> r.kind() == row.kind() && r.condition().equals(row.condition()) && r.run() != row.run();
        String condition = wording.apart(wording.condition(row.condition()));
        return ofState.stream().anyMatch(otherRun)
                ? wording.say("captures.run", "condition", condition, "run", Integer.toString(row.run()))
                : condition;
    }
}
