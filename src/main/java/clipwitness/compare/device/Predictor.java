package clipwitness.compare.device;

import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperPrediction;
import clipwitness.measure.clipper.Drive;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Predicts every setting of every state whose pair the sheet names. */
final class Predictor {
    private static final double RIGHT_ANGLE = 90;

    /** Figures in the order of the results; those in volts of the output need the gain behind the clipper. */
    private static final List<WaveformQuantity> FIGURES = List.of(
            WaveformQuantity.CLIP_UP,
            WaveformQuantity.CLIP_DOWN,
            WaveformQuantity.CLIP_ASYMMETRY,
            WaveformQuantity.PEAK_UP,
            WaveformQuantity.PEAK_DOWN,
            WaveformQuantity.ASYMMETRY,
            WaveformQuantity.RMS,
            WaveformQuantity.CREST_FACTOR,
            WaveformQuantity.THD,
            WaveformQuantity.ONSET_UP,
            WaveformQuantity.ONSET_DOWN);

    private static final List<WaveformQuantity> OF_THE_INPUT =
            List.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN);

    private final Job job;
    private final Clipper clipper;
    private final Map<String, NamedDevice> devices;
    private final Catalogue catalogue;

    Predictor(Job job, Clipper clipper, Map<String, NamedDevice> devices, Catalogue catalogue) {
        this.job = job;
        this.clipper = clipper;
        this.devices = devices;
        this.catalogue = catalogue;
    }

    /** All predictions, states in the sheet's order; made side by side. */
    List<StatePrediction> all() {
        List<Supplier<StatePrediction>> work = new ArrayList<>();
        for (State state : job.sheet().states()) {
            ClipperPair pair = clipper.pairs().get(state.name());
            if (pair != null) {
                ClipperOfState legs = new ClipperOfState(pair, devices);
                catalogue.of(state.name()).forEach(s -> work.add(() -> predict(s, legs)));
            }
        }
        return work.parallelStream().map(Supplier::get).toList();
    }

    private StatePrediction predict(StateAtCondition setting, ClipperOfState legs) {
        if (legs.missing().isPresent()) {
            return refused(setting, legs.missing().get());
        }
        if (setting.first().refused()) {
            return refused(setting, "the capture itself could not be measured");
        }
        ClipperCircuit circuit = legs.circuit(clipper, inverts(setting));
        ClipperSource.Answer answer = new ClipperSource(clipper, catalogue).of(setting, circuit);
        if (answer instanceof ClipperSource.Answer.Unknown unknown) {
            return refused(setting, unknown.reason());
        }
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) answer;
        double input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().orElse(known.amplitude());
        ClipperPrediction prediction = ClipperPrediction.of(
                circuit,
                new Drive(known.amplitude(), known.relativeUncertainty(), input),
                clipper.outputGain().orElse(1),
                legs.uncertainty(CaptureTemperature.of(
                        setting.replicates().get(0).row(), job.sheet().bench())));
        return new StatePrediction(
                setting.state(),
                setting.condition(),
                Optional.of(known.words()),
                figures(setting, prediction),
                prediction.cycle(),
                clipper.outputGain().isPresent());
    }

    private static boolean inverts(StateAtCondition setting) {
        OptionalDouble phase = setting.figure(WaveformQuantity.PHASE).value();
        return phase.isPresent() && Math.abs(phase.getAsDouble()) > RIGHT_ANGLE;
    }

    private List<Prediction> figures(StateAtCondition setting, ClipperPrediction prediction) {
        List<Prediction> figures = new ArrayList<>();
        for (WaveformQuantity q : FIGURES) {
            boolean hasInput = setting.first().values().containsKey(q);
            boolean inScale = q.unit() != Unit.VOLT
                    || OF_THE_INPUT.contains(q)
                    || clipper.outputGain().isPresent();
            if (hasInput && inScale) {
                figures.add(new Prediction(q.key(), OptionalInt.empty(), prediction.get(q), setting.figure(q)));
            }
        }
        Map<Integer, Measured> levels = prediction.harmonics();
        for (Harmonic h : setting.first().harmonics()) {
            if (levels.containsKey(h.order())) {
                figures.add(new Prediction("harmonic", OptionalInt.of(h.order()), levels.get(h.order()), h.level()));
            }
        }
        return figures;
    }

    private static StatePrediction refused(StateAtCondition setting, String reason) {
        WaveformQuantity up = WaveformQuantity.CLIP_UP;
        Prediction none =
                new Prediction(up.key(), OptionalInt.empty(), Measured.refused(up.unit(), reason), setting.figure(up));
        return new StatePrediction(
                setting.state(), setting.condition(), Optional.empty(), List.of(none), Optional.empty(), false);
    }
}
