package clipwitness.bench.circuit;

import clipwitness.bench.GainControl;
import clipwitness.bench.OnePole;
import java.util.List;

/** Jobs in which one thing is wrong. */
final class FaultyCircuits {
    private static final String OPEN = "one-side-not-clipping";
    private static final String LEG = "leg-mismatch";
    private static final String NOT = "not-clipping";
    private static final String NONE = "no-output";
    private static final String BESIDE = "beside-the-clipper";
    private static final String TURNED = "inverted";
    private static final String SWAPPED = "states-swapped";
    private static final String HUM = "extra-hum";
    private static final String KNOB = "knob-offset";

    private static final Occasion FULL = Occasion.FULL;
    private static final Pedal SILICON = Pedal.of(60, Clipping.shunt(1_000, "D1|D2"));
    private static final Pedal ONE_TWO = SILICON.pair("D1|D2+D3");
    private static final Pedal TONE = SILICON.then(OnePole.lowPass(3_400));
    private static final Pedal COUPLED =
            SILICON.with(Clipping.shunt(1_000, "D1|D2").coupled(1e-6));
    private static final Pedal SCREAM = Pedal.of(1, Clipping.feedback(2_200, 100_000, "D1|D2"));

    /** A stage of much gain that runs out of supply and of slew rate at the upper settings. */
    private static final Pedal HOT = Pedal.of(400, Clipping.shunt(1_000, "D1|D2"))
            .control(new GainControl(0.006, 150))
            .rails(4.3, 3.8)
            .slewing(200_000)
            .then(OnePole.lowPass(4_000));

    private FaultyCircuits() {}

    static List<CircuitJob> all() {
        return List.of(
                after("open-leg", FULL, SILICON, SILICON.pair("D1|"), OPEN).lower(),
                after("open-leg-tone", FULL, TONE, TONE.pair("|D2"), OPEN).upper(),
                after(
                                "open-leg-output-only",
                                FULL.outputOnly(),
                                SILICON.then(OnePole.lowPass(9_000)),
                                SILICON.pair("|D2").then(OnePole.lowPass(9_000)),
                                OPEN)
                        .upper(),
                after("open-leg-traced", FULL.withTraces(), SILICON, SILICON.pair("D1|"), OPEN, LEG)
                        .lower(),
                after("open-leg-coupled", FULL, COUPLED, COUPLED.pair("D1|"), OPEN, NOT)
                        .lower(),
                after(
                                "open-leg-coupled-traced",
                                FULL.withTraces(),
                                COUPLED.then(OnePole.lowPass(5_000)),
                                COUPLED.pair("|D2").then(OnePole.lowPass(5_000)),
                                OPEN,
                                NOT,
                                LEG)
                        .upper(),
                after("open-leg-feedback", FULL, SCREAM, SCREAM.pair("D1|"), OPEN)
                        .lower(),
                after(
                                "cold-joint",
                                FULL.withTraces(),
                                SCREAM.then(OnePole.highPass(6)),
                                SCREAM.pair("D1|D2~47k").then(OnePole.highPass(6)),
                                OPEN,
                                LEG)
                        .lower(),
                after("hot-open-leg", FULL, HOT, HOT.pair("D1|"), OPEN).lower(),
                after("hot-open-leg-coupled", FULL, coupled(HOT), coupled(HOT).pair("|D2"), OPEN, NOT)
                        .upper(),
                after(
                                "hot-open-leg-coupled-traced",
                                FULL.withTraces(),
                                coupled(HOT),
                                coupled(HOT).pair("D1|"),
                                OPEN,
                                NOT,
                                LEG)
                        .lower(),
                after("hot-disconnected", FULL, HOT, HOT.pair("|"), NOT).done(),
                after("hot-duller", FULL, HOT, HOT.then(OnePole.lowPass(2_200)), BESIDE)
                        .done(),
                after("hot-quieter-output-only", FULL.outputOnly(), HOT, HOT.volume(0.44), BESIDE)
                        .done(),
                after("hot-hum", FULL, HOT, HOT.hum(5e-3), HUM).done(),
                after(
                                "hot-turned-over-output-only",
                                FULL.outputOnly(),
                                HOT.pair("D1|D2+D3"),
                                HOT.pair("D2+D3|D1"),
                                TURNED)
                        .done(),
                knob("hot-knob-moved", FULL, HOT, -0.05),
                // driven far, the two pairs make one wave at other levels: no null depth fails, which a hint at a swap
                // needs
                job(
                        "hot-swapped",
                        Truth.change("original"),
                        FULL,
                        Shown.before(HOT),
                        Shown.unchanged(HOT.pair("Q1|Q2")),
                        Shown.changed(HOT)),
                after("disconnected", FULL, TONE, TONE.pair("|"), NOT).done(),
                after(
                                "disconnected-saturating",
                                FULL,
                                TONE.rails(3.6, 3.4),
                                TONE.rails(3.6, 3.4).pair("|"),
                                NOT)
                        .done(),
                after("disconnected-output-only", FULL.outputOnly(), COUPLED, COUPLED.pair("|"), NOT)
                        .done(),
                after("silent", FULL, TONE, TONE.volume(2e-4), NONE).done(),
                after("duller", FULL, TONE, TONE.then(OnePole.lowPass(2_500)), BESIDE)
                        .done(),
                after("duller-output-only", FULL.outputOnly(), SILICON, SILICON.then(OnePole.lowPass(3_000)), BESIDE)
                        .done(),
                after("thinner", FULL, TONE, TONE.then(OnePole.highPass(700)), BESIDE)
                        .done(),
                after("quieter-behind", FULL, TONE, TONE.volume(0.5 * 0.82), BESIDE)
                        .done(),
                after("louder-behind-feedback", FULL.gains(0, 50, 100), SCREAM, SCREAM.volume(0.62), BESIDE)
                        .done(),
                after("turned-over", FULL, TONE, TONE.volume(-0.5), TURNED).done(),
                after("pair-wrong-way-round", FULL, ONE_TWO, SILICON.pair("D2+D3|D1"), TURNED)
                        .done(),
                after(
                                "pair-wrong-way-round-output-only",
                                FULL.outputOnly(),
                                ONE_TWO.then(OnePole.highPass(12)),
                                SILICON.pair("D2+D3|D1").then(OnePole.highPass(12)),
                                TURNED)
                        .done(),
                after("hum", FULL, TONE, TONE.hum(6e-3), HUM).done(),
                after("hum-output-only", FULL.outputOnly().gains(0, 50, 100), SILICON, SILICON.hum(12e-3), HUM)
                        .done(),
                knob("knob-moved", FULL, TONE, 0.06),
                knob("knob-moved-output-only", FULL.outputOnly(), SCREAM, -0.07),
                job(
                        "swapped-switch",
                        Truth.fault("original", SWAPPED).allowing(),
                        FULL,
                        Shown.before(SILICON),
                        Shown.unchanged(SILICON.pair("D1|D2+D3")),
                        Shown.changed(SILICON)),
                job(
                        "swapped-switch-tone",
                        Truth.fault("original", SWAPPED),
                        FULL.outputOnly(),
                        Shown.before(TONE),
                        Shown.unchanged(TONE.pair("Q1|Q2+Q1")),
                        Shown.changed(TONE)),
                job(
                        "new-pair-open",
                        Truth.fault("new", OPEN, LEG).half("lower"),
                        FULL.withTraces(),
                        Shown.before(SILICON),
                        Shown.unchanged(SILICON),
                        Shown.changed(SILICON.pair("Q1|")).listedAs("Q1|Q2")),
                job(
                        "new-pair-not-switched-in",
                        Truth.fault("new", NOT, LEG),
                        FULL.withTraces(),
                        Shown.before(TONE),
                        Shown.unchanged(TONE),
                        Shown.changed(TONE.pair("|")).listedAs("Q1|Q2")),
                after("wrong-device-traced", FULL.withTraces(), SILICON, SILICON.pair("D1|L1"), LEG)
                        .listed("D1|D2")
                        .lower(),
                after("shorted-of-two", FULL.withTraces(), ONE_TWO, SILICON.pair("D1|D2"), LEG)
                        .listed("D1|D2+D3")
                        .lower(),
                change("wrong-device", FULL, TONE, TONE.pair("D1|L1")),
                change(
                        "sagging-supply",
                        FULL,
                        SILICON.rails(4.2, 4).pair("L1|L2"),
                        SILICON.rails(1.1, 1).pair("L1|L2")),
                change("wrong-pair", FULL, TONE, TONE.pair("Q1|Q2")),
                after("open-leg-blend", FULL, blend("D1|D2"), blend("|D2"), OPEN)
                        .upper());
    }

