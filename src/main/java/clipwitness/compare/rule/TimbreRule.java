package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the harmonics above the seventh make a sound rounder or sharper at equal loudness: wherever they stand high enough to be heard, their
 * sum moves the same way beyond its uncertainty, at one setting at least by what is heard, and no single one of them is heard to go the other way.
 */
final class TimbreRule {
    /** Harmonics above the seventh that lie lower in both states add nothing to the sound, dBc (measurement book, section 4). */
    private static final double AUDIBLE_DBC = -50;

    private final StateValues values;

    TimbreRule(StateValues values) {
        this.values = values;
    }

    /**
     * What they add; empty where they add nothing, or not the same everywhere.
     *
     * @param clipped the conditions at which one of the states clips
     */
    Optional<Answer.Timbre> of(Comparison comparison, List<Condition> clipped) {
        List<Condition> heard =
                clipped.stream().filter(c -> standsOut(comparison, c)).toList();
        List<Difference> changes = heard.stream()
                .flatMap(c -> HighHarmonics.of(values, comparison, c).stream())
                .filter(Difference::significant)
                .toList();
        boolean everywhere = !heard.isEmpty() && changes.size() == heard.size();
        if (!everywhere || changes.stream().map(Difference::isRise).distinct().count() > 1) {
            return Optional.empty();
        }
        boolean rise = changes.get(0).isRise();
        boolean told = changes.stream().anyMatch(d -> Math.abs(d.change()) >= CommonPractice.HEARD_DECIBELS)
                && heard.stream().noneMatch(c -> isContradicted(comparison, c, rise));
        return told ? Optional.of(rise ? Answer.Timbre.SHARPER : Answer.Timbre.ROUNDER) : Optional.empty();
    }

    private boolean standsOut(Comparison comparison, Condition condition) {
        return states(comparison)
                .anyMatch(s -> isAudible(
                        values.of(s, condition, WaveformQuantity.HIGH_HARMONICS).flatMap(Measured::asValue)));
    }

    private static Stream<String> states(Comparison comparison) {
        return Stream.of(comparison.from(), comparison.to());
    }

    private static boolean isAudible(Optional<Measured.Value> level) {
        return level.filter(v -> !v.isUpperBound() && v.number() > AUDIBLE_DBC).isPresent();
    }

    private boolean isContradicted(Comparison comparison, Condition condition, boolean rise) {
        return HighHarmonics.against(comparison, condition, rise).stream()
                .anyMatch(h -> states(comparison).anyMatch(s -> isAudible(level(s, condition, h.order()))));
    }

    private Optional<Measured.Value> level(String state, Condition condition, int order) {
        return values.captures(state, condition)
                .flatMap(c -> c.waveform().stream())
                .flatMap(w -> w.harmonics().stream())
                .filter(h -> h.order() == order)
                .flatMap(h -> h.level().asValue().stream())
                .findFirst();
    }
}
