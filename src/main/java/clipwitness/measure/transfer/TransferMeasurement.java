package clipwitness.measure.transfer;

import clipwitness.capture.Samples;
import clipwitness.measure.FilterCorners;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.TransferLoop;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The transfer curve of a capture and its figures. They hold only where the output follows the input at each instant: where the gap of the
 * branches with its expanded uncertainty is 1 % of the swing at most. Above that the curve is straightened; where that does not bring
 * the branches together either, the figures are refused.
 */
public final class TransferMeasurement {
    /** Largest gap of a curve, percent. */
    private static final double LARGEST_GAP = 1;

    private final FittedWave output;
    private final FittedWave input;
    private final double frequency;
    private final Measured gap;
    private final Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
    private final TransferCurve curve;

    /**
     * Measures one capture.
     *
     * @param up        upper extreme of the output
     * @param down      lower extreme of the output
     * @param frequency of the fundamental, Hz
     */
    TransferMeasurement(FittedWave output, FittedWave input, Extreme up, Extreme down, double frequency) {
        this.output = output;
        this.input = input;
        this.frequency = frequency;
        Branches branches = new Branches(output, input);
        gap = branches.gap(Corners.NONE);
        if (isCurve(gap)) {
            CurveFigures figures = new CurveFigures(output, input, up, down);
            values.putAll(figures.values());
            curve = curve(figures, Optional.empty());
        } else {
            curve = straightened(branches);
        }
        values.put(WaveformQuantity.BRANCH_GAP, gap);
    }

    /** Branch gap and the figures of the curve. */
    Map<WaveformQuantity, Measured> values() {
        return values;
    }

    /** The curve. */
    public TransferCurve curve() {
        return curve;
    }

    private static boolean isCurve(Measured gap) {
        return gap.asValue().orElseThrow().number() + gap.expandedUncertainty().orElseThrow() <= LARGEST_GAP;
    }

    private TransferCurve straightened(Branches branches) {
        Straightening straightening = new Straightening(output, input, branches);
        Corners corners = straightening.corners();
        boolean hidden =
                gap.asValue().orElseThrow().isUpperBound(); // noise alone explains it: no filter can be found in it
        if (!hidden && isCurve(branches.gap(corners))) {
            CurveFigures figures = straightening.figures();
            values.putAll(straightening.widened(figures));
            return curve(figures, Optional.of(corners.inHertz(frequency)));
        }
        CurveFigures.ALL.forEach(q -> values.put(q, Measured.refused(q.unit(), reason())));
        InputPlaces inputs = new InputPlaces(output, input);
        double middle = MeanCrossing.of(output, inputs.aligned()).value();
        return curve(output, inputs, middle, Optional.of(loop(middle, Optional.empty())));
    }

    private Reason reason() {
        Measured.Value known = gap.asValue().orElseThrow();
        return Reason.of(
                known.isUpperBound() ? FigureReason.BRANCHES_HIDDEN : FigureReason.BRANCHES_APART,
                percent(known.shown()));
    }

    private static Argument percent(double value) {
        return Argument.prefixed(value, Unit.PERCENT, 2);
    }

    private TransferCurve curve(CurveFigures figures, Optional<FilterCorners> corners) {
        InputPlaces inputs = figures.inputs();
        return curve(
                figures.output(),
                inputs,
                figures.middle(),
                corners.map(c -> loop(MeanCrossing.of(output, inputs.aligned()).value(), corners)));
    }

    private static TransferCurve curve(
            FittedWave output, InputPlaces inputs, double middle, Optional<TransferLoop> loop) {
        AveragedCurve averaged = AveragedCurve.of(output, inputs.aligned());
        return new TransferCurve(
                averaged.input(), averaged.output().map(v -> v - middle), averaged.gap(), inputs.inverting(), loop);
    }

    private TransferLoop loop(double middle, Optional<FilterCorners> corners) {
        double[] cycle = output.cycle().values();
        int half = cycle.length / 2;
        double[] rising = new double[half];
        double[] falling = new double[half];
        for (int i = 0; i < half; i++) {
            int up = Math.floorMod(i - half / 2, cycle.length);
            rising[i] = cycle[up] - middle;
            falling[i] = cycle[Math.floorMod(half - 1 - up, cycle.length)] - middle;
        }
        return new TransferLoop(Samples.of(rising), Samples.of(falling), corners);
    }

    /** A note where the curve was straightened. */
    public Optional<Doubt> doubt() {
        return curve.straightened().map(this::note);
    }

    private Doubt note(FilterCorners corners) {
        Argument percent = percent(gap.value().orElseThrow());
        Optional<Argument> low = hertz(corners.lowPass());
        Optional<Argument> high = hertz(corners.highPass());
        if (low.isPresent() && high.isPresent()) {
            return Doubt.of(Severity.NOTE, DoubtReason.STRAIGHTENED_BOTH, percent, low.get(), high.get());
        }
        return low.isPresent()
                ? Doubt.of(Severity.NOTE, DoubtReason.STRAIGHTENED_LOW, percent, low.get())
                : Doubt.of(Severity.NOTE, DoubtReason.STRAIGHTENED_HIGH, percent, high.orElseThrow());
    }

    private static Optional<Argument> hertz(OptionalDouble corner) {
        return corner.isPresent()
                ? Optional.of(Argument.prefixed(corner.getAsDouble(), Unit.HERTZ, 2))
                : Optional.empty();
    }
}
