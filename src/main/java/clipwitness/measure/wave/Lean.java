package clipwitness.measure.wave;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.DiscreteSpectrum;
import clipwitness.signal.MeanCycle;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where the area of the positive half-wave lies: (its centroid - its middle) / its length, in percent. The half-wave is the stretch of
 * swing above zero around the upper peak. 0 for a sine; negative when it leans early (a fast edge, then a sag), positive when late
 * (a slow rise, then a drop); a right-angled ramp has 16.67 %.
 */
final class Lean {
    private static final int FEWEST_BINS = 8;

    private final double[] swing;
    private final ZeroCrossing start;
    private final ZeroCrossing end;
    private final int first;
    private final int last;

    private Lean(double[] swing, ZeroCrossing start, ZeroCrossing end) {
        this.swing = swing;
        this.start = start;
        this.end = end;
        this.first = (int) Math.floor(start.place()) + 1;
        this.last = (int) Math.ceil(end.place()) - 1;
    }

    static Measured of(FittedWave wave, Extreme upper, Extreme lower) {
        MeanCycle cycle = wave.cycle();
        int bins = cycle.bins();
        double mean = wave.fit().mean();
        double[] swing = cycle.values();
        for (int i = 0; i < bins; i++) {
            swing[i] -= mean;
        }
        int top = Math.min((int) (upper.phase() * bins), bins - 1);
        double smaller = Math.min(upper.value() - mean, mean - lower.value());
        Optional<ZeroCrossing> start = ZeroCrossing.of(swing, top, -1, smaller);
        Optional<ZeroCrossing> end = ZeroCrossing.of(swing, top, 1, smaller);
        double length = start.isEmpty() || end.isEmpty()
                ? 0
                : end.get().place() - start.get().place();
        if (length < FEWEST_BINS || length >= bins) {
            return Measured.refused(Unit.PERCENT, FigureReason.NO_HALF_WAVE);
        }
        return new Lean(swing, start.get(), end.get()).measured(cycle, wave.undithered());
    }

    private double swing(int bin) {
        return swing[Math.floorMod(bin, swing.length)];
    }

    private Measured measured(MeanCycle cycle, double undithered) {
        double area = 0;
        double moment = 0;
        double x = start.place();
        double y = 0;
        for (int i = first; i <= last + 1; i++) {
            double nextX = i > last ? end.place() : i;
            double nextY = i > last ? 0 : swing(i);
            double width = nextX - x;
            area += width * (y + nextY) / 2;
            moment += width * (x * (2 * y + nextY) + nextX * (y + 2 * nextY)) / 6;
            x = nextX;
            y = nextY;
        }
        double length = end.place() - start.place();
        double centroid = moment / area;
        double lean = (centroid - (start.place() + end.place()) / 2) / length;
        double[] weights = weights(area, centroid, lean);
        OptionalInt harmonics = cycle.harmonicsOfNoise();
        double noise = harmonics.isEmpty() ? white(weights) : ofHarmonics(weights, harmonics.getAsInt());
        double percent = 100 / length;
        Measured.Value measured =
                Measured.withNoise(100 * lean, Unit.PERCENT, cycle.independentBinUncertainty() * noise * percent);
        Measured.Value stepped =
                undithered > 0 ? measured.plus(Source.CONVERTER_STEP, undithered * noise * percent) : measured;
        double folded = ofFolding(weights, cycle);
        return folded > 0 ? stepped.plus(Source.METHOD, folded * percent) : stepped;
    }

    /** What harmonics that fold onto those of the cycle may add, u = a / sqrt 3 of each. */
    private static double ofFolding(double[] weights, MeanCycle cycle) {
        FoldedHarmonics folded = new FoldedHarmonics(cycle);
        if (folded.none()) {
            return 0;
        }
        DiscreteSpectrum spectrum = DiscreteSpectrum.of(Samples.of(weights));
        double power = 0;
        for (int k = 1; k <= cycle.harmonics(); k++) {
            power += spectrum.power(k) * Math.pow(folded.bound(k), 2) / 3;
        }
        return Math.sqrt(power);
    }

    /** By how many bins the lean moves for a unit more in each bin: through the centroid, and through start and end. */
    private double[] weights(double area, double centroid, double lean) {
        double[] weights = new double[swing.length];
        for (int i = Math.min(first, start.from()); i <= Math.max(last, end.to()); i++) {
            double ofCentroid = i >= first && i <= last ? width(i) * (i - centroid) / area : 0;
            double ofStart = (lean - 0.5) * start.sensitivity(i);
            double ofEnd = -(lean + 0.5) * end.sensitivity(i);
            weights[Math.floorMod(i, swing.length)] += ofCentroid + ofStart + ofEnd;
        }
        return weights;
    }

    /** Root sum square of the weights, for bins with noise of their own; the mean, from which the swing is counted, takes its share with it. */
    private static double white(double[] weights) {
        double squares = 0;
        double sum = 0;
        for (double w : weights) {
            squares += w * w;
            sum += w;
        }
        return Math.sqrt(Math.max(0, squares - sum * sum / weights.length));
    }

    /** The same for a cycle whose noise consists of some harmonics alone: what the weights have of these (Parseval's theorem). */
    private static double ofHarmonics(double[] weights, int harmonics) {
        DiscreteSpectrum spectrum = DiscreteSpectrum.of(Samples.of(weights));
        double power = 0;
        for (int k = 1; k <= harmonics; k++) {
            power += 2 * spectrum.power(k) / weights.length;
        }
        return Math.sqrt(power);
    }

    /** What a bin of the half-wave counts in its area: half the way to its neighbours, which at the ends are the crossings. */
    private double width(int bin) {
        double before = bin == first ? start.place() : bin - 1;
        double after = bin == last ? end.place() : bin + 1;
        return (after - before) / 2;
    }
}
