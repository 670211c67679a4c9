package clipwitness.measure.junction;

import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Fits {@link JunctionModel} to a curve: to the forward points above the floor and within four decades of the highest current; with a
 * shunt, and the reverse points down to -2 V then, where {@link ShuntChoice} says so and the shunt is known to a half.
 */
final class JunctionFitting {
    private static final double DECADES_BELOW_TOP = 1e-4;
    private static final int FEWEST_POINTS = 6;
    private static final double LEAST_RATIO = 10;
    private static final double CURVED = 3;
    private static final double MISFIT = 0.1;
    private static final double DEEPEST_REVERSE = -2;
    private static final double SMALLER = 30;
    private static final double SHUNT_KNOWN_TO = 0.5;

    private final List<TracedPoint> all;
    private final Floor floor;
    private final List<TracedPoint> used;

    JunctionFitting(List<TracedPoint> all, Floor floor) {
        this.all = all;
        this.floor = floor;
        double top = all.stream().mapToDouble(TracedPoint::amperes).max().orElse(0);
        double least = Math.max(floor.threshold(), DECADES_BELOW_TOP * top);
        this.used = all.stream()
                .filter(p -> p.volts() > 0 && p.amperes() > least)
                .map(this::withFloor)
                .sorted(Comparator.comparingDouble(TracedPoint::amperes))
                .toList();
    }

    private TracedPoint withFloor(TracedPoint p) {
        return new TracedPoint(p.volts(), p.amperes(), p.voltsSigma(), Math.hypot(p.amperesSigma(), floor.sigma()));
    }

    /** The fit, or why there is none. */
    sealed interface Answer {
        /** The fit stands. */
        record Fitted(ShuntChoice choice) implements Answer {}

        /** The curve is no junction's, and why. */
        record Refused(Reason why) implements Answer {}
    }

    Answer answer() {
        Optional<Reason> shape = CurveShape.notAJunction(all, used, floor);
        if (shape.isPresent()) {
            return new Answer.Refused(shape.get());
        }
        if (used.size() < FEWEST_POINTS) {
            return new Answer.Refused(
                    Reason.of(DeviceReason.FEW_POINTS, Argument.count(used.size()), Argument.count(FEWEST_POINTS)));
        }
        if (used.get(used.size() - 1).amperes() < LEAST_RATIO * used.get(0).amperes()) {
            return refused(DeviceReason.LESS_THAN_A_DECADE);
        }
        Optional<FitAttempt> plain = FitAttempt.of(used, ModelStart.of(used));
        Optional<FitAttempt> shunted = withShunt(plain);
        if (plain.isEmpty() && shunted.isEmpty()) {
            return refused(DeviceReason.FIT_DOES_NOT_SETTLE);
        }
        ShuntChoice choice = plain.isPresent() && shunted.isPresent()
                ? ShuntChoice.of(plain.get(), shunted.get(), used, reverse())
                : ShuntChoice.only(plain.or(() -> shunted).orElseThrow());
        return checked(choice.passive());
    }

    private Answer checked(ShuntChoice choice) {
        FitAttempt attempt = choice.stands();
        TracedPoint low = used.get(0);
        TracedPoint top = used.get(used.size() - 1);
        JunctionModel model = attempt.model();
        if (model.resistanceAt(low.amperes()) < CURVED * model.resistanceAt(top.amperes())) {
            return refused(DeviceReason.NEARLY_STRAIGHT);
        }
        boolean misfit = attempt.scatter() > MISFIT * (top.volts() - low.volts());
        return misfit ? refused(DeviceReason.NOT_EXPONENTIAL) : new Answer.Fitted(choice);
    }

    private static Answer refused(DeviceReason reason) {
        return new Answer.Refused(Reason.of(reason));
    }

    /** Reverse points, those in the floor too. */
    private List<TracedPoint> reverse() {
        return all.stream()
                .filter(p -> p.volts() < 0 && p.volts() >= DEEPEST_REVERSE)
                .map(this::withFloor)
                .toList();
    }

    private Optional<FitAttempt> withShunt(Optional<FitAttempt> plain) {
        List<TracedPoint> points = new ArrayList<>(used);
        List<TracedPoint> leaking =
                reverse().stream().filter(p -> p.amperes() < -floor.threshold()).toList();
        points.addAll(leaking);
        JunctionModel start = plain.map(FitAttempt::model).orElseGet(() -> ModelStart.of(used));
        TracedPoint leakiest = leaking.stream()
                .min(Comparator.comparingDouble(TracedPoint::volts))
                .orElse(used.get(0));
        double conductance = leakiest.amperes() / leakiest.volts() / 2;
        return FitAttempt.once(points, leaky(start, conductance))
                .or(() -> FitAttempt.once(points, leaky(start, conductance / SMALLER)))
                .filter(this::isKnown)
                .flatMap(s -> FitAttempt.of(points, s.model()))
                .filter(this::isKnown);
    }

    private static JunctionModel leaky(JunctionModel start, double conductance) {
        return new JunctionModel(
                start.saturationCurrent(), start.slopeVoltage(), start.seriesResistance(), conductance);
    }

    private boolean isKnown(FitAttempt shunted) {
        return shunted.fit().standardUncertainty(ModelRegression.SHUNT) * shunted.alikeness() < SHUNT_KNOWN_TO;
    }
}
