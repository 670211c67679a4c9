package clipwitness.compare.hint;

import clipwitness.compare.noise.HumGrowth;
import clipwitness.compare.noise.NoisePair;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lines of the mains that grew in the noise of a state, and what they suggest: even multiples of the mains are the ripple of a rectified supply, the mains itself
 * and its odd multiples are induced (common practice).
 */
final class HumLines {
    /** Above this share of what grew the even multiples decide, below the rest of it the odd ones. */
    private static final double MOST = 2.0 / 3;

    private HumLines() {}

    /** A condition of a state whose hum grew. */
    private record Place(NoisePair pair, HumGrowth growth) {}

    static Optional<Hint> grown(State state, Evidence evidence) {
        double limit = evidence.job().sheet().limits().of(LimitQuantity.HUM);
        return state.against().stream()
                .flatMap(before -> evidence.noise().pairs(before, state.name()).stream())
                .flatMap(p -> HumGrowth.beyond(limit, p).map(g -> new Place(p, g)).stream())
                .filter(p -> !p.growth.lines().isEmpty())
                .max(Comparator.comparingDouble(p -> p.growth.change().number()))
                .map(p -> hint(state, p));
    }

    private static Hint hint(State state, Place place) {
        return new Hint(
                HintCode.EXTRA_HUM,
                Optional.of(state.name()),
                Remark.of(suggestion(place.growth.evenShare()), Argument.name(state.called()), lines(place.growth)),
                evidence(place));
    }

    private static HintRemark suggestion(double evenShare) {
        if (evenShare > MOST) {
            return HintRemark.EXTRA_HUM_RIPPLE;
        }
        return evenShare < 1 - MOST ? HintRemark.EXTRA_HUM_INDUCED : HintRemark.EXTRA_HUM_BOTH;
    }

    /** The lines that grew most, three at most. */
    private static Argument lines(HumGrowth growth) {
        List<Argument> f =
                growth.lines().stream().limit(3).map(l -> hertz(l.frequency())).toList();
        return switch (f.size()) {
            case 1 -> Argument.word(HintRemark.ONE_LINE, f.get(0));
            case 2 -> Argument.word(HintRemark.TWO_LINES, f.get(0), f.get(1));
            default -> Argument.word(HintRemark.THREE_LINES, f.get(0), f.get(1), f.get(2));
        };
    }

    private static Remark evidence(Place place) {
        HumGrowth.Line line = place.growth.lines().get(0);
        return Remark.of(
                line.isNew() ? HintRemark.EXTRA_HUM_BY_NEW : HintRemark.EXTRA_HUM_BY,
                Evidence.place(place.pair.from().condition().gainPercent()),
                hertz(line.frequency()),
                volts(line.after()),
                volts(line.before()),
                Argument.decimals(place.growth.change().number(), Unit.DECIBEL, 1));
    }

    private static Argument hertz(double frequency) {
        return Argument.decimals(frequency, Unit.HERTZ, 0);
    }

    private static Argument volts(double rms) {
        return Argument.prefixed(rms, Unit.VOLT, 3);
    }
}
