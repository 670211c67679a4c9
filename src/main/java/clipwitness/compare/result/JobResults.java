package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.job.Job;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Everything that was measured and decided about a job.
 *
 * @param job          the job
 * @param inputsDigest one digest over job sheet, captures table and all files that they name, hexadecimal SHA-256
 * @param captures     captures in the table's order
 * @param series       series over the gain control
 * @param comparisons  comparisons in the sheet's order
 * @param devices      traced devices and what they predict
 * @param noise        noise and hum of the states
 * @param responses    frequency response of the states
 * @param hints        hints
 */
public record JobResults(
        Job job,
        String inputsDigest,
        List<CaptureResult> captures,
        List<Series> series,
        List<Comparison> comparisons,
        Devices devices,
        List<StateNoise> noise,
        List<StateResponse> responses,
        List<Hint> hints) {
    /** Copies what it is given. */
    public JobResults {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(inputsDigest, "inputsDigest");
        captures = List.copyOf(captures);
        series = List.copyOf(series);
        comparisons = List.copyOf(comparisons);
        noise = List.copyOf(noise);
        responses = List.copyOf(responses);
        hints = List.copyOf(hints);
        Objects.requireNonNull(devices, "devices");
    }

    /** The captures of a state under a condition that were measured as waves, or refused as such. */
    public Stream<CaptureResult> waves(String state, Condition condition) {
        return captures.stream()
                .filter(c -> c.row().state().filter(state::equals).isPresent()
                        && c.row().condition().equals(condition)
                        && c.waveform().isPresent());
    }

    /** The results of a job without captures of noise and response. */
    public JobResults(
            Job job,
            String inputsDigest,
            List<CaptureResult> captures,
            List<Series> series,
            List<Comparison> comparisons,
            Devices devices,
            List<Hint> hints) {
        this(job, inputsDigest, captures, series, comparisons, devices, List.of(), List.of(), hints);
    }

    /** The results of a job without traced devices. */
    public JobResults(
            Job job,
            String inputsDigest,
            List<CaptureResult> captures,
            List<Series> series,
            List<Comparison> comparisons,
            List<Hint> hints) {
        this(job, inputsDigest, captures, series, comparisons, Devices.NONE, List.of(), List.of(), hints);
    }
}
