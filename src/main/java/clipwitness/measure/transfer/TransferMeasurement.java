package clipwitness.measure.transfer;

import clipwitness.measure.TransferLoop;
import clipwitness.measure.FilterCorners;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.measure.transfer.MeanCrossing;
import clipwitness.measure.transfer.Transfer;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The transfer curve of a capture and its figures. They hold only where the output follows the input at each instant: where the gap of the
 * branches with its expanded uncertainty is 1 % of the swing at most. Above that the curve is straightened; where that does not bring
 * the branches together either, the figures are refused.
 */
public final class TransferMeasurement {
    /** Largest gap of a curve, percent. */
    private static final double LARGEST_GAP = 1;

    private static final NumberText NUMBERS = NumberText.in("en");

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
        if (isCurve(branches.gap(corners))) {
            CurveFigures figures = straightening.figures();
            values.putAll(straightening.widened(figures.values()));
            return curve(figures, Optional.of(FilterCorners.of(corners, frequency)));
        }
        CurveFigures.ALL.forEach(q -> values.put(q, Measured.refused(q.unit(), reason())));
        Transfer transfer = Transfer.of(output, input);
        double middle = MeanCrossing.of(output, input).value();
        return new TransferCurve(
                transfer.input(),
                transfer.output().map(v -> v - middle),
                transfer.gap(),
                transfer.inverting(),
                Optional.of(loop(middle, Optional.empty())));
    }

    private String reason() {
        Measured.Value known = gap.asValue().orElseThrow();
        return known.isUpperBound()
                ? "noise hides whether the output follows the input at each instant (gap below "
                        + NUMBERS.rounded(known.shown(), Unit.PERCENT, 2)
                        + "): take a longer record, or average more"
                : "the output does not follow the input at each instant (gap "
                        + NUMBERS.rounded(known.number(), Unit.PERCENT, 2)
                        + "): turn the tone control fully up, lower the test frequency, or take level steps at this setting";
    }

    private TransferCurve curve(CurveFigures figures, Optional<FilterCorners> corners) {
        Transfer transfer = figures.transfer();
        return new TransferCurve(
                transfer.input(),
                transfer.output().map(v -> v - figures.middle()),
                transfer.gap(),
                transfer.inverting(),
                corners.map(c -> loop(MeanCrossing.of(output, input).value(), corners)));
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
    public List<Doubt> doubts() {
        List<Doubt> doubts = new ArrayList<>();
        curve.straightened()
                .ifPresent(corners -> doubts.add(new Doubt(DoubtCode.STRAIGHTENED, Severity.NOTE, note(corners))));
        return doubts;
    }

    private String note(FilterCorners corners) {
        List<String> filters = new ArrayList<>();
        corners.lowPass().ifPresent(f -> filters.add("a low-pass at " + hertz(f)));
        corners.highPass().ifPresent(f -> filters.add("a high-pass at " + hertz(f)));
        return "the output follows the input with a gap of "
                + NUMBERS.rounded(gap.value().orElseThrow(), Unit.PERCENT, 2)
                + " between rising and falling input: onsets, knees, small-signal gain and clip levels are from the wave"
                + " without "
                + String.join(" and ", filters);
    }

    private static String hertz(double frequency) {
        return NUMBERS.rounded(frequency, Unit.HERTZ, 2);
    }
}
