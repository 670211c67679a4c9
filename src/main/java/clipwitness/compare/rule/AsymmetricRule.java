package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Asymmetric;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.EvenHarmonics;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the two halves of the wave are clipped alike, at the highest setting: from the clip levels where an input was captured
 * (the mean of an asymmetric wave moves with the drive and hides what they show), else from the peaks.
 */
final class AsymmetricRule implements FindingRule {
    /** Both halves count as alike below this, percent: the usual limit for an unchanged state. */
    static final double ALIKE_PERCENT =
            ItemQuantity.ASYMMETRY.limit().orElseThrow().standard();

    private final StateValues values;

    AsymmetricRule(JobResults results) {
        this.values = new StateValues(results);
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return Items.highest(comparison, ItemQuantity.ASYMMETRY)
                .map(Item::condition)
                .flatMap(c -> paragraph(comparison, c))
                .stream()
                .toList();
    }

    private Optional<Paragraph> paragraph(Comparison comparison, Condition condition) {
        return of(comparison, condition, WaveformQuantity.CLIP_ASYMMETRY)
                .or(() -> of(comparison, condition, WaveformQuantity.ASYMMETRY))
                .filter(a -> says(a.asymmetry()))
                .map(a -> withEvens(comparison, a));
    }

    private Optional<Asymmetric> of(Comparison comparison, Condition condition, WaveformQuantity quantity) {
        return values.difference(comparison, condition, quantity)
                .map(d -> new Asymmetric(Subject.of(comparison, condition), quantity, d, kind(d)));
    }

    private static Asymmetric.Kind kind(Difference asymmetry) {
        double now = Math.abs(asymmetry.now().number());
        if (now <= ALIKE_PERCENT) {
            return Asymmetric.Kind.ALIKE;
        }
        return now < Math.abs(asymmetry.before().number()) ? Asymmetric.Kind.EVENER : Asymmetric.Kind.UNLIKE;
    }

    /** A difference that is there, or halves that are alike in both states; between the two there is no finding. */
    private static boolean says(Difference d) {
        return (isAlike(d.before()) && isAlike(d.now())) || (d.significant() && Math.abs(d.change()) > ALIKE_PERCENT);
    }

    private static boolean isAlike(Measured.Value asymmetry) {
        return Math.abs(asymmetry.number()) + asymmetry.expandedUncertainty().orElse(0) <= ALIKE_PERCENT;
    }

    private Paragraph withEvens(Comparison comparison, Asymmetric asymmetric) {
        List<Finding> findings = new ArrayList<>(List.of(asymmetric));
        values.difference(comparison, asymmetric.subject().condition(), WaveformQuantity.EVEN_HARMONICS)
                .filter(Difference::significant)
                .ifPresent(d -> findings.add(new EvenHarmonics(asymmetric.subject(), d)));
        return new Paragraph(findings);
    }
}
