package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * All waves taken under one condition of everything but the gain control.
 *
 * @param condition condition, gain left open
 * @param settings  positions of the gain control, rising, one or more
 */
record WaveGroup(Condition condition, List<WaveSetting> settings) {
    /** Distortion from which a wave is clearly clipped, percent. */
    private static final double CLEARLY_CLIPPED = 3;

    private static final double MIDDLE = 50;

    /** Copies what it is given. */
    WaveGroup {
        settings = List.copyOf(settings);
    }

    /** States that have a wave at one setting or more. */
    Set<String> states() {
        return settings.stream().flatMap(s -> s.waves().keySet().stream()).collect(Collectors.toSet());
    }

    /** Full condition of one setting. */
    Condition conditionOf(WaveSetting setting) {
        return new Condition(setting.gainPercent(), condition.frequency(), condition.level(), condition.setting());
    }

    /** How many waves there are. */
    int waves() {
        return settings.stream().mapToInt(s -> s.waves().size()).sum();
    }

    /**
     * The setting that speaks for all: of those with the most states one where a wave is clearly clipped, nearest half way; where
     * none clips so, the one that distorts most.
     */
    WaveSetting chosen() {
        int most = settings.stream().mapToInt(s -> s.waves().size()).max().orElse(0);
        List<WaveSetting> full =
                settings.stream().filter(s -> s.waves().size() == most).toList();
        Comparator<WaveSetting> byDistance = Comparator.comparingDouble(WaveGroup::distanceFromMiddle);
        return full.stream()
                .filter(s -> s.largest(WaveformQuantity.THD) >= CLEARLY_CLIPPED)
                .min(byDistance)
                .or(() -> full.stream().max(byDistortion().thenComparing(byDistance.reversed())))
                .orElseThrow(() -> new IllegalArgumentException("a group needs settings"));
    }

    /** The setting that a picture of all settings speaks of: the highest, or the lowest where the highest speaks for all. */
    WaveSetting further() {
        WaveSetting last = settings.get(settings.size() - 1);
        return last.equals(chosen()) ? settings.get(0) : last;
    }

    private static Comparator<WaveSetting> byDistortion() {
        return Comparator.comparingDouble(s -> s.largest(WaveformQuantity.THD));
    }

    private static double distanceFromMiddle(WaveSetting setting) {
        OptionalDouble gain = setting.gainPercent();
        return gain.isPresent() ? Math.abs(gain.getAsDouble() - MIDDLE) : MIDDLE;
    }

    /** This group with those waves only that a condition holds for; settings left without any are gone. */
    WaveGroup where(Predicate<WaveformResult> condition) {
        List<WaveSetting> kept = settings.stream()
                .map(s -> s.where(condition))
                .filter(s -> !s.waves().isEmpty())
                .toList();
        return new WaveGroup(this.condition, kept);
    }
}
