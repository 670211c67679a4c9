package clipwitness.compare.judge;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * A clipping stage behind a gain control: its wave at any position of the control, measured as a scope of 8 bits shows it, and the figures of that
 * wave from sums over one finely divided cycle.
 *
 * @param curve   what the stage makes of its input
 * @param least   amplification of the tone of amplitude 1 at 0 % of the control
 * @param most    at 100 %
 * @param isAudio whether the control is of an audio taper, a tenth at half its way; else linear
 */
record KnobWave(DoubleUnaryOperator curve, double least, double most, boolean isAudio) {
    private static final double FREQUENCY = 1000;
    private static final int SAMPLES = 4000;
    private static final double CYCLES = 12.37;
    private static final int CODES = 200;
    private static final double NOISE_CODES = 0.6;
    private static final int PLACES = 1 << 12;
    private static final int HARMONICS = 20;

    /** One of three kinds of stages at random, its levels and its gain anywhere in a range. */
    static KnobWave random(Random random) {
        double up = 0.5 + 0.3 * random.nextDouble();
        double down = up * (0.7 + 0.3 * random.nextDouble());
        DoubleUnaryOperator curve = switch (random.nextInt(3)) {
            case 0 -> u -> Math.max(-down, Math.min(up, u));
            case 1 -> u -> u > 0 ? up * Math.tanh(u / up) : down * Math.tanh(u / down);
            default -> u -> 0.15 * asinh(u, u > 0 ? up / 4 : down / 4);
        };
        return new KnobWave(curve, 0.2 + 0.8 * random.nextDouble(), 3 + 7 * random.nextDouble(), random.nextBoolean());
    }

    private static double asinh(double u, double scale) {
        double v = Math.abs(u) / scale;
        return Math.copySign(Math.log(v + Math.sqrt(v * v + 1)), u);
    }

    /** The same stage with other clippers. */
    KnobWave scaled(double factor) {
        return new KnobWave(u -> factor * curve.applyAsDouble(u / factor), least, most, isAudio);
    }

    private double at(double percent, double phase) {
        double turned = isAudio ? (Math.pow(10, percent / 50) - 1) / 99 : percent / 100;
        return curve.applyAsDouble((least + (most - least) * turned) * Math.sin(2 * Math.PI * phase));
    }

    /**
     * A capture.
     *
     * @param percent where the control truly stands
     * @param gain    of what the scope sees, near 1
     */
    WaveformResult measured(double percent, double gain, Random random) {
        double phase = random.nextDouble();
        double step = 2 * Math.max(Math.abs(at(percent, 0.25)), Math.abs(at(percent, 0.75))) / CODES;
        double offset = step * random.nextDouble();
        double[] values = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            double volts = gain * at(percent, phase + CYCLES * i / SAMPLES) + offset;
            values[i] = step * Math.rint(volts / step + NOISE_CODES * random.nextGaussian());
        }
        return WaveformMeasurement.of(
                WaveformInput.of(new Waveform(Samples.of(values), FREQUENCY * SAMPLES / CYCLES, Unit.VOLT))
                        .expecting(FREQUENCY));
    }

    /** The figure in the unit of its item, exact. */
    double truth(ItemValue figure, double percent) {
        double[] swing = new double[PLACES];
        double mean = 0;
        for (int i = 0; i < PLACES; i++) {
            swing[i] = at(percent, (i + 0.5) / PLACES);
            mean += swing[i] / PLACES;
        }
        double squares = 0;
        double up = at(percent, 0.25) - mean;
        double down = mean - at(percent, 0.75);
        for (int i = 0; i < PLACES; i++) {
            swing[i] -= mean;
            squares += swing[i] * swing[i] / PLACES;
        }
        double rms = Math.sqrt(squares);
        return switch (figure.item()) {
            case LEVEL -> 20 * Math.log10(rms);
            case THD -> 20 * Math.log10(100 * thd(swing));
            case ASYMMETRY -> 100 * (up - down) / (up + down);
            case CREST_FACTOR -> 20 * Math.log10(Math.max(up, down) / rms);
            default -> throw new IllegalArgumentException("no input is captured");
        };
    }

    private static double thd(double[] swing) {
        double power = 0;
        for (int k = 2; k <= HARMONICS; k++) {
            power += squaredAmplitude(swing, k);
        }
        return Math.sqrt(power / squaredAmplitude(swing, 1));
    }

    private static double squaredAmplitude(double[] swing, int k) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < swing.length; i++) {
            double turn = 2 * Math.PI * k * (i + 0.5) / swing.length;
            cosine += 2 * swing[i] * Math.cos(turn) / swing.length;
            sine += 2 * swing[i] * Math.sin(turn) / swing.length;
        }
        return cosine * cosine + sine * sine;
    }
}
