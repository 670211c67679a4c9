package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.Clipper;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperPrediction;
import clipwitness.measure.clipper.JunctionUncertainty;
import clipwitness.measure.clipper.PathFit;
import clipwitness.measure.clipper.PathFits;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * Predicts the wave of a clipper with a clean path beside it: both paths are fitted to the captured transfer curve, with the level of the
 * state without clippers at the same setting where there is one; the fitted wave's figures stand beside the measured ones.
 */
final class PathPredictor {
    /** Noise that is smaller than this share of the swing is none: no circuit follows its model so well. */
    private static final double LEAST_NOISE = 2e-4;

    /** Of the measurement book, section 7: what a clean path is known by. */
    private static final double LEAST_REMAINDER = 0.2;

    private static final double PAIR_SLOPE = 0.01;
    private static final double CURVE_SLOPE = 0.1;

    /** Shares of the input's peak within which the slope at the centre and beyond which the slope at an end is read. */
    private static final double CENTRE = 0.1;

    private static final double END = 0.8;

    private final Clipper clipper;
    private final Catalogue catalogue;
    private final Repeatability repeatability;

    PathPredictor(Clipper clipper, Catalogue catalogue, Repeatability repeatability) {
        this.clipper = clipper;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
    }

    /** The prediction, or its refusal. */
    StatePrediction predict(StateAtCondition setting, ClipperCircuit circuit, JunctionUncertainty junctions) {
        Optional<PathFit.Wave> wave = wave(setting);
        if (wave.isEmpty()) {
            return PredictedValues.refused(setting, Reason.of(DeviceReason.PATHS_WITHOUT_INPUT));
        }
        PathFits fits = new PathFits(circuit, wave.get(), junctions);
        Measured share = fits.cleanShare();
        if (share.reason().isPresent()) {
            return PredictedValues.refused(setting, share.reason().get());
        }
        double input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().orElseThrow();
        ClipperPrediction prediction = ClipperPrediction.ofPaths(fits, input);
        return new StatePrediction(
                setting.state(),
                setting.condition(),
                Optional.of(source(wave.get())),
                PredictedValues.of(setting, prediction, true),
                prediction.cycle(),
                true,
                Optional.of(paths(setting, fits, share, wave.get(), true)));
    }

    /** The wave to be explained, where an input was captured. */
    Optional<PathFit.Wave> wave(StateAtCondition setting) {
        Optional<TransferCurve> curve = setting.first().transfer();
        Optional<CycleTrace> cycle = setting.first().cycle();
        if (curve.isEmpty()
                || cycle.isEmpty()
                || setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().isEmpty()) {
            return Optional.empty();
        }
        double swing = curve.get().output().maximum() - curve.get().output().minimum();
        double noise = Math.max(cycle.get().scatter() / Math.sqrt(2), LEAST_NOISE * swing);
        int sign = clipper.outputGain().orElse(1) < 0 ? -1 : 1;
        return Optional.of(new PathFit.Wave(curve.get(), noise, sign, unclipped(setting)));
    }

    /** The gain without clippers; both settings of the gain control may be off. */
    private Optional<PathFit.Unclipped> unclipped(StateAtCondition setting) {
        return clipper.unclipped()
                .flatMap(state -> catalogue.at(state, setting.condition()))
                .flatMap(bare -> repeatability
                        .figure(bare, WaveformQuantity.FUNDAMENTAL)
                        .asValue()
                        .flatMap(level -> bare.figure(WaveformQuantity.INPUT_FUNDAMENTAL)
                                .asValue()
                                .map(input -> gain(level, input))));
    }

    private static PathFit.Unclipped gain(Measured.Value level, Measured.Value input) {
        double gain = level.number() / input.number();
        double relative = Math.hypot(Math.sqrt(2) * level.relativeUncertainty(), input.relativeUncertainty());
        return new PathFit.Unclipped(gain, gain * Math.max(relative, LEAST_NOISE));
    }

    private static Remark source(PathFit.Wave wave) {
        return Remark.of(wave.unclipped().isPresent() ? SourceRemark.PATHS_AND_UNCLIPPED : SourceRemark.PATHS);
    }

    /**
     * The clean path that a wave shows although the sheet names none: its transfer curve goes on rising at both ends by more than a tenth of its
     * slope at the centre, where the pair's slope falls under a hundredth, and a fit with a clean path leaves under a fifth of what the
     * clipper alone leaves. A stage that passes its source on of itself shows none.
     */
    Optional<StatePrediction.Paths> shown(
            StateAtCondition setting, ClipperCircuit circuit, JunctionUncertainty junctions) {
        boolean mayShow = setting.isClipped() && circuit.passed() == 0;
        Optional<PathFit.Wave> wave = mayShow ? wave(setting) : Optional.empty();
        if (wave.isEmpty() || !risesAtItsEnds(wave.get().curve())) {
            return Optional.empty();
        }
        double alone = PathFit.withoutCleanPath(circuit, wave.get()).remainderOverNoise();
        PathFits fits = new PathFits(circuit, wave.get(), junctions);
        Measured share = fits.cleanShare();
        boolean explains = fits.remainderOverNoise() < LEAST_REMAINDER * alone
                && fits.slopeAtEnds() < PAIR_SLOPE
                && share.value().orElse(0) > 0;
        return explains ? Optional.of(paths(setting, fits, share, wave.get(), false)) : Optional.empty();
    }

    private static boolean risesAtItsEnds(TransferCurve curve) {
        double centre = slope(curve, -CENTRE, CENTRE);
        return slope(curve, -1, -END) > CURVE_SLOPE * centre && slope(curve, END, 1) > CURVE_SLOPE * centre;
    }

    /** Slope of the straight line through the points between two shares of the input's peak. */
    private static double slope(TransferCurve curve, double from, double to) {
        double peak = curve.input().maximum();
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < curve.input().size(); i++) {
            double x = curve.input().at(i);
            if (x >= from * peak && x <= to * peak) {
                line.addData(x, curve.output().at(i));
            }
        }
        return line.getSlope();
    }

    private static StatePrediction.Paths paths(
            StateAtCondition setting, PathFits fits, Measured share, PathFit.Wave wave, boolean stated) {
        double rms = setting.figure(WaveformQuantity.RMS).value().orElseThrow();
        double remainder = fits.remainderOverNoise();
        return new StatePrediction.Paths(
                fits.gain(), fits.clipped(), fits.clean(), share, remainder * wave.noise() / rms, remainder, stated);
    }
}
