package clipwitness.compare.device;

import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperPrediction;
import clipwitness.measure.clipper.Drive;
import clipwitness.measure.clipper.JunctionUncertainty;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.NamedDevice;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Predicts every setting of every state whose pair the sheet names; where it names none at all, says so of every state. */
final class Predictor {
    private static final double RIGHT_ANGLE = 90;

    private final Job job;
    private final Clipper clipper;
    private final Map<String, NamedDevice> devices;
    private final Catalogue catalogue;
    private final Repeatability repeatability;

    Predictor(
            Job job,
            Clipper clipper,
            Map<String, NamedDevice> devices,
            Catalogue catalogue,
            Repeatability repeatability) {
        this.job = job;
        this.clipper = clipper;
        this.devices = devices;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
    }

    /** All predictions, states in the sheet's order; made side by side. */
    List<StatePrediction> all() {
        List<Supplier<StatePrediction>> work = new ArrayList<>();
        for (State state : job.sheet().states()) {
            ClipperPair pair = clipper.pairs().get(state.name());
            if (clipper.pairs().isEmpty() && !clipper.unclipped().equals(Optional.of(state.name()))) {
                catalogue
                        .of(state.name())
                        .forEach(s -> work.add(() -> PredictedValues.refused(s, Reason.of(DeviceReason.NO_PAIRS))));
            }
            if (pair != null) {
                ClipperOfState legs = new ClipperOfState(pair, devices);
                catalogue.of(state.name()).forEach(s -> work.add(() -> predict(s, legs)));
            }
        }
        return work.parallelStream().map(Supplier::get).toList();
    }

    private StatePrediction predict(StateAtCondition setting, ClipperOfState legs) {
        if (legs.missing().isPresent()) {
            return PredictedValues.refused(setting, legs.missing().get());
        }
        if (setting.first().refused()) {
            return PredictedValues.refused(setting, Reason.of(FigureReason.CAPTURE_ITSELF_NOT_MEASURED));
        }
        Optional<Reason> doubt = new PredictionDoubts(job, clipper, catalogue).of(setting);
        if (doubt.isPresent()) {
            return PredictedValues.refused(setting, doubt.get());
        }
        Temperature inUnit = CaptureTemperature.of(
                setting.replicates().get(0).row(), job.sheet().bench());
        ClipperCircuit circuit = legs.circuit(clipper, inverts(setting), inUnit);
        JunctionUncertainty junctions = legs.uncertainty(inUnit);
        PathPredictor paths = new PathPredictor(clipper, catalogue, repeatability);
        if (clipper.cleanPath() && clipper.gainControl() == Clipper.GainControl.FEEDBACK) {
            return PredictedValues.refused(setting, Reason.of(DeviceReason.PATHS_AND_FEEDBACK_CONTROL));
        }
        if (clipper.cleanPath()) {
            return paths.predict(setting, circuit, junctions);
        }
        Optional<StatePrediction.Paths> shown = paths.shown(setting, circuit, junctions);
        return shown.isPresent()
                ? PredictedValues.refused(setting, Reason.of(DeviceReason.PATH_NOT_NAMED))
                        .with(shown.get())
                : circuit instanceof ClipperCircuit.Feedback full && clipper.gainControl() != Clipper.GainControl.SERIES
                        ? turned(setting, full, junctions)
                        : clipped(setting, circuit, junctions);
    }

    private StatePrediction clipped(StateAtCondition setting, ClipperCircuit circuit, JunctionUncertainty junctions) {
        ClipperSource.Answer answer = new ClipperSource(clipper, catalogue).of(setting, circuit);
        return answer instanceof ClipperSource.Answer.Known known
                ? clipped(setting, circuit, junctions, known)
                : PredictedValues.refused(setting, Reason.of(((ClipperSource.Answer.Unknown) answer).why()));
    }

    /** A feedback clipper whose gain control is one of its resistances. */
    private StatePrediction turned(
            StateAtCondition setting, ClipperCircuit.Feedback full, JunctionUncertainty junctions) {
        GainControlledStage.Answer answer = new GainControlledStage(clipper, catalogue).of(setting, full);
        return answer instanceof GainControlledStage.Answer.Known known
                ? clipped(setting, known.circuit(), junctions, known.source())
                : PredictedValues.refused(setting, ((GainControlledStage.Answer.Unknown) answer).why());
    }

    private StatePrediction clipped(
            StateAtCondition setting,
            ClipperCircuit circuit,
            JunctionUncertainty junctions,
            ClipperSource.Answer.Known known) {
        Optional<Reason> doubt = new PredictionDoubts(job, clipper, catalogue).beyondSupply(known.amplitude());
        if (doubt.isPresent()) {
            return PredictedValues.refused(setting, doubt.get());
        }
        double input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().orElse(known.amplitude());
        ClipperPrediction prediction = ClipperPrediction.of(
                circuit,
                new Drive(known.amplitude(), known.relativeUncertainty(), input),
                clipper.outputGain().orElse(1),
                junctions);
        boolean toScale = clipper.outputGain().isPresent();
        return new StatePrediction(
                setting.state(),
                setting.condition(),
                Optional.of(known.source()),
                PredictedValues.of(setting, prediction, toScale),
                prediction.cycle(),
                toScale);
    }

    private static boolean inverts(StateAtCondition setting) {
        OptionalDouble phase = setting.figure(WaveformQuantity.PHASE).value();
        return phase.isPresent() && Math.abs(phase.getAsDouble()) > RIGHT_ANGLE;
    }
}
