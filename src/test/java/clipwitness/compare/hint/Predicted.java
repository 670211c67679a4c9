package clipwitness.compare.hint;

import clipwitness.compare.SaidHint;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.noise.NoiseCatalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.match.Pairing;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Predictions stated outright, and the hints of one rule beside ordinary captures of their settings. */
final class Predicted {
    private Predicted() {}

    static StatePrediction at(String state, double gain, Prediction... figures) {
        return new StatePrediction(
                state,
                MadeUpCapture.ordinary(state, gain).condition(),
                Optional.of(Remark.of(SourceRemark.SMALL_SIGNAL_GAIN)),
                List.of(figures),
                Optional.empty(),
                true);
    }

    /** A figure with its standard uncertainties, in its unit. */
    static Prediction figure(
            WaveformQuantity quantity, double measured, double uncertainty, double predicted, double ofPrediction) {
        return new Prediction(
                quantity.key(),
                OptionalInt.empty(),
                Measured.withNoise(predicted, quantity.unit(), ofPrediction),
                Measured.withNoise(measured, quantity.unit(), uncertainty));
    }

    static List<SaidHint> hints(HintRule rule, Path folder, StatePrediction... predictions)
            throws IOException, InputException {
        List<CaptureResult> captures = new ArrayList<>();
        for (StatePrediction p : predictions) {
            captures.add(MadeUpCapture.ordinary(
                            p.state(), p.condition().gainPercent().orElseThrow())
                    .done());
        }
        Files.writeString(folder.resolve("job.yaml"), TestExamination.SHEET);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        Job job = JobReader.read(folder);
        Catalogue catalogue = Catalogue.of(captures, job.sheet()::label);
        Devices devices =
                new Devices(List.of(), new Pairing(List.of(), List.of()), Map.of(), Map.of(), List.of(predictions));
        Repeatability repeatability = new Repeatability(catalogue, job.sheet().bench());
        return rule
                .look(new Evidence(
                        job, catalogue, repeatability, devices, NoiseCatalogue.of(List.of(), job.sheet()::label)))
                .stream()
                .map(SaidHint::of)
                .toList();
    }
}
