package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A part of the signal goes round the clipper, and the sheet does not say so: one hint, whatever the number of states that show it. */
final class CleanPath implements HintRule {
    @Override
    public List<Hint> look(Evidence evidence) {
        Map<String, StatePrediction> shown = new LinkedHashMap<>();
        evidence.devices().predictions().stream()
                .filter(p -> p.paths().filter(s -> !s.stated()).isPresent())
                .forEach(p -> shown.merge(p.state(), p, (a, b) -> clean(b) > clean(a) ? b : a));
        List<State> states = evidence.job().sheet().states().stream()
                .filter(s -> shown.containsKey(s.name()))
                .toList();
        return states.isEmpty() ? List.of() : List.of(hint(states, shown));
    }

    private static Hint hint(List<State> states, Map<String, StatePrediction> shown) {
        StatePrediction clearest = shown.values().stream()
                .max(Comparator.comparingDouble(CleanPath::clean))
                .orElseThrow();
        return new Hint(
                HintCode.CLEAN_PATH,
                states.size() == 1 ? Optional.of(states.get(0).name()) : Optional.empty(),
                Remark.of(HintRemark.CLEAN_PATH, LegMismatch.labels(states)),
                evidence(clearest));
    }

    private static double clean(StatePrediction prediction) {
        return prediction.paths().orElseThrow().cleanShare().value().orElse(0);
    }

    private static Remark evidence(StatePrediction prediction) {
        StatePrediction.Paths paths = prediction.paths().orElseThrow();
        Measured.Value share = paths.cleanShare().asValue().orElseThrow();
        return Remark.of(
                HintRemark.CLEAN_PATH_BY,
                Evidence.place(prediction.condition().gainPercent()),
                Argument.significant(100 * share.number(), Unit.PERCENT, 2),
                Argument.significant(100 * share.expanded(), Unit.PERCENT, 2),
                Argument.significant(100 * paths.remainderOverSwing(), Unit.PERCENT, 2));
    }
}
