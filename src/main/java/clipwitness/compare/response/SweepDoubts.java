package clipwitness.compare.response;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Whether a sweep stays below the onset of clipping, as the waves of its state at the same positions of the controls show it. */
public final class SweepDoubts {
    private SweepDoubts() {}

    /** Captures with the doubts that the waves raise. */
    public static List<CaptureResult> added(List<CaptureResult> captures, Catalogue waves) {
        return captures.stream().map(c -> added(c, waves)).toList();
    }

    private static CaptureResult added(CaptureResult capture, Catalogue waves) {
        OptionalDouble peak = capture.response()
                .filter(r -> r.swept())
                .map(r -> r.inputPeak())
                .orElse(OptionalDouble.empty());
        OptionalDouble onset = onset(capture, waves);
        if (peak.isEmpty() || onset.isEmpty() || peak.getAsDouble() <= onset.getAsDouble()) {
            return capture;
        }
        List<Doubt> doubts = new ArrayList<>(capture.doubts());
        doubts.add(Doubt.of(
                Severity.WARNING,
                DoubtReason.RESPONSE_BEYOND_ONSET,
                Argument.prefixed(peak.getAsDouble(), Unit.VOLT, 2),
                Argument.prefixed(onset.getAsDouble(), Unit.VOLT, 2)));
        return capture.withDoubts(doubts);
    }

    private static OptionalDouble onset(CaptureResult capture, Catalogue waves) {
        return capture.row().state().stream()
                .flatMap(state -> waves.of(state).stream())
                .filter(s -> s.condition()
                                .gainPercent()
                                .equals(capture.row().condition().gainPercent())
                        && s.condition()
                                .setting()
                                .equals(capture.row().condition().setting()))
                .flatMapToDouble(SweepDoubts::onsets)
                .min();
    }

    private static DoubleStream onsets(StateAtCondition wave) {
        return Stream.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN)
                .flatMap(q -> wave.figure(q).asValue().stream())
                .mapToDouble(Measured.Value::number);
    }
}
