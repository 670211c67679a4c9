package clipwitness.compare;

import clipwitness.job.Job;
import java.util.List;
import java.util.Objects;

/**
 * Everything that was measured and decided about a job.
 *
 * @param job          the job
 * @param inputsDigest one digest over job sheet, captures table and all files that they name, hexadecimal SHA-256
 * @param captures     captures in the table's order
 * @param series       series over the gain control
 * @param comparisons  comparisons in the sheet's order
 * @param devices      traced devices and what they predict
 * @param hints        hints
 */
public record JobResults(
        Job job,
        String inputsDigest,
        List<CaptureResult> captures,
        List<Series> series,
        List<Comparison> comparisons,
        Devices devices,
        List<Hint> hints) {
    /** Copies what it is given. */
    public JobResults {
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(inputsDigest, "inputsDigest");
        captures = List.copyOf(captures);
        series = List.copyOf(series);
        comparisons = List.copyOf(comparisons);
        hints = List.copyOf(hints);
        Objects.requireNonNull(devices, "devices");
    }

    /** The results of a job without traced devices. */
    public JobResults(
            Job job,
            String inputsDigest,
            List<CaptureResult> captures,
            List<Series> series,
            List<Comparison> comparisons,
            List<Hint> hints) {
        this(job, inputsDigest, captures, series, comparisons, Devices.NONE, hints);
    }
}
