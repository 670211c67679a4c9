package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.TotalHarmonicDistortion;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the input channel is fit to measure against. An input that is not takes the figures with it that need it, and leaves the others: so
 * its doubts are warnings.
 */
final class InputScreen {
    private final Optional<Waveform> input;
    private final Optional<VerticalScale> scale;
    private final List<Doubt> doubts = new ArrayList<>();
    private final boolean usable;

    InputScreen(WaveformInput capture) {
        input = capture.input();
        scale = capture.inputScale();
        Optional<Doubt> missing = input.flatMap(i -> WaveformDoubts.missingSamples(i.samples(), Severity.WARNING));
        missing.ifPresent(this::add);
        usable = input.isPresent() && !WaveformDoubts.tooManyGaps(input.get().samples());
    }

    /** The samples, where enough of them have a value. */
    Optional<Samples> usableSamples() {
        return usable ? input.map(Waveform::samples) : Optional.empty();
    }

    /** Looks at the fitted channel; whether figures can be based on it. */
    boolean accepts(FittedWave fitted) {
        Samples samples = input.orElseThrow().samples();
        if (!fitted.hasFundamental()) {
            add(WaveformDoubts.noFundamental(OptionalDouble.empty(), Severity.WARNING));
            return false;
        }
        Optional<Doubt> overRange = WaveformDoubts.overRange(fitted, samples, scale, Severity.WARNING);
        overRange.ifPresent(this::add);
        if (overRange.isPresent()) {
            return false;
        }
        WaveformDoubts.lowResolution(fitted, samples).ifPresent(this::add);
        WaveformDoubts.distortedInput(TotalHarmonicDistortion.of(fitted)).ifPresent(doubts::add);
        return true;
    }

    /** Adds a doubt about the channel. */
    void add(Doubt ofChannel) {
        doubts.add(
                new Doubt(ofChannel.severity(), Reason.of(FrameReason.IN_INPUT, Argument.inner(ofChannel.reason()))));
    }

    /** What was found doubtful. */
    List<Doubt> doubts() {
        return List.copyOf(doubts);
    }

    /** Why figures that need the input are refused. */
    Reason reason() {
        return doubts.get(doubts.size() - 1).reason();
    }
}
