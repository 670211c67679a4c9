package clipwitness.compare.hint;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Change;
import clipwitness.compare.judge.Drift;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * All changes are what another position of the gain control would make. The shift is the least-squares answer of the changes of level and
 * distortion, in dB, at all settings between the end stops over their slopes along the gain control before the work. It explains them when it
 * exceeds two standard deviations of the knob's repeatability, leaves none beyond its expanded uncertainty and what the bend
 * of the curve between two settings allows, and takes nine tenths of their
 * squares away; at the end stops, where no knob can be off, nothing may have changed.
 */
final class KnobOffset implements HintRule {
    private static final List<ItemValue> FIGURES = List.of(ItemValue.LEVEL, ItemValue.THD);
    private static final int FEWEST_CHANGES = 3;
    private static final double LEFT_OVER = 0.1;

    /**
     * One change, with the slopes of its figure over the gain control towards the settings below and above, dB per percent; none at an end
     * stop.
     */
    private record Shifted(double change, double expanded, double below, double above) {
        double slope() {
            return (below + above) / 2;
        }

        double slope(double shift) {
            return shift < 0 ? below : above;
        }

        double left(double shift) {
            return change - slope(shift) * shift;
        }

        /** What may be left: the uncertainty, and half of what the bend of the curve between the settings makes. */
        double allowed(double shift) {
            return expanded + Math.abs((above - below) * shift) / 2;
        }
    }

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.states(Role.UNCHANGED).stream()
                .flatMap(s -> hint(evidence, s).stream())
                .toList();
    }

    private static Optional<Hint> hint(Evidence evidence, State state) {
        List<Shifted> changes = new ArrayList<>();
        for (Evidence.Pair pair : evidence.pairs(state)) {
            if (pair.from().condition().gainPercent().isPresent()) {
                FIGURES.forEach(f -> change(evidence, pair, f).ifPresent(changes::add));
            }
        }
        double shift = shift(changes);
        double least = 200 * evidence.job().sheet().bench().knobRepeatability();
        return Math.abs(shift) > least && explains(changes, shift)
                ? Optional.of(hint(state, changes, shift))
                : Optional.empty();
    }

    private static Optional<Shifted> change(Evidence evidence, Evidence.Pair pair, ItemValue figure) {
        Measured change = new Change(
                        evidence.repeatability(), Drift.of(evidence.job().sheet()))
                .of(pair.from(), pair.to(), figure);
        return change.asValue()
                .filter(v -> !pair.from().figure(figure).asValue().orElseThrow().isUpperBound())
                .map(v -> shifted(v, evidence.catalogue(), pair.from(), figure));
    }

    private static Shifted shifted(
            Measured.Value change, Catalogue catalogue, StateAtCondition setting, ItemValue figure) {
        List<StateAtCondition> around = catalogue.around(setting);
        if (!Repeatability.isBetweenStops(setting) || around.size() < 2) {
            return new Shifted(change.number(), change.expanded(), 0, 0);
        }
        return new Shifted(
                change.number(),
                change.expanded(),
                slope(around.get(0), setting, figure),
                slope(setting, around.get(around.size() - 1), figure));
    }

    private static double slope(StateAtCondition low, StateAtCondition high, ItemValue figure) {
        double apart = Catalogue.gain(high) - Catalogue.gain(low);
        return apart > 0 ? new Evidence.Pair(low, high).change(figure).orElse(0) / apart : 0;
    }

    /** The shift, first by the mean of the slopes on both sides, then by those of the side that it goes to. */
    private static double shift(List<Shifted> changes) {
        double first = shift(changes, Shifted::slope);
        return shift(changes, c -> c.slope(first));
    }

    private static double shift(List<Shifted> changes, ToDoubleFunction<Shifted> slopes) {
        double product = 0;
        double square = 0;
        for (Shifted c : changes) {
            double slope = slopes.applyAsDouble(c);
            double weight = 1 / Math.max(c.expanded * c.expanded, Double.MIN_NORMAL);
            product += weight * slope * c.change;
            square += weight * slope * slope;
        }
        return square > 0 ? product / square : 0;
    }

    private static boolean explains(List<Shifted> changes, double shift) {
        double before = 0;
        double after = 0;
        for (Shifted c : changes) {
            if (Math.abs(c.left(shift)) > c.allowed(shift)) {
                return false;
            }
            before += c.change * c.change;
            after += c.left(shift) * c.left(shift);
        }
        long sloping = changes.stream().filter(c -> c.slope(shift) != 0).count();
        boolean moved = changes.stream().anyMatch(c -> Math.abs(c.change) > c.expanded);
        return moved && sloping >= FEWEST_CHANGES && after < LEFT_OVER * before;
    }

    private static Hint hint(State state, List<Shifted> changes, double shift) {
        double left =
                changes.stream().mapToDouble(c -> Math.abs(c.left(shift))).max().orElse(0);
        return new Hint(
                HintCode.KNOB_OFFSET,
                Optional.of(state.name()),
                Remark.of(HintRemark.KNOB_OFFSET, Argument.name(state.called())),
                Remark.of(
                        HintRemark.KNOB_OFFSET_BY,
                        Argument.signed(shift, Unit.PERCENT, 1),
                        Argument.decimals(left, Unit.DECIBEL, 2)));
    }
}
