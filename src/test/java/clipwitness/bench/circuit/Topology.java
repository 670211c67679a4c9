package clipwitness.bench.circuit;

/** Where the clipper sits. */
enum Topology {
    /** From a node to ground, behind a resistance. */
    SHUNT,
    /** Across the feedback of a non-inverting amplifier: what comes out is the drive and the voltage across the legs. */
    FEEDBACK,
    /** Across the feedback of an inverting amplifier. */
    INVERTING_FEEDBACK
}
