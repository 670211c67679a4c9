package clipwitness.measure.capture;

import clipwitness.capture.Doubt;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.TotalHarmonicDistortion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the input channel is fit to measure against. An input that is not takes the figures with it that need it, and leaves the others: so
 * its doubts are warnings.
 */
final class InputScreen {
    private static final String CHANNEL = "input channel: ";

    private final Optional<Waveform> input;
    private final Optional<VerticalScale> scale;
    private final List<Doubt> doubts = new ArrayList<>();
    private final boolean usable;

    InputScreen(WaveformInput capture) {
        input = capture.input();
        scale = capture.inputScale();
        Optional<Doubt> missing =
                input.flatMap(i -> WaveformDoubts.missingSamples(CHANNEL, i.samples(), Severity.WARNING));
        missing.ifPresent(doubts::add);
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
            doubts.add(WaveformDoubts.noFundamental(CHANNEL, OptionalDouble.empty(), Severity.WARNING));
            return false;
        }
        Optional<Doubt> overRange = WaveformDoubts.overRange(CHANNEL, fitted, samples, scale, Severity.WARNING);
        overRange.ifPresent(doubts::add);
        if (overRange.isPresent()) {
            return false;
        }
        WaveformDoubts.lowResolution(CHANNEL, fitted, samples).ifPresent(doubts::add);
        WaveformDoubts.distortedInput(TotalHarmonicDistortion.of(fitted)).ifPresent(doubts::add);
        return true;
    }

    /** What was found doubtful. */
    List<Doubt> doubts() {
        return List.copyOf(doubts);
    }

    /** Why figures that need the input are refused. */
    String reason() {
        return doubts.get(doubts.size() - 1).text();
    }
}