    private static Pedal coupled(Pedal pedal) {
        return pedal.with(pedal.clipping().coupled(1e-6));
    }

    private static Pedal blend(String pair) {
        return SILICON.with(Clipping.shunt(2_200, pair)).clean(6);
    }

    /** A fault after the work in a state that was to stay what it was. */
    private record After(String name, Occasion occasion, Pedal before, Pedal after, String listed, List<String> codes) {
        After listed(String pair) {
            return new After(name, occasion, before, after, pair, codes);
        }

        CircuitJob lower() {
            return half(Truth.fault("original", codes.toArray(String[]::new)).half("lower"));
        }

        CircuitJob upper() {
            return half(Truth.fault("original", codes.toArray(String[]::new)).half("upper"));
        }

        CircuitJob done() {
            return half(Truth.fault("original", codes.toArray(String[]::new)));
        }

        private CircuitJob half(Truth truth) {
            return job(
                    name,
                    truth,
                    occasion,
                    Shown.before(before),
                    Shown.unchanged(after).listedAs(listed));
        }
    }

    private static After after(String name, Occasion occasion, Pedal before, Pedal after, String... codes) {
        return new After(name, occasion, before, after, before.clipping().pair(), List.of(codes));
    }

    private static CircuitJob change(String name, Occasion occasion, Pedal before, Pedal after) {
        return job(name, Truth.change("original"), occasion, Shown.before(before), Shown.unchanged(after));
    }

    private static CircuitJob knob(String name, Occasion occasion, Pedal pedal, double ofRotation) {
        return job(
                name,
                Truth.fault("original", KNOB),
                occasion,
                Shown.before(pedal),
                Shown.unchanged(pedal).knobOff(ofRotation));
    }

    private static CircuitJob job(String name, Truth truth, Occasion occasion, Shown... states) {
        return CircuitJob.of("faulty-" + name, truth, occasion, states);
    }
}
