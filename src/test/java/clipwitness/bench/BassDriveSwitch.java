package clipwitness.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An invented job: the diodes across the feedback of a bass overdrive get a second position, one against two in series, and the
 * first position must stay what it was.
 */
final class BassDriveSwitch {
    private static final double BENCH_CELSIUS = 21;
    private static final Junction D1 = new Junction(2.5e-9, 1.75, 0.6, BENCH_CELSIUS);
    private static final Junction D2 = new Junction(2.7e-9, 1.76, 0.6, BENCH_CELSIUS);
    private static final Junction D3 = new Junction(2.3e-9, 1.74, 0.7, BENCH_CELSIUS);
    private static final Junction D4 = new Junction(3.6e-9, 1.79, 0.5, BENCH_CELSIUS);

    private static final Effect ORIGINAL = new Effect(
            1,
            new GainControl(0.045, 32),
            clipper(ClipperLeg.of(D2)),
            List.of(OnePole.lowPass(9_000), OnePole.highPass(5)),
            0.6);

    private BassDriveSwitch() {}

    private static FeedbackClipper clipper(ClipperLeg down) {
        return FeedbackClipper.nonInverting(2_200, 100_000, new LegPair(ClipperLeg.of(D1), down));
    }

    /** The exports, the captures table and the picture. */
    static JobFiles folder() {
        JobFiles folder = new JobFiles();
        Sitting sitting = new Sitting(
                folder,
                new Scope(3_000, 12e-6, 0.5),
                recording -> ExportText.unitsInHeadings(recording.behind(recording.time())),
                0.075);
        Map<String, Effect> states = new LinkedHashMap<>();
        states.put("received", ORIGINAL);
        states.put("original", ORIGINAL);
        states.put("new", ORIGINAL.with(clipper(ClipperLeg.of(D2, D3))));
        for (int gain : new int[] {0, 25, 50, 75, 100}) {
            states.forEach((state, effect) -> sitting.wave(state, effect, gain));
        }
        states.forEach((state, effect) -> sitting.wave(state, effect, 50, 2));
        Tracer tracer = new Tracer(folder, curve -> ExportText.unitsRow(Tracer.inMillis(curve)));
        tracer.trace("D1", D1);
        tracer.trace("D2", D2);
        tracer.trace("D3", D3);
        tracer.trace("D4", D4);
        folder.add("photos/switch.png", SwitchDrawing.png());
        return folder;
    }
}
