package clipwitness.measure.series;

import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.ShapePreservingInterpolation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Total harmonic distortion over the gain control: log(thd) by shape-preserving cubic interpolation between the settings, never beyond
 * them. A setting whose distortion noise only bounds is no point of the curve: where one of the two settings about a mark is such, the mark is
 * reached between settings, and its place is unknown, unless it is nearly that of the upper setting.
 */
public final class ThdCurve {
    private static final double RECTANGULAR = Math.sqrt(3);

    /** Share of the way between two settings within which the upper setting alone still gives the place of a mark. */
    private static final double CLOSE = 0.25;

    private final List<Point> points;
    private final List<Point> sure;

    private ThdCurve(List<Point> points) {
        this.points = points;
        this.sure = points.stream().filter(p -> !p.thd.isUpperBound()).toList();
    }

    private record Point(double gain, Measured.Value thd) {
        double log() {
            return Math.log(thd.number());
        }

        boolean isBelow(double mark) {
            return thd.shown() < mark;
        }
    }

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
            thds.get(i)
                    .asValue()
                    .filter(v -> v.shown() > 0)
                    .map(v -> new Point(gain, v))
                    .ifPresent(points::add);
        }
        return new ThdCurve(points);
    }

    /**
     * Setting at which the distortion first reaches a mark, in percent of rotation; refused where the lowest setting
     * lies above it, where no setting reaches it, and where there are fewer than two settings; between two settings where noise
     * hides the distortion at the lower one. No distortion at all lies below every setting.
     *
     * @param mark distortion in percent with the uncertainty of its own
     */
    public Measured gainAt(Measured.Value mark) {
        if (points.isEmpty()) {
            return Measured.refused(Unit.PERCENT, FigureReason.NO_DISTORTION_FIGURE);
        }
        if (points.size() == 1) {
            return Measured.refused(Unit.PERCENT, FigureReason.ONE_SETTING_ONLY);
        }
        if (!(mark.number() > 0)) {
            return Measured.refused(Unit.PERCENT, FigureReason.BELOW_LOWEST_SETTING);
        }
        OptionalInt end = endThatEquals(mark);
        return end.isPresent() ? atEnd(end.getAsInt(), mark) : crossing(mark);
    }

    /** The end of the curve where the mark lies beyond it by less than the uncertainty of the two: the mark may be reached there. */
    private OptionalInt endThatEquals(Measured.Value mark) {
        int last = sure.size() - 1;
        if (last < 1 || mark.standardUncertainty() == 0) {
            return OptionalInt.empty();
        }
        double level = Math.log(mark.number());
        boolean rising = sure.get(last).log() > sure.get(0).log();
        return IntStream.of(0, last)
                .filter(i -> (i == 0) == rising
                        ? level <= sure.get(i).log()
                        : level >= sure.get(i).log())
                .filter(i -> Math.abs(level - sure.get(i).log()) <= expanded(sure.get(i), mark))
                .findFirst();
    }

    /** Expanded uncertainty of the ratio of a setting's distortion and the mark. */
    private static double expanded(Point point, Measured.Value mark) {
        List<Contribution> both =
                Stream.concat(relative(point.thd, 1), relative(mark, 1)).toList();
        return Budget.coverageFactor(both) * Budget.standardUncertainty(both);
    }

    private Measured atEnd(int place, Measured.Value mark) {
        Point end = sure.get(place);
        Point next = sure.get(place == 0 ? 1 : place - 1);
        if (next.log() == end.log()) {
            return flat();
        }
        double chord = Math.abs((next.gain - end.gain) / (next.log() - end.log()));
        return new Measured.Value(
                end.gain,
                Unit.PERCENT,
                Budget.bySource(Stream.concat(relative(end.thd, chord), relative(mark, chord))
                        .toList()),
                false);
    }

    private static Measured flat() {
        return Measured.refused(Unit.PERCENT, FigureReason.DISTORTION_LEVEL);
    }

    private Measured crossing(Measured.Value mark) {
        OptionalInt first = IntStream.range(0, points.size())
                .filter(i ->
                        !points.get(i).thd.isUpperBound() && points.get(i).thd.number() >= mark.number())
                .findFirst();
        if (first.isEmpty()) {
            return Measured.refused(Unit.PERCENT, FigureReason.NOT_REACHED);
        }
        int above = first.getAsInt();
        OptionalInt below = IntStream.iterate(above - 1, i -> i >= 0, i -> i - 1)
                .filter(i -> points.get(i).isBelow(mark.number()))
                .findFirst();
        if (above == 0) {
            return Measured.refused(Unit.PERCENT, FigureReason.BELOW_LOWEST_SETTING);
        }
        if (below.isEmpty()) {
            return Measured.between(Unit.PERCENT, OptionalDouble.empty(), points.get(above).gain);
        }
        Point low = points.get(below.getAsInt());
        return below.getAsInt() < above - 1 || low.thd.isUpperBound()
                ? between(low, points.get(above), mark)
                : interpolated(mark);
    }

    /**
     * Between two settings at the lower of which noise hides the distortion. Where the upper one is hardly above the mark, and the distortion rises
     * faster beyond it than it can have risen to it, the mark is reached close below the upper one: not before the chord from nothing at the
     * lower one. Else nothing says where.
     */
    private Measured between(Point low, Point high, Measured.Value mark) {
        double thd = high.thd.number();
        double width = high.gain - low.gain;
        double reach = width * (thd - mark.number()) / thd;
        if (reach > CLOSE * width || !risesFasterBeyond(high, thd / width)) {
            return Measured.between(Unit.PERCENT, OptionalDouble.of(low.gain), high.gain);
        }
        List<Contribution> parts = new ArrayList<>();
        relative(high.thd, width).forEach(parts::add);
        relative(mark, width).forEach(parts::add);
        parts.add(new Contribution(Source.METHOD, reach / 2 / RECTANGULAR));
        return new Measured.Value(high.gain - reach / 2, Unit.PERCENT, Budget.bySource(parts), false);
    }

    private boolean risesFasterBeyond(Point high, double slope) {
        int next = sure.indexOf(high) + 1;
        return next < sure.size()
                && (sure.get(next).thd.number() - high.thd.number()) / (sure.get(next).gain - high.gain) > slope;
    }

    private Measured interpolated(Measured.Value mark) {
        double[] gains = sure.stream().mapToDouble(Point::gain).toArray();
        double[] logs = sure.stream().mapToDouble(Point::log).toArray();
        double level = Math.log(mark.number());
        Optional<CrossingPlace> found = CrossingPlace.of(gains, logs, level);
        CrossingPlace place = found.orElseThrow();
        Point low = sure.get(place.above() - 1);
        Point high = sure.get(place.above());
        double chord = (high.gain - low.gain) / (high.log() - low.log());
        double share = (place.at() - low.gain) / (high.gain - low.gain);
        List<Contribution> parts = new ArrayList<>();
        relative(low.thd, chord * (1 - share)).forEach(parts::add);
        relative(high.thd, chord * share).forEach(parts::add);
        relative(mark, chord).forEach(parts::add);
        parts.add(new Contribution(
                Source.METHOD, (place.bound() + offLinear(gains, mark.number(), place.at())) / RECTANGULAR));
        return new Measured.Value(place.at(), Unit.PERCENT, Budget.bySource(parts), false);
    }

    /** How far the place lies from the one that the same curve through the distortion itself, not its logarithm, has. */
    private double offLinear(double[] gains, double mark, double at) {
        double[] thds = sure.stream().mapToDouble(p -> p.thd.number()).toArray();
        double width = gains[gains.length - 1] - gains[0];
        return CrossingPlace.difference(at, new ShapePreservingInterpolation(gains, thds).crossing(mark), width);
    }

    /** Contributions to the logarithm of a distortion, times a factor. */
    private static Stream<Contribution> relative(Measured.Value thd, double factor) {
        return thd.budget().stream().map(c -> c.times(factor / thd.number()));
    }
}
