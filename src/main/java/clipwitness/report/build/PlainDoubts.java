package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.report.model.ListedDoubt;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the doubts mean for the sound of the unit, for those who do not measure. Doubts that mean the same are said once. */
final class PlainDoubts {
    private static final String PLAIN = "doubt.plain.";

    private final JobWording wording;
    private final CapturePlaces places;

    PlainDoubts(JobWording wording) {
        this.wording = wording;
        this.places = new CapturePlaces(wording);
    }

    /** What several doubts have in common that mean the same. */
    private record Kind(Severity severity, String line) {}

    List<ListedDoubt> of(List<CaptureResult> captures) {
        Map<Kind, List<CaptureResult>> kinds = new LinkedHashMap<>();
        for (CaptureResult capture : captures) {
            capture.doubts().stream()
                    .map(PlainDoubts::kind)
                    .distinct()
                    .forEach(k ->
                            kinds.computeIfAbsent(k, x -> new ArrayList<>()).add(capture));
        }
        return kinds.entrySet().stream()
                .map(e -> doubt(e.getKey(), e.getValue(), captures))
                .toList();
    }

    private static Kind kind(Doubt doubt) {
        return new Kind(doubt.severity(), line(doubt.raisedBy()));
    }

    private ListedDoubt doubt(Kind kind, List<CaptureResult> captures, List<CaptureResult> all) {
        String code = kind.severity().code();
        String meant = wording.say(kind.line());
        return new ListedDoubt(
                code,
                wording.say("doubt." + code),
                kind.severity() == Severity.REFUSAL ? wording.say("doubt.plain.refused", "meant", meant) : meant,
                String.join(", ", captures.stream().map(c -> c.row().file()).toList()),
                places.of(captures, all));
    }

    /** The name of the line that says what a doubt means. */
    static String line(DoubtReason reason) {
        return PLAIN + meaning(reason);
    }

    private static String meaning(DoubtReason reason) {
        return switch (reason) {
            case LOW_RESOLUTION_SILENT, LOW_RESOLUTION_QUIET -> "silent";
            case REPEATED_TIME_COLUMNS, REPEATED_TIME_PEAKS, REPEATED_TIME_ROWS -> "outline";
            case STIMULUS_CHANGED_SHEET -> "other-tone";
            case UNIT_ASSUMED_SOUND, UNIT_ASSUMED_LISTENING -> "no-volts";
            case NOT_COMPARABLE_SET_ONCE -> "set-once";
            case NOT_COMPARABLE_TWO_STATES, NOT_COMPARABLE_TWO_ROWS, NOT_COMPARABLE_TWO_SETTINGS -> "twice";
            case NOT_COMPARABLE_TEMPERATURE -> "temperature";
            case NOT_COMPARABLE_INSTRUMENT -> "instrument";
            case NOT_COMPARABLE_RESPONSE_INPUT, NOT_COMPARABLE_RESPONSE_GAPS, NOT_COMPARABLE_RESPONSE_NONE ->
                "no-response";
            case RESPONSE_CLIPPED, RESPONSE_NOT_LINEAR, RESPONSE_BEYOND_ONSET -> "clipped-response";
            case STRAIGHTENED_HIGH -> "straightened-high";
            default -> reason.doubt().code();
        };
    }
}
