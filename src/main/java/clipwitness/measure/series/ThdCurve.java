package clipwitness.measure.series;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.Crossing;
import clipwitness.signal.ShapePreservingInterpolation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Total harmonic distortion over the gain control: log(thd) by shape-preserving cubic interpolation between the settings, never beyond
 * them. Settings whose distortion noise only bounds take part with that bound: they can lie above a mark only if the mark is below it.
 */
public final class ThdCurve {
    private final List<Point> points;

    private ThdCurve(List<Point> points) {
        this.points = points;
    }

    private record Point(double gain, double logThd, double uncertainty) {}

    /**
     * A curve.
     *
     * @param gains positions of the gain control in percent of rotation, rising
     * @param thds  distortion at each, in percent; refusals are left out
     */
    public static ThdCurve of(List<Double> gains, List<Measured> thds) {
        if (gains.size() != thds.size()) {
            throw new IllegalArgumentException("a curve needs as many gains as distortions");
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < gains.size(); i++) {
            double gain = gains.get(i);
            thds.get(i).asValue().map(v -> point(gain, v)).ifPresent(points::add);
        }
        return new ThdCurve(
                points.stream().filter(p -> Double.isFinite(p.logThd)).toList());
    }

    private static Point point(double gain, Measured.Value thd) {
        double level = Math.max(thd.number(), thd.standardUncertainty());
        return new Point(gain, Math.log(level), thd.standardUncertainty() / level);
    }

    /**
     * Setting at which the distortion first reaches a mark, in percent of rotation; refused where the lowest setting
     * lies above it, where no setting reaches it, and where there are fewer than two settings.
     *
     * @param mark distortion in percent, above 0, with the uncertainty of its own
     */
    public Measured gainAt(Measured.Value mark) {
        if (points.isEmpty()) {
            return Measured.refused(Unit.PERCENT, FigureReason.NO_DISTORTION_FIGURE);
        }
        if (points.size() == 1) {
            return Measured.refused(Unit.PERCENT, FigureReason.ONE_SETTING_ONLY);
        }
        double level = Math.log(mark.number());
        OptionalInt end = endThatEquals(level, mark.standardUncertainty() / mark.number());
        if (end.isPresent()) {
            return atEnd(end.getAsInt(), mark.standardUncertainty() / mark.number());
        }
        Crossing crossing = interpolation().crossing(level);
        if (crossing instanceof Crossing.At at) {
            return at(at.x(), level, mark.standardUncertainty() / mark.number());
        }
        return Measured.refused(
                Unit.PERCENT,
                crossing instanceof Crossing.NotReached ? FigureReason.NOT_REACHED : FigureReason.BELOW_LOWEST_SETTING);
    }

    /** The end of the curve that an uncertain mark lies beyond by less than the two are known: it may well be that setting's. */
    private OptionalInt endThatEquals(double level, double relativeUncertainty) {
        int last = points.size() - 1;
        boolean rising = points.get(last).logThd > points.get(0).logThd;
        return IntStream.of(0, last)
                .filter(i -> (i == 0) == rising ? level <= points.get(i).logThd : level >= points.get(i).logThd)
                .filter(i -> relativeUncertainty > 0
                        && Math.abs(level - points.get(i).logThd)
                                <= 2 * Math.hypot(points.get(i).uncertainty, relativeUncertainty))
                .findFirst();
    }

    private Measured atEnd(int place, double relativeUncertainty) {
        Point end = points.get(place);
        Point next = points.get(place == 0 ? 1 : place - 1);
        if (next.logThd == end.logThd) {
            return flat();
        }
        double chord = (next.gain - end.gain) / (next.logThd - end.logThd);
        return Measured.withNoise(
                end.gain, Unit.PERCENT, Math.abs(chord) * Math.hypot(end.uncertainty, relativeUncertainty));
    }

    private static Measured flat() {
        return Measured.refused(Unit.PERCENT, FigureReason.DISTORTION_LEVEL);
    }

    private Measured at(double gain, double level, double relativeUncertainty) {
        int above = 1;
        while (points.get(above).gain < gain) {
            above++;
        }
        Point low = points.get(above - 1);
        Point high = points.get(above);
        if (high.logThd == low.logThd) {
            return flat();
        }
        double chord = (high.gain - low.gain) / (high.logThd - low.logThd);
        double share = (gain - low.gain) / (high.gain - low.gain);
        double noise =
                Math.hypot(Math.hypot((1 - share) * low.uncertainty, share * high.uncertainty), relativeUncertainty);
        // Between two settings the curve's bend is not known: what cubic and chord differ by bounds the error of
        // either.
        double straight = low.gain + (level - low.logThd) * chord;
        return Measured.of(
                gain,
                Unit.PERCENT,
                new Contribution(Source.NOISE, Math.abs(chord) * noise),
                new Contribution(Source.METHOD, Math.abs(gain - straight) / Math.sqrt(3)));
    }

    private ShapePreservingInterpolation interpolation() {
        return new ShapePreservingInterpolation(
                points.stream().mapToDouble(Point::gain).toArray(),
                points.stream().mapToDouble(Point::logThd).toArray());
    }
}
