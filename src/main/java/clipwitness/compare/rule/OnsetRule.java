package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.EqualGain;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Onset;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Told;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Series;
import clipwitness.measure.Measured;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Where distortion begins over the gain control: earlier, later, or where it did; and at which setting one state does what the other did. */
final class OnsetRule implements FindingRule {
    /** The mark that is preferred; the others follow in their order. */
    private static final double PREFERRED_PERCENT = CommonPractice.CLEARLY_CLIPPED_PERCENT;

    private final List<Series> series;
    private final double knobPercent;
    private final OtherHalvesRule halves;

    OnsetRule(JobResults results) {
        this.series = results.series();
        this.knobPercent = 100 * results.job().sheet().bench().knobRepeatability();
        this.halves = new OtherHalvesRule(new StateValues(results));
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        Stream<Finding> onset =
                pairs(comparison).flatMap(p -> onset(comparison, p).stream()).limit(1);
        Stream<Finding> equal = equal(comparison).stream();
        return Paragraph.of(Stream.concat(onset, equal).toList());
    }

    private record Pair(Series from, Series to) {}

    private Stream<Pair> pairs(Comparison comparison) {
        return series.stream()
                .filter(s -> s.state().equals(comparison.from()))
                .flatMap(from -> series.stream()
                        .filter(s -> s.state().equals(comparison.to())
                                && s.condition().equals(from.condition()))
                        .map(to -> new Pair(from, to)));
    }

    private Optional<Finding> onset(Comparison comparison, Pair pair) {
        return CommonPractice.ONSET_MARKS_PERCENT.stream()
                .sorted(Comparator.comparing(m -> m != PREFERRED_PERCENT))
                .flatMap(m -> onset(comparison, pair, m).stream())
                .findFirst();
    }

    private Optional<Finding> onset(Comparison comparison, Pair pair, double mark) {
        Condition condition = pair.from().condition();
        return gain(pair.from(), mark)
                .flatMap(from -> gain(pair.to(), mark)
                        .flatMap(to -> OnsetKinds.of(from, to)
                                .map(kind -> new Onset(
                                        Subject.of(comparison, condition),
                                        mark,
                                        kind,
                                        from,
                                        to,
                                        kind == Onset.Kind.SAME
                                                ? halves.of(comparison, condition)
                                                : Optional.empty()))));
    }

    private static Optional<Measured> gain(Series series, double mark) {
        return series.onsetGain().stream()
                .filter(o -> o.thdPercent() == mark)
                .map(o -> Told.rotation(o.gainPercent()))
                .findFirst();
    }

    /** The setting of equal distortion nearest half way whose partner is clearly another. */
    private Optional<Finding> equal(Comparison comparison) {
        return comparison.equivalentGain().stream()
                .flatMap(e -> Told.rotation(e.toGainPercent()).asValue().filter(v -> isElsewhere(e, v)).stream()
                        .map(v -> new EqualGain(
                                Subject.of(comparison, at(e.condition(), e.fromGainPercent())),
                                e.fromGainPercent(),
                                v)))
                .min(Comparator.comparingDouble(e -> Math.abs(e.fromGainPercent() - CommonPractice.HALF_WAY_PERCENT)))
                .map(Finding.class::cast);
    }

    private static Condition at(Condition open, double gainPercent) {
        return new Condition(OptionalDouble.of(gainPercent), open.frequency(), open.level(), open.setting());
    }

    /** Beyond the uncertainty, and beyond what two settings of the knob by hand can differ by (k = 2). */
    private boolean isElsewhere(EquivalentGain equal, Measured.Value to) {
        double byHand = Measured.COVERAGE_FACTOR * Math.sqrt(2) * knobPercent;
        return Significance.exceeds(
                to.number() - equal.fromGainPercent(),
                Math.max(to.expandedUncertainty().orElse(0), byHand));
    }
}
