package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.CommonPractice;
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
public record WaveGroup(Condition condition, List<WaveSetting> settings) {
    /** Copies what it is given. */
    public WaveGroup {
        settings = List.copyOf(settings);
    }

    /** States that have a wave at one setting or more. */
    public Set<String> states() {
        return settings.stream().flatMap(s -> s.waves().keySet().stream()).collect(Collectors.toSet());
    }

    /** Full condition of one setting. */
    public Condition conditionOf(WaveSetting setting) {
        return new Condition(setting.gainPercent(), condition.frequency(), condition.level(), condition.setting());
    }

    /** How many waves there are. */
    public int waves() {
        return settings.stream().mapToInt(s -> s.waves().size()).sum();
    }

    /**
     * The main setting: of those with the most states one where a wave is clearly clipped, nearest half way; where
     * none clips so, the one that distorts most.
     */
    public WaveSetting chosen() {
        int most = settings.stream().mapToInt(s -> s.waves().size()).max().orElse(0);
        List<WaveSetting> full =
                settings.stream().filter(s -> s.waves().size() == most).toList();
        Comparator<WaveSetting> byDistance = Comparator.comparingDouble(WaveGroup::distanceFromMiddle);
        return full.stream()
                .filter(s -> s.largest(WaveformQuantity.THD) >= CommonPractice.CLEARLY_CLIPPED_PERCENT)
                .min(byDistance)
                .or(() -> full.stream().max(byDistortion().thenComparing(byDistance.reversed())))
                .orElseThrow(() -> new IllegalArgumentException("a group needs settings"));
    }

    /** The setting that the sentence of a picture of all settings is about: the highest beside the main one. */
    public WaveSetting further() {
        WaveSetting last = settings.get(settings.size() - 1);
        return settings.size() > 1 && last.equals(chosen()) ? settings.get(settings.size() - 2) : last;
    }

    private static Comparator<WaveSetting> byDistortion() {
        return Comparator.comparingDouble(s -> s.largest(WaveformQuantity.THD));
    }

    private static double distanceFromMiddle(WaveSetting setting) {
        OptionalDouble gain = setting.gainPercent();
        return Math.abs(gain.orElse(0) - CommonPractice.HALF_WAY_PERCENT);
    }

    /** This group with those waves only that a condition holds for; settings left without any are gone. */
    public WaveGroup where(Predicate<WaveformResult> condition) {
        List<WaveSetting> kept = settings.stream()
                .map(s -> s.where(condition))
                .filter(s -> !s.waves().isEmpty())
                .toList();
        return new WaveGroup(this.condition, kept);
    }
}
