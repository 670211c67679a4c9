package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.SlowTone;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Hum of a state that was not there before: lines of the mains in its captures of noise that grew beyond the limit of hum; where there are none, a slow wave under
 * the tone whose amplitude is twice that of before, uncertainties counted, or where there was none before at all.
 */
final class ExtraHum implements HintRule {
    private static final double MORE = 2;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.compared().stream()
                .flatMap(s -> HumLines.grown(s, evidence).or(() -> hint(s, evidence.pairs(s))).stream())
                .toList();
    }

    private static Optional<Hint> hint(State state, List<Evidence.Pair> pairs) {
        return pairs.stream()
                .filter(ExtraHum::isLouder)
                .max(Comparator.comparingDouble(p -> amplitude(p.to())))
                .map(p -> new Hint(
                        HintCode.EXTRA_HUM,
                        Optional.of(state.name()),
                        Remark.of(HintRemark.SLOW_WAVE, Argument.name(state.called())),
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
        return setting.first()
                .slowTone()
                .map(SlowTone::amplitude)
                .map(Measured.Value::number)
                .orElse(0.0);
    }

    private static Remark evidence(Evidence.Pair pair) {
        SlowTone after = pair.to().first().slowTone().orElseThrow();
        Argument frequency = Argument.prefixed(after.frequency(), Unit.HERTZ, 2);
        return pair.from().first().slowTone().isPresent()
                ? Remark.of(
                        HintRemark.SLOW_WAVE_BY,
                        pair.place(),
                        volts(amplitude(pair.to())),
                        frequency,
                        volts(amplitude(pair.from())))
                : Remark.of(HintRemark.SLOW_WAVE_BY_NEW, pair.place(), volts(amplitude(pair.to())), frequency);
    }

    private static Argument volts(double amplitude) {
        return Argument.prefixed(amplitude, Unit.VOLT, 2);
    }
}
