package clipwitness.bench.circuit;

import clipwitness.bench.GainControl;
import clipwitness.bench.OnePole;
import java.util.List;

/** Jobs in which nothing is wrong: what was to stay has stayed, what was to change has changed as meant. */
final class HealthyCircuits {
    private static final Occasion FULL = Occasion.FULL;
    private static final Pedal SILICON = Pedal.of(60, Clipping.shunt(1_000, "D1|D2"));
    private static final Pedal SCREAM = Pedal.of(1, Clipping.feedback(2_200, 100_000, "D1|D2"));

    /** A stage of much gain that runs out of supply and of slew rate at the upper settings. */
    private static final Pedal HOT = Pedal.of(400, Clipping.shunt(1_000, "D1|D2"))
            .control(new GainControl(0.006, 150))
            .rails(4.3, 3.8)
            .slewing(200_000);

    private HealthyCircuits() {}

    static List<CircuitJob> all() {
        return List.of(
                mod("hard-clipper", FULL, SILICON, "Q1|Q2"),
                mod("hard-clipper-tone", FULL, SILICON.then(OnePole.lowPass(3_400)), "Q1|Q2"),
                mod("hard-clipper-dark", FULL, SILICON.then(OnePole.lowPass(1_600)), "G1|G2"),
                mod("hard-clipper-thin", FULL.gains(25, 50, 100), SILICON.then(OnePole.highPass(300)), "D1|D2+D3"),
                mod("output-only", FULL.outputOnly(), SILICON.then(OnePole.lowPass(5_000)), "Q1|Q2"),
                mod(
                        "output-only-one-and-two",
                        FULL.outputOnly(),
                        SILICON.pair("D1|D2+D3").then(OnePole.highPass(20)),
                        "D1|D2"),
                mod("traced", FULL.withTraces(), SILICON.then(OnePole.highPass(10)), "Q1|Q2"),
                mod("traced-one-and-two", FULL.withTraces(), SILICON, "D1|D2+D3"),
                mod("traced-tone", FULL.withTraces(), SILICON.then(OnePole.lowPass(4_500)), "G1|G2"),
                mod("coupled", FULL, SILICON.with(Clipping.shunt(1_000, "D1|D2").coupled(1e-6)), "D1|D2+D3"),
                mod(
                        "coupled-one-and-two",
                        FULL.withTraces(),
                        SILICON.with(Clipping.shunt(2_200, "D1|D2+D3").coupled(1e-7))
                                .then(OnePole.lowPass(6_000)),
                        "D1|D2"),
                mod("rounded", FULL, SILICON.with(Clipping.shunt(2_200, "D1|D2").across(1e-8)), "L1|L2"),
                mod("lamps", FULL.withTraces(), SILICON.pair("L1|L2").rails(4.2, 4), "D1|D2"),
                job(
                        "saturating-stage",
                        FULL,
                        Shown.before(SILICON.rails(2.2, 2)),
                        Shown.unchanged(SILICON.rails(2.2, 2)),
                        Shown.changed(SILICON.rails(2.2, 2).pair("D1+D3|D2+D4"))),
                repair("saturating-one-side", FULL, SILICON.pair("D1+D3|D2+D4").rails(0.9, 4)),
                mod("hot", FULL, HOT, "Q1|Q2"),
                mod("hot-tone", FULL, HOT.then(OnePole.lowPass(3_400)), "D1|D2+D3"),
                mod("hot-traced", FULL.withTraces(), HOT.then(OnePole.lowPass(6_000)), "Q1|Q2"),
                mod("hot-coupled-behind", FULL, HOT.then(OnePole.highPass(40)), "|"),
                mod("hot-slow", FULL, HOT.slewing(60_000).then(OnePole.highPass(20)), "D1+D3|D2+D4"),
                mod("hot-blend", FULL, HOT.clean(2), "Q1|Q2").allowing("clean-path"),
                mod(
                        "hot-coupled",
                        FULL.runs(2),
                        HOT.with(Clipping.shunt(1_000, "D1|D2").coupled(1e-6)),
                        "D1|D2+D3"),
                mod("hot-output-only", FULL.outputOnly(), HOT.then(OnePole.lowPass(3_400)), "|"),
                blend("blend", FULL),
                blend("blend-traced", FULL.withTraces()),
                blend("blend-said", FULL.withTraces()).saying("clean-path: true"),
                mod(
                        "feedback",
                        FULL,
                        SCREAM.with(SCREAM.clipping().coupled(47e-9).across(47e-12)),
                        "D1|D2+D3"),
                mod("feedback-traced", FULL.withTraces(), SCREAM.then(OnePole.highPass(5)), "D1|D2+D3"),
                mod(
                        "feedback-inverting",
                        FULL,
                        SCREAM.with(SCREAM.clipping().inverting()).then(OnePole.lowPass(7_200)),
                        "L1|L2"),
                repair(
                        "hum-before-and-after",
                        FULL,
                        SILICON.then(OnePole.lowPass(3_400)).hum(4e-3)),
                repair("twice", FULL.runs(2), SILICON.then(OnePole.lowPass(3_400))),
                repair("one-setting", FULL.gains(75), SILICON.then(OnePole.lowPass(3_400))),
                repair(
                        "low-tone",
                        FULL.at(220).gains(0, 50, 100),
                        SILICON.then(OnePole.highPass(80)).then(OnePole.lowPass(2_000))),
                repair(
                        "asymmetric-output-only",
                        FULL.outputOnly(),
                        SILICON.pair("D1|L1").then(OnePole.highPass(30))),
                job(
                        "came-with-open-leg",
                        FULL,
                        Shown.before(SILICON.pair("D1|")),
                        Shown.unchanged(SILICON.pair("D1|")),
                        Shown.changed(SILICON)),
                job(
                        "one-leg-on-purpose",
                        FULL.withTraces(),
                        Shown.before(SILICON),
                        Shown.unchanged(SILICON),
                        Shown.changed(SILICON.pair("|D2"))),
                job(
                                "bare-state",
                                FULL.withTraces(),
                                Shown.before(SILICON),
                                Shown.unchanged(SILICON),
                                Shown.of("bare", "shown", SILICON.pair("|")).listedAs(""))
                        .saying("unclipped: bare"),
                job(
                        "lift-position",
                        FULL.withTraces(),
                        Shown.before(SILICON.rails(3.8, 3.6)),
                        Shown.unchanged(SILICON.rails(3.8, 3.6)),
                        Shown.changed(SILICON.rails(3.8, 3.6).pair("|"))),
                repair(
                        "even-gain-control",
                        FULL.gains(0, 33, 66, 100),
                        even(SILICON.with(Clipping.shunt(4_700, "G1|G2")))));
    }

    private static Pedal even(Pedal pedal) {
        return pedal.control(new GainControl(0.02, 1.5));
    }

    private static CircuitJob blend(String name, Occasion occasion) {
        Pedal pedal = SILICON.with(Clipping.shunt(2_200, "D1|D2")).clean(6);
        return new CircuitJob(
                "healthy-" + name,
                Truth.sound("clean-path"),
                occasion,
                "",
                List.of(Shown.before(pedal), Shown.unchanged(pedal), Shown.changed(pedal.pair("Q1|Q2"))));
    }

    /** What was there stays, and a second pair comes in. */
    private static CircuitJob mod(String name, Occasion occasion, Pedal pedal, String pair) {
        return job(name, occasion, Shown.before(pedal), Shown.unchanged(pedal), Shown.changed(pedal.pair(pair)));
    }

    /** All stays. */
    private static CircuitJob repair(String name, Occasion occasion, Pedal pedal) {
        return job(name, occasion, Shown.before(pedal), Shown.unchanged(pedal));
    }

    private static CircuitJob job(String name, Occasion occasion, Shown... states) {
        return CircuitJob.of("healthy-" + name, Truth.sound(), occasion, states);
    }
}
