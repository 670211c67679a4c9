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
        return ofReplicates(job, inputsDigest, ReplicatesThatDiffer.refused(captures));
    }

    private static JobResults ofReplicates(Job job, String inputsDigest, List<CaptureResult> captures) {
        Catalogue catalogue = Catalogue.of(captures, job.sheet()::label);
        Repeatability repeatability = new Repeatability(catalogue, job.sheet().bench());
        List<String> states = job.sheet().states().stream().map(State::name).toList();
        Devices devices = DeviceExamination.of(job, captures, catalogue, repeatability);
        return new JobResults(
                job,
                inputsDigest,
                new PairDoubts(job, catalogue, repeatability)
                        .added(captures).stream()
                                .map(c -> whole(c, catalogue, repeatability))
                                .toList(),
                new GainSeries(catalogue, repeatability, job.sheet().stimulus().level()).of(states),
                new Comparer(job, catalogue, repeatability).all(),
                devices,
                Hints.of(new Evidence(job, catalogue, repeatability, devices)));
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
