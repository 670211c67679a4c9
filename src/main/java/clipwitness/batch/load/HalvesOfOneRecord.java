package clipwitness.batch.load;

import clipwitness.compare.judge.ReplicatesThatDiffer;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ExportFacts;
import clipwitness.job.CaptureKind;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Two rows of one state, condition and run whose exports hold one channel each, with equally many samples of one interval, and of which one is as clean
 * as a stimulus while the other is distorted: they look like input and output of one record, saved in a file each. The doubt
 * says which, and names the column that puts them together; whether the rows can stand as they are is for {@link ReplicatesThatDiffer}.
 */
public final class HalvesOfOneRecord {
    /** Distortion of a usable sine generator, %, as for {@code distorted-input}. */
    private static final double CLEAN = 1;
    /** By how many times the output is then more distorted, beyond what is known of both. */
    private static final double TIMES = 3;
    /** Files round their interval differently. */
    private static final double SAME_RATE = 1e-6;

    private HalvesOfOneRecord() {}

    /** The captures, in their order, with a doubt on both of each such pair. */
    public static List<CaptureResult> doubted(List<CaptureResult> captures) {
        return IntStream.range(0, captures.size())
                .mapToObj(i -> doubted(i, captures))
                .toList();
    }

    private static CaptureResult doubted(int index, List<CaptureResult> all) {
        CaptureResult capture = all.get(index);
        for (int i = 0; i < all.size(); i++) {
            CaptureResult other = all.get(i);
            if (i == index || !alike(capture, other)) {
                continue;
            }
            boolean isInput = cleanBeside(capture, other);
            if (isInput || cleanBeside(other, capture)) {
                return with(capture, isInput ? doubt(capture, other) : doubt(other, capture));
            }
        }
        return capture;
    }

    private static CaptureResult with(CaptureResult capture, Doubt doubt) {
        List<Doubt> doubts = new ArrayList<>(capture.doubts());
        doubts.add(doubt);
        return capture.withDoubts(doubts);
    }

    private static Doubt doubt(CaptureResult input, CaptureResult output) {
        return Doubt.of(
                Severity.WARNING,
                DoubtReason.REPLICATES_HALVES,
                Argument.name(input.row().file()),
                Argument.name(output.row().file()));
    }

    private static boolean alike(CaptureResult a, CaptureResult b) {
        return single(a)
                && single(b)
                && a.row().state().equals(b.row().state())
                && a.row().condition().equals(b.row().condition())
                && a.row().run() == b.row().run()
                && a.row().device().equals(b.row().device())
                && !a.row().file().equals(b.row().file())
                && sameLength(a.export(), b.export());
    }

    /** A wave that is the only channel of its export, and that nobody says more about. */
    private static boolean single(CaptureResult capture) {
        return capture.row().kind() == CaptureKind.WAVEFORM
                && capture.row().inputFile().isEmpty()
                && capture.export().channels().size() == 1;
    }

    private static boolean sameLength(ExportFacts a, ExportFacts b) {
        double ratio = a.sampleRate().orElse(Double.NaN) / b.sampleRate().orElse(Double.NaN);
        return a.samples() == b.samples() && Math.abs(ratio - 1) < SAME_RATE;
    }

    private static boolean cleanBeside(CaptureResult clean, CaptureResult distorted) {
        Optional<Measured.Value> least = thd(clean);
        Optional<Measured.Value> most = thd(distorted);
        if (least.isEmpty() || most.isEmpty()) {
            return false;
        }
        double upper = least.get().number() + least.get().expanded();
        double lower = most.get().number() - most.get().expanded();
        return upper < CLEAN && lower > TIMES * upper;
    }

    private static Optional<Measured.Value> thd(CaptureResult capture) {
        return capture.waveform()
                .filter(w -> !w.refused())
                .flatMap(w -> w.get(WaveformQuantity.THD).asValue());
    }
}
