package clipwitness.compare;

import clipwitness.capture.Doubt;
import clipwitness.job.CaptureRow;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.junction.JunctionResult;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of the captures table, read and measured.
 *
 * @param row           the row
 * @param sha256        digest of the export, hexadecimal
 * @param inputSha256   digest of the export that holds the input, where it is another
 * @param output        name of the output channel
 * @param input         name of the input channel
 * @param samples       number of samples
 * @param sampleRate    in Hz; empty for a curve
 * @param channels      names of all channels
 * @param evidence      how the layout was read
 * @param doubts        every doubt, the file's and the measuring's
 * @param waveform      what was measured, for waveforms
 * @param junction      what was measured, for traced devices
 */
public record CaptureResult(
        CaptureRow row,
        String sha256,
        Optional<String> inputSha256,
        String output,
        Optional<String> input,
        int samples,
        OptionalDouble sampleRate,
        List<String> channels,
        List<String> evidence,
        List<Doubt> doubts,
        Optional<WaveformResult> waveform,
        Optional<JunctionResult> junction) {
    /** Copies what it is given. */
    public CaptureResult {
        Objects.requireNonNull(row, "row");
        channels = List.copyOf(channels);
        evidence = List.copyOf(evidence);
        doubts = List.copyOf(doubts);
    }

    /** A capture that is no traced device. */
    public CaptureResult(
            CaptureRow row,
            String sha256,
            Optional<String> inputSha256,
            String output,
            Optional<String> input,
            int samples,
            OptionalDouble sampleRate,
            List<String> channels,
            List<String> evidence,
            List<Doubt> doubts,
            Optional<WaveformResult> waveform) {
        this(
                row,
                sha256,
                inputSha256,
                output,
                input,
                samples,
                sampleRate,
                channels,
                evidence,
                doubts,
                waveform,
                Optional.empty());
    }

    /** Whether another capture is one channel of the same bytes. */
    boolean isOfSameExport(CaptureResult other) {
        return sha256.equals(other.sha256) && output.equals(other.output);
    }

    /** The same capture with other figures. */
    CaptureResult withWaveform(WaveformResult other) {
        return new CaptureResult(
                row,
                sha256,
                inputSha256,
                output,
                input,
                samples,
                sampleRate,
                channels,
                evidence,
                doubts,
                Optional.of(other),
                junction);
    }

    /** The same capture with other doubts. */
    CaptureResult withDoubts(List<Doubt> others) {
        return new CaptureResult(
                row,
                sha256,
                inputSha256,
                output,
                input,
                samples,
                sampleRate,
                channels,
                evidence,
                others,
                waveform,
                junction);
    }
}
