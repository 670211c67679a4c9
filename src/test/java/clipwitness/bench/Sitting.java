package clipwitness.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;

/**
 * Somebody at the bench: feeds an effect with a sine, sets its gain control by hand and saves what the oscilloscope shows.
 *
 * @param folder where the exports go
 * @param scope  oscilloscope
 * @param layout how it writes its exports
 * @param amplitude peak of the stimulus in V
 */
record Sitting(JobFiles folder, Scope scope, Function<Recording, String> layout, double amplitude) {
    /** How well the knob is set again: one standard deviation, of full rotation. */
    private static final double KNOB = 0.001;

    private static final double FREQUENCY = 400;

    /** One waveform of a state at a position of the gain control in percent, on the first occasion. */
    void wave(String state, Effect effect, int gain) {
        wave(state, effect, gain, 1);
    }

    /** The same on a later occasion. */
    void wave(String state, Effect effect, int gain, int run) {
        String file = "captures/%s-%03d%s.csv".formatted(state, gain, run == 1 ? "" : "-run" + run);
        Map<String, String> row = row(file, state, "waveform", gain);
        row.put("run", String.valueOf(run));
        take(row, effect, gain, FREQUENCY);
    }

    /** One point of the frequency response. */
    void response(String state, Effect effect, int gain, int frequency) {
        String file = "captures/%s-%04dHz.csv".formatted(state, frequency);
        Map<String, String> row = row(file, state, "response", gain);
        row.put("frequency", frequency + " Hz");
        take(row, effect, gain, frequency);
    }

    private static Map<String, String> row(String file, String state, String kind, int gain) {
        return new HashMap<>(Map.of("file", file, "state", state, "kind", kind, "gain", String.valueOf(gain)));
    }

    private void take(Map<String, String> row, Effect effect, int gain, double frequency) {
        Random random = new Random(row.get("file").hashCode());
        boolean atStop = gain == 0 || gain == 100;
        double position = gain / 100.0 + (atStop ? 0 : KNOB * random.nextGaussian());
        Cycle input = Cycle.sine(frequency, amplitude);
        Cycle output = effect.outputFor(input, position);
        Cycle expected = effect.outputFor(input, gain / 100.0);
        Recording recording = scope.record(
                random,
                scope.intervalFor(frequency),
                List.of(Probe.on("in", input, input), Probe.on("out", output, expected)));
        folder.add(row, layout.apply(recording));
    }
}
