package clipwitness.bench.circuit;

import clipwitness.bench.OnePole;

/** Jobs whose second state is known in words: what the new pair, the attenuator or the tone control does to the sound. */
public final class AnswerCircuits {
    /** Transistor junctions, whose knee is sharp. */
    private static final Pedal HARD = Pedal.of(60, Clipping.shunt(1_000, "Q1|Q2"));

    /** Diodes of like threshold, whose knee is wide: they begin earlier and, driven far, distort less. */
    private static final Pedal SOFT = Pedal.of(60, Clipping.shunt(1_000, "D1|D2"));

    private AnswerCircuits() {}

    /** Two diodes in series in each leg, where one was: they begin at twice the voltage. */
    public static CircuitJob doubled() {
        return job("doubled", SOFT, SOFT.pair("D1+D3|D2+D4"), 50, 100);
    }

    /** A sharp knee becomes a wide one, captured where it begins and where it is driven far. */
    public static CircuitJob wider() {
        return job("wider", HARD, SOFT, 25, 100);
    }

    /** The same clipper, half as loud. */
    public static CircuitJob attenuated() {
        return job("attenuated", HARD, HARD.volume(0.25), 25, 50, 100);
    }

    /** The same clipper behind a tone control that is turned down. */
    public static CircuitJob darker() {
        return job("darker", HARD, HARD.then(OnePole.lowPass(3_400)), 50, 100);
    }

    /** The clippers are taken out and the supply is ample. */
    public static CircuitJob lifted() {
        return job("lifted", HARD, HARD.pair("|"), 50, 100);
    }

    private static CircuitJob job(String name, Pedal before, Pedal now, Integer... gains) {
        Occasion occasion = Occasion.FULL.gains(gains);
        return CircuitJob.of("answer-" + name, Truth.sound(), occasion, Shown.before(before), Shown.changed(now));
    }
}
