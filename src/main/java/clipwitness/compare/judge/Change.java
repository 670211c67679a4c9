package clipwitness.compare.judge;

import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.LevelChange;
import clipwitness.measure.LevelEnds;
import clipwitness.measure.LevelSide;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The change of a figure from one setting to another, with its budget. */
public final class Change {
    private final Repeatability repeatability;
    private final Drift drift;

    /** Changes in a job with this repeatability and this drift. */
    public Change(Repeatability repeatability, Drift drift) {
        this.repeatability = repeatability;
        this.drift = drift;
    }

    /** Difference of the figures, contributions of equal source combined as independent (JCGM 100, 5.1.2). */
    public Measured of(StateAtCondition from, StateAtCondition to, ItemValue figure) {
        Measured a = from.figure(figure);
        Measured b = to.figure(figure);
        if (a.asValue().isEmpty()) {
            return Measured.refused(figure.item().unit(), inState(from, a));
        }
        if (b.asValue().isEmpty()) {
            return Measured.refused(figure.item().unit(), inState(to, b));
        }
        if (figure.equals(ItemValue.LEVEL) && from.hasVolts() != to.hasVolts()) {
            StateAtCondition without = from.hasVolts() ? to : from;
            return Measured.refused(figure.item().unit(), Reason.of(FigureReason.VOLTS_OF_ONE_STATE, without.name()));
        }
        Measured.Value x = a.asValue().get();
        Measured.Value y = b.asValue().get();
        if (figure.isLevelOfResidue()) {
            return LevelChange.of(side(from, figure, x), side(to, figure, y), drift.of(from, to, figure));
        }
        List<Contribution> parts = parts(from, figure);
        parts.addAll(parts(to, figure));
        parts.addAll(drift.of(from, to, figure));
        return new Measured.Value(
                figure.difference(y.number(), x.number()), figure.item().unit(), Budget.bySource(parts), false);
    }

    /**
     * One of two levels of what the tone leaves: near its uncertainty by the ends of the amount itself, the knob's part in it included, for a level near nothing has
     * no slope over the gain control.
     */
    private LevelSide side(StateAtCondition setting, ItemValue figure, Measured.Value level) {
        Optional<Measured.Value> amount =
                repeatability.figure(setting, figure.quantity()).asValue();
        return amount.filter(LevelEnds::isNearUncertainty)
                .map(a -> LevelSide.ofAmount(level.number(), a))
                .orElseGet(() -> LevelSide.ofFirstOrder(level, repeatability.of(setting, figure)));
    }

    /** Share of the first setting in the variance of each source of {@link #of}. */
    Map<Source, Double> shareOfFirst(StateAtCondition from, StateAtCondition to, ItemValue figure) {
        return shares(parts(from, figure), parts(to, figure));
    }

    /** What one setting alone brings. */
    private List<Contribution> parts(StateAtCondition setting, ItemValue figure) {
        List<Contribution> parts = new ArrayList<>(
                setting.figure(figure).asValue().map(Measured.Value::budget).orElse(List.of()));
        parts.addAll(repeatability.of(setting, figure));
        return parts;
    }

    /** Variance share of the first of two lists in each source. */
    public static Map<Source, Double> shares(List<Contribution> first, List<Contribution> second) {
        Map<Source, Double> firsts = squares(first);
        Map<Source, Double> seconds = squares(second);
        Map<Source, Double> shares = new EnumMap<>(Source.class);
        firsts.forEach((source, square) -> {
            double sum = square + seconds.getOrDefault(source, 0.0);
            shares.put(source, sum > 0 ? square / sum : 0);
        });
        return shares;
    }

    private static Map<Source, Double> squares(List<Contribution> parts) {
        Map<Source, Double> squares = new EnumMap<>(Source.class);
        for (Contribution c : parts) {
            squares.merge(c.source(), c.variance(), Double::sum);
        }
        return squares;
    }

    private static Reason inState(StateAtCondition setting, Measured refused) {
        Optional<Reason> reason = refused.reason();
        return Reason.of(FrameReason.IN_STATE, setting.name(), Argument.inner(reason.orElseThrow()));
    }
}
