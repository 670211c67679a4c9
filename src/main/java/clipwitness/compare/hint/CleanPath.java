package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A part of the signal goes round the clipper, and the sheet does not say so: one hint, whatever the number of states that show it. */
final class CleanPath implements HintRule {
    private static final String CODE = "clean-path";
    private static final NumberText NUMBERS = NumberText.in("en");

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
        String labels = states.stream().map(s -> "“" + s.label() + "”").collect(Collectors.joining(" and "));
        StatePrediction clearest = shown.values().stream()
                .max(Comparator.comparingDouble(CleanPath::clean))
                .orElseThrow();
        return new Hint(
                CODE,
                states.size() == 1 ? Optional.of(states.get(0).name()) : Optional.empty(),
                "In " + labels
                        + " a part of the signal goes round the clipper, which the sheet does not say: write clean-path:"
                        + " true under clipper, if the circuit has such a path.",
                evidence(clearest));
    }

    private static double clean(StatePrediction prediction) {
        return prediction.paths().orElseThrow().cleanShare().value().orElse(0);
    }

    private static String evidence(StatePrediction prediction) {
        StatePrediction.Paths paths = prediction.paths().orElseThrow();
        Measured.Value share = paths.cleanShare().asValue().orElseThrow();
        return Evidence.place(prediction.condition().gainPercent()) + " a clean share of "
                + NUMBERS.measured(100 * share.number(), Unit.PERCENT, 200 * share.standardUncertainty())
                + " beside the traced devices leaves "
                + NUMBERS.rounded(100 * paths.remainderOverSwing(), Unit.PERCENT, 2)
                + " of the wave unexplained, under a fifth of what the devices alone leave";
    }
}
