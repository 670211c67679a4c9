package clipwitness.bench.circuit;

import clipwitness.bench.Block;
import clipwitness.bench.Cycle;
import clipwitness.bench.OnePole;

/**
 * A clipping stage.
 *
 * @param topology   where the legs sit
 * @param resistance Ω: of the source that feeds the node, or of the input leg of a feedback clipper
 * @param feedback   Ω across the legs of a feedback clipper
 * @param coupling   F in series with the resistance; infinite for a wire
 * @param across     F across the legs
 * @param pair       legs, as {@link Device} writes them
 */
record Clipping(Topology topology, double resistance, double feedback, double coupling, double across, String pair)
        implements Block {
    private static final double LOAD = 220_000;
    private static final double WIRE = Double.POSITIVE_INFINITY;

    /** From a node behind a resistance in Ω to ground. */
    static Clipping shunt(double resistance, String pair) {
        return new Clipping(Topology.SHUNT, resistance, 0, WIRE, 0, pair);
    }

    /** Across the feedback of a non-inverting amplifier. */
    static Clipping feedback(double resistance, double feedback, String pair) {
        return new Clipping(Topology.FEEDBACK, resistance, feedback, WIRE, 0, pair);
    }

    Clipping inverting() {
        return new Clipping(Topology.INVERTING_FEEDBACK, resistance, feedback, coupling, across, pair);
    }

    Clipping coupled(double farads) {
        return new Clipping(topology, resistance, feedback, farads, across, pair);
    }

    Clipping across(double farads) {
        return new Clipping(topology, resistance, feedback, coupling, farads, pair);
    }

    Clipping with(String otherPair) {
        return new Clipping(topology, resistance, feedback, coupling, across, otherPair);
    }

    @Override
    public Cycle of(Cycle drive) {
        if (topology == Topology.SHUNT) {
            return new ClipperNode(resistance, coupling, across, LOAD, Device.pair(pair)).of(drive);
        }
        Cycle inflow = coupling == WIRE
                ? drive
                : OnePole.highPass(1 / (2 * Math.PI * resistance * coupling)).of(drive);
        ClipperNode node = new ClipperNode(feedback, WIRE, across, WIRE, Device.pair(pair));
        Cycle legs = node.of(inflow.map(x -> x * feedback / resistance));
        return topology == Topology.FEEDBACK ? Sum.of(drive, legs) : legs.map(v -> -v);
    }
}
