package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The one condition that speaks for all on the first page, the same that the main picture shows: of the conditions with the most
 * captures the setting with the most states; of several such settings the one nearest half way at which a wave is clearly
 * clipped, else the one that distorts most.
 */
public final class MainCondition {
    private static final double CLEARLY_CLIPPED_PERCENT = 3;
    private static final double HALF_WAY_PERCENT = 50;

    private MainCondition() {}

    /** The condition; empty where no waveform was measured. */
    public static Optional<Condition> of(JobResults results) {
        Map<Condition, List<CaptureResult>> groups = new LinkedHashMap<>();
        results.captures().stream()
                .filter(c -> c.waveform().isPresent())
                .forEach(c -> groups.computeIfAbsent(c.row().condition().withoutGain(), k -> new ArrayList<>())
                        .add(c));
        return groups.values().stream()
                .reduce((a, b) -> b.size() > a.size() ? b : a)
                .flatMap(MainCondition::setting);
    }

    private static Optional<Condition> setting(List<CaptureResult> captures) {
        Map<Condition, List<CaptureResult>> settings = new LinkedHashMap<>();
        captures.forEach(c -> settings.computeIfAbsent(c.row().condition(), k -> new ArrayList<>())
                .add(c));
        long most = settings.values().stream()
                .mapToLong(MainCondition::states)
                .max()
                .orElse(0);
        List<List<CaptureResult>> full =
                settings.values().stream().filter(s -> states(s) == most).toList();
        return full.stream()
                .filter(s -> distortion(s) >= CLEARLY_CLIPPED_PERCENT)
                .min(Comparator.comparingDouble(MainCondition::fromHalfWay))
                .or(() -> full.stream().max(Comparator.comparingDouble(MainCondition::distortion)))
                .map(s -> s.get(0).row().condition());
    }

    private static long states(List<CaptureResult> captures) {
        return captures.stream().map(c -> c.row().state()).distinct().count();
    }

    private static double distortion(List<CaptureResult> captures) {
        return captures.stream()
                .flatMap(c -> c.waveform().stream())
                .flatMap(w -> w.get(WaveformQuantity.THD).asValue().stream())
                .mapToDouble(Measured.Value::number)
                .max()
                .orElse(0);
    }

    private static double fromHalfWay(List<CaptureResult> captures) {
        return Math.abs(captures.get(0).row().condition().gainPercent().orElse(0) - HALF_WAY_PERCENT);
    }
}
