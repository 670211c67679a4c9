package clipwitness.measure.capture;

import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a waveform measurement starts from.
 *
 * @param output            the unit's output
 * @param input             its input, of the same record
 * @param expectedFrequency frequency of the stimulus in Hz; it decides which line is the fundamental
 * @param outputScale       vertical scale of the output channel, where the export says it
 * @param inputScale        vertical scale of the input channel, where the export says it
 * @param mains             frequency of the mains in Hz, where it is known
 */
public record WaveformInput(
        Waveform output,
        Optional<Waveform> input,
        OptionalDouble expectedFrequency,
        Optional<VerticalScale> outputScale,
        Optional<VerticalScale> inputScale,
        OptionalDouble mains) {
    /** A capture beside mains of an unknown frequency. */
    public WaveformInput(
            Waveform output,
            Optional<Waveform> input,
            OptionalDouble expectedFrequency,
            Optional<VerticalScale> outputScale,
            Optional<VerticalScale> inputScale) {
        this(output, input, expectedFrequency, outputScale, inputScale, OptionalDouble.empty());
    }

    /** Checks that both channels are of one record. */
    public WaveformInput {
        Objects.requireNonNull(output, "output");
        Objects.requireNonNull(expectedFrequency, "expectedFrequency");
        Objects.requireNonNull(outputScale, "outputScale");
        Objects.requireNonNull(inputScale, "inputScale");
        Objects.requireNonNull(mains, "mains");
        if (input.isPresent()
                && input.get().samples().size() != output.samples().size()) {
            throw new IllegalArgumentException("input and output must be of one length");
        }
        if (expectedFrequency.isPresent() && !(expectedFrequency.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "expectedFrequency must be above 0 Hz but is " + expectedFrequency.getAsDouble());
        }
    }

    /** An output alone. */
    public static WaveformInput of(Waveform output) {
        return new WaveformInput(output, Optional.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }

    /** The same with an input channel. */
    public WaveformInput withInput(Waveform channel) {
        return new WaveformInput(output, Optional.of(channel), expectedFrequency, outputScale, inputScale, mains);
    }

    /** The same with the frequency of the stimulus in Hz. */
    public WaveformInput expecting(double frequency) {
        return new WaveformInput(output, input, OptionalDouble.of(frequency), outputScale, inputScale, mains);
    }

    /** The same with the frequency of the mains in Hz, where it is known. */
    public WaveformInput besideMains(OptionalDouble frequency) {
        return new WaveformInput(output, input, expectedFrequency, outputScale, inputScale, frequency);
    }
}
