package clipwitness.measure.noise;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** A made-up record: white noise of known density, lines of the mains, a converter. */
record NoiseRecord(double sampleRate, double seconds, double sigma, double mains, double[] lines, double step) {
    /** Lines are peak amplitudes at 1, 2, 3 … times the mains. */
    NoiseResult measured(long seed, OptionalDouble stated) {
        return NoiseMeasurement.of(
                new NoiseInput(new Waveform(samples(seed), sampleRate, Unit.VOLT), stated, Optional.empty(), 0));
    }

    Samples samples(long seed) {
        Random random = new Random(seed);
        double[] values = new double[(int) Math.round(sampleRate * seconds)];
        double phase = 2 * Math.PI * random.nextDouble();
        for (int i = 0; i < values.length; i++) {
            double v = sigma * random.nextGaussian();
            for (int k = 1; k <= lines.length; k++) {
                v += lines[k - 1] * Math.cos(k * (2 * Math.PI * mains * i / sampleRate + phase) + k);
            }
            values[i] = step > 0 ? step * Math.rint(v / step) : v;
        }
        return Samples.of(values);
    }

    /** Mean square of the white noise in a band: its share of 0 … half the sample rate. */
    double whitePower(Band band) {
        return sigma * sigma * (band.high() - band.low()) / (sampleRate / 2);
    }

    /** Mean square of the lines. */
    double linePower() {
        double sum = 0;
        for (double a : lines) {
            sum += a * a / 2;
        }
        return sum;
    }
}
