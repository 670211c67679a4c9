package clipwitness.compare;

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
import java.util.Optional;

/**
 * Predicts the wave of a clipper with a clean path beside it: both paths are fitted to the captured transfer curve, with the level of the
 * state without clippers at the same setting where there is one; the fitted wave's figures stand beside the measured ones.
 */
final class PathPredictor {
    /** Noise that is smaller than this share of the swing is none: no circuit follows its model so well. */
    private static final double LEAST_NOISE = 2e-4;

    private final Clipper clipper;
    private final Catalogue catalogue;
    private final Repeatability repeatability;

    PathPredictor(Clipper clipper, Catalogue catalogue, Repeatability repeatability) {
        this.clipper = clipper;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
    }

    /** The prediction, or its refusal. */
    StatePrediction predict(Setting setting, ClipperCircuit circuit, JunctionUncertainty junctions) {
        Optional<PathFit.Wave> wave = wave(setting);
        if (wave.isEmpty()) {
            return PredictedFigures.refused(
                    setting, "a clean path is told from the clipped one by the transfer curve, which needs an input");
        }
        PathFits fits = new PathFits(circuit, wave.get(), junctions);
        Measured share = fits.cleanShare();
        if (share.reason().isPresent()) {
            return PredictedFigures.refused(setting, share.reason().get());
        }
        double input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().orElseThrow();
        ClipperPrediction prediction = ClipperPrediction.ofPaths(fits, input, wave.get().curve().inverting());
        return new StatePrediction(
                setting.state(),
                setting.condition(),
                Optional.of(words(wave.get())),
                PredictedFigures.of(setting, prediction, true),
                prediction.cycle(),
                true,
                Optional.of(paths(setting, fits, share, wave.get())));
    }

    /** The wave to be explained, where an input was captured. */
    Optional<PathFit.Wave> wave(Setting setting) {
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
    private Optional<PathFit.Unclipped> unclipped(Setting setting) {
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
        double relative =
                Math.hypot(Math.sqrt(2) * level.relativeUncertainty(), input.relativeUncertainty());
        return new PathFit.Unclipped(gain, gain * Math.max(relative, LEAST_NOISE));
    }

    private static String words(PathFit.Wave wave) {
        return wave.unclipped().isPresent()
                ? "clipped and clean path fitted to the wave and to the level without clippers"
                : "clipped and clean path fitted to the wave";
    }

    private static StatePrediction.Paths paths(Setting setting, PathFits fits, Measured share, PathFit.Wave wave) {
        double rms = setting.figure(WaveformQuantity.RMS).value().orElseThrow();
        return new StatePrediction.Paths(
                fits.gain(),
                fits.clipped(),
                fits.clean(),
                share,
                fits.remainderOverNoise() * wave.noise() / rms,
                fits.remainderOverNoise());
    }
}
