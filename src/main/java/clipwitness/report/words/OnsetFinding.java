package clipwitness.report.words;

import clipwitness.compare.Comparison;
import clipwitness.compare.Intent;
import clipwitness.compare.OnsetGain;
import clipwitness.compare.Series;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Where distortion begins over the gain control: earlier, later, or where it did. */
final class OnsetFinding implements FindingRule {
    /** Marks in the order in which they are preferred, percent. */
    private static final List<Double> MARKS = List.of(3.0, 1.0, 10.0);

    private static final String BELOW = "below the lowest setting";

    private final Wording wording;
    private final List<Series> series;

    OnsetFinding(Wording wording, List<Series> series) {
        this.wording = wording;
        this.series = List.copyOf(series);
    }

    @Override
    public List<String> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return pairs(comparison).stream()
                .flatMap(p -> MARKS.stream()
                        .flatMap(m -> finding(comparison, p, m).stream())
                        .limit(1))
                .limit(1)
                .toList();
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
        return Optional.of(wording.say(
                "finding.onset." + kind(from.get(), to.get()),
                "from",
                wording.label(comparison.from()),
                "to",
                wording.label(comparison.to()),
                "mark",
                wording.percent(mark),
                "fromGain",
                text(from.get()),
                "toGain",
                text(to.get())));
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
            return "same";
        }
        return difference < 0 ? "earlier" : "later";
    }

    private String text(Measured gain) {
        return gain.value().isPresent() ? wording.numbers().fixed(gain.value().getAsDouble(), Unit.PERCENT, 0) : "";
    }

    private record Pair(Series from, Series to) {}
}
