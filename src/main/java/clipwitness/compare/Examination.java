package clipwitness.compare;

import clipwitness.compare.device.DeviceExamination;
import clipwitness.compare.hint.Evidence;
import clipwitness.compare.hint.Hints;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Comparer;
import clipwitness.compare.judge.GainSeries;
import clipwitness.compare.judge.PairDoubts;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.ReplicatesThatDiffer;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.noise.MainsChoice;
import clipwitness.compare.noise.NoiseCatalogue;
import clipwitness.compare.noise.NoiseItems;
import clipwitness.compare.noise.StateNoises;
import clipwitness.compare.rail.RailItems;
import clipwitness.compare.response.ResponseCatalogue;
import clipwitness.compare.response.ResponseItems;
import clipwitness.compare.response.SweepDoubts;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.JobResults;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.measure.WaveformResult;
import java.util.List;

/** From measured captures to everything that is decided about a job. */
public final class Examination {
    private Examination() {}

    /**
     * Series, comparisons and hints of a job.
     *
     * @param job          the job
     * @param inputsDigest digest of all inputs, hexadecimal SHA-256
     * @param captures     captures, read and measured, in the table's order
     */
    public static JobResults of(Job job, String inputsDigest, List<CaptureResult> captures) {
        List<CaptureResult> sound = ReplicatesThatDiffer.refused(captures);
        return ofReplicates(
                job, inputsDigest, MainsChoice.made(sound, job.sheet().bench().mains()));
    }

    private static JobResults ofReplicates(Job job, String inputsDigest, List<CaptureResult> captures) {
        Catalogue catalogue = Catalogue.of(captures, job.sheet()::called);
        Repeatability repeatability = new Repeatability(catalogue, job.sheet().bench());
        NoiseCatalogue noise = NoiseCatalogue.of(captures, job.sheet()::called);
        NoiseItems noiseItems = new NoiseItems(job, noise, catalogue, repeatability);
        ResponseCatalogue responses = ResponseCatalogue.of(captures, job.sheet()::called);
        ResponseItems responseItems = new ResponseItems(job.sheet(), responses, catalogue, repeatability);
        List<String> states = job.sheet().states().stream().map(State::name).toList();
        Devices devices = DeviceExamination.of(job, captures, catalogue, repeatability);
        return new JobResults(
                job,
                inputsDigest,
                new PairDoubts(job, catalogue, repeatability)
                        .added(SweepDoubts.added(captures, catalogue)).stream()
                                .map(c -> whole(c, catalogue, repeatability))
                                .toList(),
                new GainSeries(catalogue, repeatability, job.sheet().stimulus().level()).of(states),
                new Comparer(
                                job,
                                catalogue,
                                repeatability,
                                List.of(noiseItems, responseItems),
                                new RailItems(job.sheet()))
                        .all(),
                devices,
                new StateNoises(noise, catalogue, repeatability).all(),
                responses.results(),
                Hints.of(new Evidence(job, catalogue, repeatability, devices, noise)));
    }

    /** A capture whose figures carry how well the controls are set again. */
    private static CaptureResult whole(CaptureResult capture, Catalogue catalogue, Repeatability repeatability) {
        if (capture.waveform().isEmpty()) {
            return capture;
        }
        StateAtCondition setting = catalogue
                .at(capture.row().state().orElseThrow(), capture.row().condition())
                .orElseThrow()
                .only(capture);
        WaveformResult waveform =
                repeatability.applied(setting, capture.waveform().get());
        return capture.withWaveform(
                capture.hasVolts()
                        ? waveform
                        : waveform.withValues((q, measured) -> WaveformResult.withoutVolts(measured)));
    }
}
