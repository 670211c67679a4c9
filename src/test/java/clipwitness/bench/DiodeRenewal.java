package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * An invented job, recorded through an audio interface: the brittle clipping diodes of a bass overdrive are renewed with others of their kind. The
 * capacitor of the tone control was touched on the way: its leg cracked, and the treble is gone.
 */
final class DiodeRenewal {
    private static final double BENCH_CELSIUS = 20;
    private static final double KNOB = 0.001;
    private static final double FREQUENCY = 500;
    private static final double AMPLITUDE = 0.1;
    private static final double SECONDS = 0.15;

    /** Noise that repeats every half second, weak enough that nothing clips. */
    private static final double REPEATS = 2;

    private static final int POINTS = 1 << 17;
    private static final double RESPONSE_RMS = 1e-3;

    private static final Effect RECEIVED = effect(new Junction(3.1e-9, 1.77, 0.6, BENCH_CELSIUS), 7_000);
    private static final Effect RENEWED = effect(new Junction(3.15e-9, 1.77, 0.6, BENCH_CELSIUS), 4_500);

    private DiodeRenewal() {}

    private static Effect effect(Junction junction, double treble) {
        ClipperLeg leg = ClipperLeg.of(junction);
        return new Effect(
                30,
                new GainControl(0.05, 32),
                new ShuntClipper(2_200, new LegPair(leg, leg)),
                List.of(OnePole.lowPass(treble), OnePole.highPass(12)),
                0.8);
    }

    /** The recordings and the captures table. */
    static JobFiles folder() {
        JobFiles folder = new JobFiles();
        AudioInterface recorder = new AudioInterface(48_000, 3.2, 12e-6);
        state(folder, recorder, "received", RECEIVED);
        state(folder, recorder, "original", RENEWED);
        return folder;
    }

    private static void state(JobFiles folder, AudioInterface recorder, String state, Effect effect) {
        for (int gain : new int[] {25, 50, 100}) {
            String file = "recordings/%s-%03d.wav".formatted(state, gain);
            Random random = new Random(file.hashCode());
            double position = gain / 100.0 + (gain == 100 ? 0 : KNOB * random.nextGaussian());
            Cycle input = Cycle.sine(FREQUENCY, AMPLITUDE);
            add(
                    folder,
                    recorder,
                    random,
                    row(file, state, "waveform", gain),
                    SECONDS,
                    input,
                    effect.outputFor(input, position));
        }
        String response = "recordings/%s-response.wav".formatted(state);
        Cycle noise = noise(new Random(response.hashCode()));
        add(
                folder,
                recorder,
                new Random(response.hashCode()),
                row(response, state, "response", 100),
                1 / REPEATS,
                noise,
                effect.outputFor(noise, 1));
        quiet(folder, recorder, state);
    }

    /** All multiples of the repetition up to 20 kHz, equally strong, their phases at random. */
    private static Cycle noise(Random random) {
        double[][] bins = new double[2][POINTS];
        int highest = (int) (20_000 / REPEATS);
        double amplitude = RESPONSE_RMS * Math.sqrt(2.0 / highest);
        for (int k = 1; k <= highest; k++) {
            double phase = 2 * Math.PI * random.nextDouble();
            bins[0][k] = amplitude * Math.cos(phase);
            bins[1][k] = amplitude * Math.sin(phase);
        }
        FastFourierTransformer.transformInPlace(bins, DftNormalization.STANDARD, TransformType.FORWARD);
        return new Cycle(REPEATS, Samples.of(bins[0]));
    }

    private static void add(
            JobFiles folder,
            AudioInterface recorder,
            Random random,
            Map<String, String> row,
            double seconds,
            Cycle input,
            Cycle output) {
        List<DoubleUnaryOperator> channels = List.of(AudioInterface.steady(input), AudioInterface.steady(output));
        folder.add(row, recorder.record(random, seconds, channels));
    }

    private static void quiet(JobFiles folder, AudioInterface recorder, String state) {
        String file = "recordings/%s-quiet.wav".formatted(state);
        Random random = new Random(file.hashCode());
        DoubleUnaryOperator hiss = new NoiseFloor(300e-6, 60e-6, 25e-6).voltage(random);
        folder.add(row(file, state, "noise", 100), recorder.record(random, 1 / REPEATS, List.of(t -> 0, hiss)));
    }

    private static Map<String, String> row(String file, String state, String kind, int gain) {
        return new HashMap<>(
                Map.of("file", file, "state", state, "kind", kind, "gain", String.valueOf(gain), "scale", "3.2 V"));
    }
}
