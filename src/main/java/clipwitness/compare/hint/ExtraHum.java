package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Hum in the waves of a state that was not there before: a slow wave under the tone whose amplitude is twice that of before, uncertainties
 * counted, or where there was none before at all.
 */
final class ExtraHum implements HintRule {
    private static final String CODE = "extra-hum";
    private static final double MORE = 2;
    private static final NumberText NUMBERS = NumberText.in("en");

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.compared().stream()
                .flatMap(s -> hint(s, evidence.pairs(s)).stream())
                .toList();
    }

    private static Optional<Hint> hint(State state, List<Evidence.Pair> pairs) {
        return pairs.stream()
                .filter(ExtraHum::isLouder)
                .max(Comparator.comparingDouble(p -> amplitude(p.to())))
                .map(p -> new Hint(
                        CODE,
                        Optional.of(state.name()),
                        "In the waves of “" + state.label()
                                + "” a slow wave runs under the tone that was not there before, as hum is: look at grounds,"
                                + " shields, the supply and how the leads lie.",
                        evidence(p)));
    }

    private static boolean isLouder(Evidence.Pair pair) {
        Optional<SlowTone> before = pair.from().first().slowTone();
        return pair.to()
                .first()
                .slowTone()
                .filter(after -> before.isEmpty()
                        || after.amplitude().number() - expanded(after)
                                > MORE * (before.get().amplitude().number() + expanded(before.get())))
                .isPresent();
    }

    private static double expanded(SlowTone tone) {
        return tone.amplitude().expandedUncertainty().orElseThrow();
    }

    private static double amplitude(StateAtCondition setting) {
        return setting.first().slowTone().map(SlowTone::amplitude).map(Measured.Value::number).orElse(0.0);
    }

    private static String evidence(Evidence.Pair pair) {
        SlowTone after = pair.to().first().slowTone().orElseThrow();
        return pair.place() + " " + volts(amplitude(pair.to())) + " at about "
                + NUMBERS.rounded(after.frequency(), Unit.HERTZ, 2) + ", before "
                + (pair.from().first().slowTone().isPresent() ? volts(amplitude(pair.from())) : "none that stands out");
    }

    private static String volts(double amplitude) {
        return NUMBERS.rounded(amplitude, Unit.VOLT, 2);
    }
}
