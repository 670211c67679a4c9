package clipwitness.compare.result;

import clipwitness.reason.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an export is, before anything is measured.
 *
 * @param sha256      digest of the export, hexadecimal
 * @param inputSha256 digest of the export that holds the input, where it is another
 * @param output      name of the output channel
 * @param input       name of the input channel
 * @param samples     number of samples
 * @param sampleRate  in Hz; empty for a curve
 * @param channels    names of all channels
 * @param evidence    how the layout was read
 */
public record ExportFacts(
        String sha256,
        Optional<String> inputSha256,
        String output,
        Optional<String> input,
        int samples,
        OptionalDouble sampleRate,
        List<String> channels,
        List<Remark> evidence) {
    /** Copies what it is given. */
    public ExportFacts {
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(output, "output");
        channels = List.copyOf(channels);
        evidence = List.copyOf(evidence);
    }

    /** The same facts with one more sentence on how the layout was read. */
    ExportFacts withEvidence(Remark more) {
        List<Remark> all = new ArrayList<>(evidence);
        all.add(more);
        return new ExportFacts(sha256, inputSha256, output, input, samples, sampleRate, channels, all);
    }

    /** Whether another is one channel of the same bytes. */
    boolean areOfSameBytes(ExportFacts other) {
        return sha256.equals(other.sha256) && output.equals(other.output);
    }
}
