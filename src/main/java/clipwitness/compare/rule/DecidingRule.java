package clipwitness.compare.rule;

import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.RemedyRemark;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the change that decides a verdict which is fail or undecided. */
public final class DecidingRule {
    /** What is said over what no capture to come can decide: the captures from before the work are too uncertain, or the change lies on the limit. */
    private static final Set<RemedyRemark> FOR_GOOD = EnumSet.of(
            RemedyRemark.KNOB_BEFORE,
            RemedyRemark.BEFORE_TOO_UNCERTAIN,
            RemedyRemark.ON_THE_LIMIT,
            RemedyRemark.CAPTURE_AGAIN_IF_UNDONE);

    private final StateValues values;

    /** The rule for a job. */
    public DecidingRule(JobResults results) {
        this.values = new StateValues(results);
    }

    /** The finding; empty where the verdict is neither fail nor undecided, or rests on no single change. */
    public Optional<Deciding> of(Comparison comparison) {
        Decision verdict = comparison.verdict();
        if (verdict != Decision.FAIL && verdict != Decision.UNDECIDED) {
            return Optional.empty();
        }
        List<Item> decided = Items.decided(comparison, verdict);
        return hardlyClips(comparison, decided).or(() -> Items.worst(decided).map(i -> deciding(comparison, i)));
    }

    /** A wave that is clipped no more tells more than any level: of these the one whose distortion fell most. */
    private Optional<Deciding> hardlyClips(Comparison comparison, List<Item> decided) {
        return decided.stream()
                .filter(i -> i.quantity() == ItemQuantity.THD && i.decision() == Decision.FAIL)
                .map(i -> deciding(comparison, i))
                .filter(d -> d.kind() == Deciding.Kind.HARDLY_CLIPS)
                .max(Comparator.comparingDouble(d -> Items.size(d.item())));
    }

    private Deciding deciding(Comparison comparison, Item item) {
        return new Deciding(
                Subject.of(comparison, item.condition()),
                item,
                figures(comparison, item),
                Items.at(comparison, item.condition(), ItemQuantity.LEVEL),
                comparison.verdict() == Decision.UNDECIDED && isForGood(comparison));
    }

    /** Distortion or asymmetry of both states, where a change is one of these and they differ by it within its uncertainty. */
    Optional<Difference> figures(Comparison comparison, Item item) {
        return figure(comparison, item).filter(d -> agrees(d, item));
    }

    private static boolean agrees(Difference d, Item item) {
        double ratio = shown(d.now()) / shown(d.before());
        if (item.quantity() == ItemQuantity.THD && !(ratio > 0 && Double.isFinite(ratio))) {
            return false;
        }
        double between = item.quantity() == ItemQuantity.THD ? Decibels.ofAmplitude(ratio) : d.change();
        return item.change()
                .asValue()
                .filter(v -> Math.abs(between - v.number()) <= v.expanded())
                .isPresent();
    }

    /** A figure that noise bounds stands at its standard uncertainty at least, as in the change itself: a wave that is not clipped has one of 0. */
    private static double shown(Measured.Value figure) {
        return Math.max(figure.number(), figure.standardUncertainty());
    }

    private Optional<Difference> figure(Comparison comparison, Item item) {
        return switch (item.quantity()) {
            case THD -> values.difference(comparison, item.condition(), WaveformQuantity.THD);
            case ASYMMETRY -> values.difference(comparison, item.condition(), WaveformQuantity.ASYMMETRY);
            default -> Optional.empty();
        };
    }

    /** Whether one of the undecided changes can be decided by nothing. */
    private static boolean isForGood(Comparison comparison) {
        return Items.decided(comparison, Decision.UNDECIDED).stream()
                .flatMap(i -> i.remedy().stream())
                .anyMatch(r -> FOR_GOOD.stream().anyMatch(r.code()::equals));
    }
}
