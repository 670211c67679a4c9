package clipwitness.bench;

import java.util.List;
import java.util.Map;
import java.util.Random;

/** An invented job: the output jack of a bass overdrive is replaced, and nothing else may change. */
final class JackRepair {
    private static final double BENCH_CELSIUS = 22;
    private static final ClipperLeg LEG = ClipperLeg.of(new Junction(4.1e-9, 1.8, 0.5, BENCH_CELSIUS));

    private static final Effect UNIT = new Effect(
            40,
            new GainControl(0.05, 32),
            new ShuntClipper(2_200, new LegPair(LEG, LEG)),
            List.of(OnePole.lowPass(6_500), OnePole.highPass(18)),
            0.5);

    private JackRepair() {}

    /** The exports and the captures table. */
    static JobFiles folder() {
        JobFiles folder = new JobFiles();
        Sitting sitting = new Sitting(
                folder,
                new Scope(3_000, -20e-6, 0.6),
                recording -> ExportText.decimalComma(
                        recording.behind(recording.time().in("ms", 1e3, 3))),
                0.075);
        Sitting sweep = new Sitting(folder, new Scope(1_200, -20e-6, 0.6), sitting.layout(), 0.075);
        Scope slow = new Scope(25_000, -20e-6, 0.6);
        for (String state : List.of("received", "original")) {
            for (int gain : new int[] {0, 50, 100}) {
                sitting.wave(state, UNIT, gain);
            }
            for (int frequency : new int[] {100, 200, 400, 800, 1600, 3200}) {
                sweep.response(state, UNIT, 0, frequency);
            }
            noise(folder, slow, state);
        }
        return folder;
    }

    private static void noise(JobFiles folder, Scope scope, String state) {
        String file = "captures/" + state + "-noise.csv";
        Random random = new Random(file.hashCode());
        NoiseFloor floor = new NoiseFloor(450e-6, 220e-6, 60e-6);
        Recording recording = scope.record(random, 20e-6, List.of(new Probe("out", floor.voltage(random), 5e-3)));
        folder.add(
                Map.of("file", file, "state", state, "kind", "noise", "gain", "100"),
                ExportText.rateInComment(recording));
    }
}
