package clipwitness.bench;

import java.util.List;

/**
 * An invented job that went wrong: both diodes of an inverting overdrive are replaced by the like, and one of the new joints has
 * not taken, so that leg goes through 47 kΩ.
 */
final class LiftedJoint {
    private static final double BENCH_CELSIUS = 20;
    private static final Junction D1 = new Junction(2.9e-9, 1.77, 0.6, BENCH_CELSIUS);
    private static final Junction D2 = new Junction(3e-9, 1.77, 0.6, BENCH_CELSIUS);
    private static final double COLD_JOINT = 47_000;

    private static final Effect SOUND = new Effect(
            1,
            new GainControl(0.045, 32),
            clipper(ClipperLeg.of(D2)),
            List.of(OnePole.lowPass(11_000), OnePole.highPass(6)),
            0.8);

    private LiftedJoint() {}

    private static FeedbackClipper clipper(ClipperLeg down) {
        return FeedbackClipper.inverting(2_200, 100_000, new LegPair(ClipperLeg.of(D1), down));
    }

    /** The exports and the captures table. */
    static JobFiles folder() {
        JobFiles folder = new JobFiles();
        Sitting sitting = new Sitting(folder, new Scope(3_000, 8e-6, 0.4), ExportText::preamble, 0.075);
        Effect lifted = SOUND.with(clipper(ClipperLeg.of(D2).withJoint(COLD_JOINT)));
        for (int gain : new int[] {0, 25, 50, 75, 100}) {
            sitting.wave("received", SOUND, gain);
            sitting.wave("original", lifted, gain);
        }
        Tracer tracer = new Tracer(folder, ExportText::unitsInHeadings);
        tracer.trace("D1", D1);
        tracer.trace("D2", D2);
        return folder;
    }
}
