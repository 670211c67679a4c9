package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;

/** Gain and phase at the fundamental: 20 lg of A_1 over A_1 of the input in dB; phase of the output less that of the input, negative is lag. */
final class LinearResponse {
    private LinearResponse() {}

    static Measured gain(FittedWave output, FittedWave input) {
        double gain =
                Decibels.ofAmplitude(output.fit().amplitude(1) / input.fit().amplitude(1));
        return Measured.withNoise(gain, Unit.DECIBEL, Decibels.PER_RELATIVE_AMPLITUDE * relative(output, input));
    }

    /** Phase in degrees, -180 to 180. */
    static Measured phase(FittedWave output, FittedWave input) {
        double phase = Math.toDegrees(difference(output, input));
        return Measured.withNoise(phase, Unit.DEGREE, Math.toDegrees(relative(output, input)));
    }

    /** Phase difference in rad, -pi to pi. */
    static double difference(FittedWave output, FittedWave input) {
        return Math.IEEEremainder(output.fit().phase(1) - input.fit().phase(1), 2 * Math.PI);
    }

    /** Whether the output's fundamental opposes the input's by more than a quarter period. */
    static boolean inverts(FittedWave output, FittedWave input) {
        return Math.abs(difference(output, input)) > Math.PI / 2;
    }

    private static double relative(FittedWave output, FittedWave input) {
        return Math.hypot(ofAmplitude(output), ofAmplitude(input));
    }

    private static double ofAmplitude(FittedWave wave) {
        return Math.sqrt(wave.quadratureVariance(1)) / wave.fit().amplitude(1);
    }
}
