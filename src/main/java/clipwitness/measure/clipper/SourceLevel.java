package clipwitness.measure.clipper;

import clipwitness.signal.Root;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Peak amplitude of a clipper's source, from what the output would be if the pair did not clip.
 */
public final class SourceLevel {
    private static final int PHASES = 96;
    private static final double LEAST = 1e-6;
    private static final double MOST = 1e4;

    /** No clipping stage has a higher source, V. */
    private static final double USUAL = 100;

    private SourceLevel() {}

    /**
     * From the level without clipping, where the gain behind the clipper is known: A = L / (k g), g the gain of the circuit.
     *
     * @param level captured peak without clipping, L, V
     * @param gain  gain of the circuit, g
     * @param scale captured output over the circuit's, k
     */
    public static double of(double level, double gain, double scale) {
        return level / Math.abs(gain * scale);
    }

    /**
     * Where the gain behind the clipper is not known: the amplitude at which the clipped wave's rms over the level without clipping is what was
     * captured. The ratio falls with the amplitude, so that there is one at most; none where the wave is clipped less than a sine's
     * ratio of sqrt(1/2) says, or more than any source of up to 10 kV makes it.
     *
     * @param circuit circuit
     * @param gain    gain of the circuit for the level without clipping
     * @param ratio   captured rms over captured peak without clipping
     */
    public static OptionalDouble matching(ClipperCircuit circuit, double gain, double ratio) {
        DoubleUnaryOperator output = circuit.output(USUAL);
        OptionalDouble log = Root.between(
                a -> ratio - rms(output, Math.exp(a)) / (Math.abs(gain) * Math.exp(a)),
                Math.log(LEAST),
                Math.log(MOST));
        return log.isPresent() ? OptionalDouble.of(Math.exp(log.getAsDouble())) : OptionalDouble.empty();
    }

    /** Root mean square of the output about its mean, V. */
    private static double rms(DoubleUnaryOperator output, double amplitude) {
        double sum = 0;
        double square = 0;
        for (int i = 0; i < PHASES; i++) { // half a period suffices: the other is its mirror image
            double v = output.applyAsDouble(amplitude * Math.cos(Math.PI * (i + 0.5) / PHASES));
            sum += v / PHASES;
            square += v * v / PHASES;
        }
        return Math.sqrt(Math.max(0, square - sum * sum));
    }
}
