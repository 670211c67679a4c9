package clipwitness.report.words;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where distortion begins over the gain control: earlier, later, or where it did; and at which setting one state does what the other did. */
final class OnsetFinding implements FindingRule {
    /** Marks in the order in which they are preferred, percent. */
    private static final List<Double> MARKS = List.of(3.0, 1.0, 10.0);

    private static final double HALF_WAY_PERCENT = 50;
    private static final String SAME = "same";
    private static final String FIGURE = ".figure";
    private static final String BELOW = "below the lowest setting";

    private final JobWording wording;
    private final List<Series> series;
    private final double knobPercent;
    private final OnsetHalves halves;

    OnsetFinding(JobWording wording, JobResults results) {
        this.halves = new OnsetHalves(wording, new StateValues(results));
        this.wording = wording;
        this.series = results.series();
        this.knobPercent = 100 * results.job().sheet().bench().knobRepeatability();
    }

    @Override
    public List<String> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        Stream<String> onset = pairs(comparison).stream()
                .flatMap(p -> MARKS.stream()
                        .flatMap(m -> finding(comparison, p, m).stream())
                        .limit(1))
                .limit(1);
        List<String> parts = Stream.concat(onset, equal(comparison).stream()).toList();
        return parts.isEmpty() ? List.of() : List.of(String.join(" ", parts));
    }

    /** The setting of equal distortion of the middle setting whose partner is clearly another. */
    private Optional<String> equal(Comparison comparison) {
        return comparison.equivalentGain().stream()
                .filter(this::isElsewhere)
                .min(Comparator.comparingDouble(e -> Math.abs(e.fromGainPercent() - HALF_WAY_PERCENT)))
                .map(e -> wording.say(
                        "finding.equal",
                        "from",
                        wording.label(comparison.from()),
                        "to",
                        wording.label(comparison.to()),
                        "fromGain",
                        wording.percent(e.fromGainPercent()),
                        "toGain",
                        wording.rotation(e.toGainPercent()).full()));
    }

    /** Beyond the uncertainty, and beyond what two settings of the knob by hand can differ by (k = 2). */
    private boolean isElsewhere(EquivalentGain equal) {
        return equal.toGainPercent()
                .asValue()
                .filter(v -> Math.abs(v.number() - equal.fromGainPercent())
                        > Math.max(2 * v.standardUncertainty(), 2 * Math.sqrt(2) * knobPercent))
                .isPresent();
    }

    private List<Pair> pairs(Comparison comparison) {
        return series.stream()
                .filter(s -> s.state().equals(comparison.from()))
                .flatMap(from -> series.stream()
                        .filter(s -> s.state().equals(comparison.to())
                                && s.condition().equals(from.condition()))
                        .map(to -> new Pair(from, to)))
                .toList();
    }

    private Optional<String> finding(Comparison comparison, Pair pair, double mark) {
        Optional<Measured> from = gain(pair.from(), mark);
        Optional<Measured> to = gain(pair.to(), mark);
        if (from.isEmpty()
                || to.isEmpty()
                || (from.get().value().isEmpty() && to.get().value().isEmpty())) {
            return Optional.empty();
        }
        String kind = kind(from.get(), to.get());
        Optional<OnsetHalves.Told> apart =
                kind.equals(SAME) ? halves.of(comparison, pair.from().condition()) : Optional.empty();
        if (apart.isPresent()) {
            return Optional.of(halves(comparison, mark, apart.get(), text(from.get()), text(to.get())));
        }
        boolean alike = kind.equals(SAME) && text(from.get()).equals(text(to.get()));
        String key = alike ? SAME + FIGURE : kind;
        return Optional.of(said(key, comparison, mark, text(from.get()), text(to.get())));
    }

    private String halves(Comparison comparison, double mark, OnsetHalves.Told apart, String from, String to) {
        return said(
                "halves" + (from.equals(to) ? FIGURE : ""),
                comparison,
                mark,
                from,
                to,
                "condition",
                wording.spoken(apart.condition()),
                "halves",
                apart.halves());
    }

    private String said(String key, Comparison comparison, double mark, String from, String to, String... more) {
        List<String> values = new ArrayList<>(List.of(
                "from",
                wording.label(comparison.from()),
                "to",
                wording.label(comparison.to()),
                "mark",
                wording.percent(mark),
                "fromGain",
                from,
                "toGain",
                to));
        values.addAll(List.of(more));
        return wording.say("finding.onset." + key, values.toArray(String[]::new));
    }

    private static Optional<Measured> gain(Series series, double mark) {
        return series.onsetGain().stream()
                .filter(o -> o.thdPercent() == mark)
                .map(OnsetGain::gainPercent)
                .findFirst();
    }

    private static String kind(Measured from, Measured to) {
        if (to.value().isEmpty()) {
            return to.reason().orElse("").startsWith(BELOW) ? "below" : "never";
        }
        if (from.value().isEmpty()) {
            return from.reason().orElse("").startsWith(BELOW) ? "above" : "new";
        }
        double difference = to.value().getAsDouble() - from.value().getAsDouble();
        double uncertainty = Math.hypot(
                to.expandedUncertainty().orElse(0), from.expandedUncertainty().orElse(0));
        if (Math.abs(difference) <= uncertainty) {
            return SAME;
        }
        return difference < 0 ? "earlier" : "later";
    }

    private String text(Measured gain) {
        return gain.value().isPresent() ? wording.numbers().fixed(gain.value().getAsDouble(), Unit.PERCENT, 0) : "";
    }

    private record Pair(Series from, Series to) {}
}
