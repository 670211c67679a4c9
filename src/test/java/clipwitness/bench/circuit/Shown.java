package clipwitness.bench.circuit;

/**
 * One state of a job: what the sheet says of it and what is on the bench in truth.
 *
 * @param name       name in the sheet
 * @param role       role in the sheet
 * @param pedal      what was captured
 * @param listed     pair that the sheet lists for it, as {@link Device} writes it
 * @param knobOffset how far the knob sits from where it should, of full rotation
 */
record Shown(String name, String role, Pedal pedal, String listed, double knobOffset) {
    private static final String BEFORE = "received";

    static Shown before(Pedal pedal) {
        return of(BEFORE, "before", pedal);
    }

    static Shown unchanged(Pedal pedal) {
        return of("original", "unchanged", pedal);
    }

    static Shown changed(Pedal pedal) {
        return of("new", "changed", pedal);
    }

    static Shown of(String name, String role, Pedal pedal) {
        return new Shown(name, role, pedal, pedal.clipping().pair(), 0);
    }

    /** The sheet lists another pair than the one on the bench. */
    Shown listedAs(String pair) {
        return new Shown(name, role, pedal, pair, knobOffset);
    }

    Shown knobOff(double ofRotation) {
        return new Shown(name, role, pedal, listed, ofRotation);
    }
}
