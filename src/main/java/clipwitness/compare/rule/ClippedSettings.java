package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.ClippedSetting;
import clipwitness.compare.finding.ClippedSetting.Turn;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * At which settings the states of a comparison clip: their distortion is over {@link CommonPractice#LEAST_JUDGED_PERCENT} with its whole
 * uncertainty, so that no answer hangs on a setting that may be clean.
 */
final class ClippedSettings {
    private final JobResults results;
    private final StateValues values;

    ClippedSettings(JobResults results) {
        this.results = results;
        this.values = new StateValues(results);
    }

    /** Settings of both states at which one of them clips, the highest gain first. */
    List<ClippedSetting> of(Comparison comparison) {
        return common(comparison)
                .filter(s -> clips(comparison.from(), s.condition()) || clips(comparison.to(), s.condition()))
                .toList();
    }

    /** The setting with the highest gain that both states have; empty where they have none in common. */
    Optional<ClippedSetting> highest(Comparison comparison) {
        return common(comparison).findFirst();
    }

    private Stream<ClippedSetting> common(Comparison comparison) {
        Comparator<Item> byGain =
                Comparator.comparingDouble(i -> i.condition().gainPercent().orElse(-1));
        return Items.measured(comparison, ItemQuantity.LEVEL).stream()
                .sorted(byGain.reversed())
                .map(i -> setting(comparison, i));
    }

    private ClippedSetting setting(Comparison comparison, Item level) {
        Condition condition = level.condition();
        Optional<Measured.Value> before = thd(comparison.from(), condition);
        Optional<Measured.Value> now = thd(comparison.to(), condition);
        boolean bounded = Stream.of(before, now).flatMap(Optional::stream).anyMatch(Measured.Value::isUpperBound);
        Optional<Item> change = Items.at(comparison, condition, ItemQuantity.THD);
        Turn turn = bounded
                ? turnBesideBound(before, now)
                : change.map(ClippedSettings::turn).orElse(Turn.UNKNOWN);
        return new ClippedSetting(
                level,
                Items.at(comparison, condition, ItemQuantity.NULL_DEPTH),
                change.filter(i -> !bounded || isLeast(i, turn)),
                turn,
                before.flatMap(b -> now.map(n -> Difference.of(b, n))));
    }

    /** Whether a change beside a bound says what it is at least. */
    private static boolean isLeast(Item change, Turn turn) {
        return turn != Turn.UNKNOWN && turn(change) == turn;
    }

    private static Turn turn(Item thd) {
        return switch (Telling.of(thd).kind()) {
            case MORE -> Turn.HIGHER;
            case LESS -> Turn.LOWER;
            case EQUAL -> Turn.STAYS;
            case UNKNOWN -> Turn.UNKNOWN;
        };
    }

    /** Which of two intervals lies above the other. */
    private static Turn turnBesideBound(Optional<Measured.Value> before, Optional<Measured.Value> now) {
        if (before.isEmpty() || now.isEmpty()) {
            return Turn.UNKNOWN;
        }
        if (least(now.get()) > before.get().number() + before.get().expanded()) {
            return Turn.HIGHER;
        }
        return least(before.get()) > now.get().number() + now.get().expanded() ? Turn.LOWER : Turn.UNKNOWN;
    }

    private static double least(Measured.Value thd) {
        return thd.isUpperBound() ? 0 : thd.number() - thd.expanded();
    }

    private boolean clips(String state, Condition condition) {
        return thd(state, condition)
                .filter(v -> !v.isUpperBound() && v.number() - v.expanded() > CommonPractice.LEAST_JUDGED_PERCENT)
                .isPresent();
    }

    /** Whether a state stays under the mark wherever it was captured. */
    boolean isClean(String state) {
        List<Condition> captured = results.captures().stream()
                .filter(c -> c.row().state().filter(state::equals).isPresent()
                        && c.waveform().isPresent())
                .map(CaptureResult::row)
                .map(r -> r.condition())
                .distinct()
                .toList();
        return !captured.isEmpty()
                && captured.stream()
                        .allMatch(c -> thd(state, c)
                                .filter(v -> v.shown() < CommonPractice.LEAST_JUDGED_PERCENT)
                                .isPresent());
    }

    private Optional<Measured.Value> thd(String state, Condition condition) {
        return values.of(state, condition, WaveformQuantity.THD).flatMap(Measured::asValue);
    }
}
