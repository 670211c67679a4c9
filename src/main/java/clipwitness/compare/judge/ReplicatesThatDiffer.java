package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.job.CaptureKind;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Rows of the captures table that are equal in all but the file, run included, and are yet no captures of one wave: their level, distortion or
 * fundamental differ by more than 3 dB beyond what they are known to. Which of them is the wave nobody can tell, so all are refused.
 */
public final class ReplicatesThatDiffer {
    private static final double MOST_DECIBELS = 3;
    private static final Map<WaveformQuantity, Word> FIGURES = figures();

    private ReplicatesThatDiffer() {}

    private static Map<WaveformQuantity, Word> figures() {
        Map<WaveformQuantity, Word> figures = new LinkedHashMap<>();
        figures.put(WaveformQuantity.RMS, Word.RMS);
        figures.put(WaveformQuantity.FUNDAMENTAL, Word.FUNDAMENTAL);
        figures.put(WaveformQuantity.THD, Word.THD);
        return figures;
    }

    /** The captures, in their order, with the figures of such rows refused. */
    public static List<CaptureResult> refused(List<CaptureResult> captures) {
        Map<List<Object>, List<CaptureResult>> groups = new LinkedHashMap<>();
        captures.stream()
                .filter(ReplicatesThatDiffer::isMeasured)
                .forEach(c ->
                        groups.computeIfAbsent(key(c), k -> new ArrayList<>()).add(c));
        return captures.stream()
                .map(c -> isMeasured(c) ? refused(c, groups.get(key(c))) : c)
                .toList();
    }

    private static boolean isMeasured(CaptureResult capture) {
        return capture.row().kind() == CaptureKind.WAVEFORM
                && capture.waveform().filter(w -> !w.refused()).isPresent();
    }

    private static List<Object> key(CaptureResult capture) {
        return List.of(
                capture.row().state(),
                capture.row().condition(),
                capture.row().run(),
                capture.row().device(),
                capture.row().output());
    }

    private static CaptureResult refused(CaptureResult capture, List<CaptureResult> group) {
        for (CaptureResult a : group) {
            for (CaptureResult b : group) {
                for (Map.Entry<WaveformQuantity, Word> figure : FIGURES.entrySet()) {
                    Optional<Double> apart = apart(a, b, figure.getKey());
                    if (apart.isPresent()) {
                        return refused(capture, doubt(a, b, figure.getValue(), apart.get()));
                    }
                }
            }
        }
        return capture;
    }

    /** By how much a figure of one exceeds that of the other, dB; empty where that is no more than replicates may differ by. */
    private static Optional<Double> apart(CaptureResult a, CaptureResult b, WaveformQuantity quantity) {
        Optional<Measured.Value> more = value(a, quantity);
        Optional<Measured.Value> less = value(b, quantity);
        if (more.isEmpty() || less.isEmpty()) {
            return Optional.empty();
        }
        double least = more.get().number() - more.get().expanded();
        double most = less.get().number() + less.get().expanded();
        return least > most * Decibels.toAmplitude(MOST_DECIBELS)
                ? Optional.of(Decibels.ofAmplitude(more.get().number()
                        / Math.max(less.get().number(), less.get().standardUncertainty())))
                : Optional.empty();
    }

    private static Optional<Measured.Value> value(CaptureResult capture, WaveformQuantity quantity) {
        return capture.waveform().flatMap(w -> w.get(quantity).asValue()).filter(v -> v.shown() > 0);
    }

    private static Doubt doubt(CaptureResult more, CaptureResult less, Word figure, double decibels) {
        return Doubt.of(
                Severity.REFUSAL,
                DoubtReason.REPLICATES_DIFFER,
                Argument.name(more.row().file()),
                Argument.name(less.row().file()),
                Argument.word(figure),
                Argument.decimals(decibels, Unit.DECIBEL, 0));
    }

    private static CaptureResult refused(CaptureResult capture, Doubt doubt) {
        List<Doubt> doubts = new ArrayList<>(capture.doubts());
        doubts.add(doubt);
        WaveformResult wave = capture.waveform().orElseThrow();
        return capture.withDoubts(doubts).withWaveform(wave.refusedFor(doubt));
    }
}
