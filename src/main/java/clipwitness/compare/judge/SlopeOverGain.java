package clipwitness.compare.judge;

import clipwitness.measure.Measured;
import clipwitness.measure.series.GainSlope;
import clipwitness.quantity.Decibels;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Slope of a setting's figure over the gain control, from the settings of its state that differ in the gain control only. Levels are
 * followed as amplitudes: over a clean minimum a distortion in dB rises without end while in percent it rises from nothing. A setting whose
 * figure noise bounds tells a slope only where its bound lies below the figure at the setting itself: its figure lies between nothing and
 * the bound, and what that leaves open is in the slope's error. Other such settings are left out; where no others are left, they stand in with
 * what they are bounded to.
 */
final class SlopeOverGain {
    private final Catalogue catalogue;

    SlopeOverGain(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** One setting with a figure of it. */
    private record Point(StateAtCondition setting, Measured.Value figure) {}

    /** The slope in the figure's unit for one percent; empty where the state has no other setting with the figure. */
    Optional<GainSlope> of(StateAtCondition setting, Function<StateAtCondition, Measured> figure) {
        List<Point> points = catalogue.alongGain(setting).stream()
                .flatMap(s -> figure.apply(s).asValue().map(v -> new Point(s, v)).stream())
                .toList();
        Optional<Point> own = points.stream().filter(p -> isAt(p, setting)).findFirst();
        List<Point> sure = points.stream()
                .filter(p -> !p.figure.isUpperBound() || isAt(p, setting) || liesBelow(p.figure, own))
                .toList();
        return own.flatMap(o -> of(o, sure.size() > 1 ? sure : points));
    }

    private static Optional<GainSlope> of(Point own, List<Point> points) {
        if (points.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(GainSlope.at(
                points.stream().mapToDouble(p -> Catalogue.gain(p.setting)).toArray(),
                points.stream()
                        .mapToDouble(p -> fromOwn(own.figure, p.figure).middle())
                        .toArray(),
                points.stream()
                        .mapToDouble(p -> fromOwn(own.figure, p.figure).half())
                        .toArray(),
                points.indexOf(own)));
    }

    private static boolean isAt(Point point, StateAtCondition setting) {
        return point.setting.condition().equals(setting.condition());
    }

    /** Whether a bound lies below the figure at the setting itself, which is none. */
    private static boolean liesBelow(Measured.Value bound, Optional<Point> own) {
        return own.filter(o -> !o.figure.isUpperBound() && bound.shown() < o.figure.number())
                .isPresent();
    }

    /**
     * How far a figure lies from the one at the setting itself.
     *
     * @param middle middle of what it may be
     * @param half   half width of that; 0 where the figure is known
     */
    private record Distance(double middle, double half) {}

    private static Distance fromOwn(Measured.Value own, Measured.Value other) {
        if (!other.isUpperBound() || own.isUpperBound()) {
            return new Distance(distance(own, start(other)), 0);
        }
        double nothing = switch (own.unit()) {
            case DECIBEL, DBC -> -Decibels.PER_RELATIVE_AMPLITUDE;
            default -> -own.number();
        };
        double bound = distance(own, other.shown());
        return new Distance((nothing + bound) / 2, (bound - nothing) / 2);
    }

    /** A figure, or of a level that noise bounds what it lies below. */
    private static double start(Measured.Value figure) {
        return figure.isBoundedLevel() ? figure.shown() : figure.number();
    }

    /** How far a figure lies from the one at the setting itself, in its unit there. */
    private static double distance(Measured.Value own, double other) {
        double difference = other - start(own);
        return switch (own.unit()) {
            case DECIBEL, DBC -> Decibels.PER_RELATIVE_AMPLITUDE * (Decibels.toAmplitude(difference) - 1);
            case DEGREE -> Math.IEEEremainder(difference, 360);
            default -> difference;
        };
    }

    /**
     * Slope of the remainder of a null: how fast the wave's shape leaves the setting's own, a ratio for one percent. Between two neighbours
     * it is that of the parabola through the three waves, and as with every slope the largest difference to a chord is its bound.
     */
    OptionalDouble ofRemainder(StateAtCondition setting) {
        List<StateAtCondition> around = catalogue.around(setting);
        if (around.size() < 2) {
            return OptionalDouble.empty();
        }
        if (around.size() == 2) {
            double chord = remainder(around.get(0), around.get(1)) / width(around.get(0), around.get(1));
            return OptionalDouble.of(new GainSlope(chord, chord).effective());
        }
        return OptionalDouble.of(ofRemainder(around.get(0), around.get(1), around.get(2)));
    }

    private static double ofRemainder(StateAtCondition below, StateAtCondition own, StateAtCondition above) {
        double before = width(below, own);
        double after = width(own, above);
        double first = remainder(own, below);
        double second = remainder(own, above);
        double whole = remainder(below, above);
        double chord1 = first / before;
        double chord2 = second / after;
        double product = Math.max(
                -chord1 * chord2,
                Math.min(chord1 * chord2, (whole * whole - first * first - second * second) / (2 * before * after)));
        double mean =
                (after * after * chord1 * chord1 + before * before * chord2 * chord2 + 2 * before * after * product)
                        / ((before + after) * (before + after));
        double apart = Math.sqrt(chord1 * chord1 + chord2 * chord2 - 2 * product);
        return new GainSlope(Math.sqrt(mean), Math.max(before, after) / (before + after) * apart).effective();
    }

    private static double width(StateAtCondition below, StateAtCondition above) {
        return Catalogue.gain(above) - Catalogue.gain(below);
    }

    private static double remainder(StateAtCondition a, StateAtCondition b) {
        return NullItem.remainder(a, b).orElse(0.0);
    }
}
