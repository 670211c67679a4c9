package clipwitness.batch.choice;

import clipwitness.capture.Export;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;

/** What the doubts about a file mean for the measuring of its channels. */
public final class FileDoubts {
    private FileDoubts() {}

    /**
     * Why no channel of an export can be measured as a wave; empty where they can. How many samples
     * may be missing is decided channel by channel when it is measured.
     */
    public static Optional<Reason> unfit(Export export) {
        return export.doubts().stream()
                .filter(d -> d.refuses() && d.code() != DoubtCode.MISSING_SAMPLES)
                .map(Doubt::reason)
                .findFirst();
    }

    /** Whether a doubt about a file concerns the shape of a wave and nothing else: noise, responses and playing are not read from it. */
    public static boolean isOfShape(Doubt doubt) {
        return doubt.reason().code() == DoubtReason.AC_COUPLED_SOUND;
    }

    /** Doubts about a file as they concern a recording of playing: its level needs no volts, and nothing is read from its shape. */
    public static List<Doubt> ofPlaying(List<Doubt> ofFile) {
        return ofFile.stream()
                .filter(d -> !isOfShape(d))
                .map(d -> d.reason().code() == DoubtReason.UNIT_ASSUMED_SOUND
                        ? Doubt.of(Severity.NOTE, DoubtReason.UNIT_ASSUMED_LISTENING)
                        : d)
                .toList();
    }

    /** Doubts of the measuring without the count of missing samples, where the file's doubts have it already. */
    public static List<Doubt> without(List<Doubt> measured, List<Doubt> ofFile) {
        boolean counted = ofFile.stream()
                .filter(d ->
                        d.reason().code() != DoubtReason.MISSING_SAMPLES_END) // missing behind the last, not among them
                .anyMatch(d -> d.code() == DoubtCode.MISSING_SAMPLES);
        return measured.stream()
                .filter(d -> !counted || d.code() != DoubtCode.MISSING_SAMPLES)
                .toList();
    }
}
