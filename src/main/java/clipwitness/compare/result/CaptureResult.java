package clipwitness.compare.result;

import clipwitness.job.CaptureRow;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.response.ResponseResult;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row of the captures table, read and measured.
 *
 * @param row      the row
 * @param export   the export that it names
 * @param doubts   every doubt, the file's and the measuring's
 * @param waveform what was measured, for waveforms
 * @param junction what was measured, for traced devices
 * @param noise    what was measured, for records with the input terminated
 * @param response what was measured, for captures of the frequency response
 * @param listening what was recorded, for recordings of playing
 */
public record CaptureResult(
        CaptureRow row,
        ExportFacts export,
        List<Doubt> doubts,
        Optional<WaveformResult> waveform,
        Optional<JunctionResult> junction,
        Optional<NoiseResult> noise,
        Optional<ResponseResult> response,
        Optional<ListeningResult> listening) {
    /** Copies what it is given. */
    public CaptureResult {
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(export, "export");
        doubts = List.copyOf(doubts);
        Objects.requireNonNull(noise, "noise");
        Objects.requireNonNull(response, "response");
        Objects.requireNonNull(listening, "listening");
    }

    /** A capture of which nothing is measured yet. */
    public static CaptureResult unmeasured(CaptureRow row, ExportFacts export, List<Doubt> doubts) {
        return new CaptureResult(
                row,
                export,
                doubts,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Whether another capture is one channel of the same bytes. */
    public boolean isOfSameExport(CaptureResult other) {
        return export.areOfSameBytes(other.export);
    }

    /** Whether anything says what the recorded values are worth in volts. */
    public boolean hasVolts() {
        return doubts.stream().noneMatch(d -> d.reason().code() == DoubtReason.UNIT_ASSUMED_SOUND);
    }

    /** The same capture with other figures. */
    public CaptureResult withWaveform(WaveformResult other) {
        return new CaptureResult(row, export, doubts, Optional.of(other), junction, noise, response, listening);
    }

    /** The same capture with what was measured of a traced device. */
    public CaptureResult withJunction(JunctionResult other) {
        return new CaptureResult(row, export, doubts, waveform, Optional.of(other), noise, response, listening);
    }

    /** The same capture with what was measured of a frequency response. */
    public CaptureResult withResponse(ResponseResult other) {
        return new CaptureResult(row, export, doubts, waveform, junction, noise, Optional.of(other), listening);
    }

    /** The same capture with what was recorded of playing. */
    public CaptureResult withListening(ListeningResult other) {
        return new CaptureResult(row, export, doubts, waveform, junction, noise, response, Optional.of(other));
    }

    /** The same capture with another result of its noise. */
    public CaptureResult withNoise(NoiseResult other) {
        return new CaptureResult(row, export, doubts, waveform, junction, Optional.of(other), response, listening);
    }

    /** The same capture with one more sentence on how it was read, if there is one. */
    public CaptureResult withEvidence(Optional<Remark> more) {
        return more.isEmpty()
                ? this
                : new CaptureResult(
                        row, export.withEvidence(more.get()), doubts, waveform, junction, noise, response, listening);
    }

    /** The same capture with other doubts. */
    public CaptureResult withDoubts(List<Doubt> others) {
        return new CaptureResult(row, export, others, waveform, junction, noise, response, listening);
    }
}
