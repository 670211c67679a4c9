package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Steady sines of several frequencies that belong to one state and setting, and of which few are distorted: steps of a frequency response. */
final class SteppedSines {
    private static final int LEAST = 4;
    private static final double SAME = 1.03;
    /** What is measured for its response does not clip. */
    private static final double CLIPPED = 3;

    private SteppedSines() {}

    /** The rows, those of such steps as responses. */
    static List<DraftRow> found(List<DraftRow> rows) {
        Map<List<Object>, List<DraftRow>> together = new HashMap<>();
        rows.stream()
                .filter(SteppedSines::isWave)
                .forEach(r -> together.computeIfAbsent(condition(r), c -> new java.util.ArrayList<>())
                        .add(r));
        return rows.stream()
                .map(r -> isWave(r) && areSteps(together.get(condition(r)))
                        ? r.with(new Guess<>(
                                DraftKind.RESPONSE,
                                "one of the steady sines of several frequencies at one setting, hardly distorted"))
                        : r)
                .toList();
    }

    private static boolean isWave(DraftRow row) {
        return row.kind().value() == DraftKind.WAVEFORM && row.tone().isPresent();
    }

    private static List<Object> condition(DraftRow row) {
        return List.of(
                row.state(),
                row.facts().gain().map(Guess::value),
                row.facts().setting().map(Guess::value));
    }

    private static boolean areSteps(List<DraftRow> rows) {
        List<Double> tones = rows.stream().map(r -> r.tone().getAsDouble()).toList();
        long clean =
                rows.stream().filter(r -> distortion(r).orElse(0) < CLIPPED).count();
        return Clusters.groups(tones, SAME).size() >= LEAST && clean > rows.size() / 2;
    }

    private static OptionalDouble distortion(DraftRow row) {
        return row.source().content().channels().stream()
                .flatMapToDouble(c -> c.thd().stream())
                .max();
    }
}
