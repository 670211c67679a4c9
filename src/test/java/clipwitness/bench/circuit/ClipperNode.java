package clipwitness.bench.circuit;

import clipwitness.bench.Block;
import clipwitness.bench.Cycle;
import clipwitness.bench.LegPair;
import clipwitness.capture.Samples;

/**
 * A node that is fed through a resistance and, if there is one, a coupling capacitor, with a pair of legs, a capacitor and a load to
 * ground. Stepped by the trapezoidal rule; each step is the static clipper behind the equivalent source. The charge on the coupling
 * capacitor that comes back after one period is found by the secant rule, so that slow capacitors settle at once.
 *
 * @param resistance Ω, above 0
 * @param coupling   F; infinite for a wire
 * @param across     F across the legs; 0 for none
 * @param load       Ω to ground; infinite for none
 * @param pair       legs
 */
record ClipperNode(double resistance, double coupling, double across, double load, LegPair pair) implements Block {
    private static final int MOST_TRIES = 40;

    /** Volts on the coupling capacitor between the ends of a period in the steady state. */
    private static final double SETTLED = 1e-9;

    /** What a run over one period leaves behind. */
    private record Period(Samples out, State end) {}

    /** Capacitor voltages in V and currents in A: coupling, node. */
    private record State(double charge, double current, double node, double inflow) {
        State withCharge(double volts) {
            return new State(volts, current, node, inflow);
        }
    }

    @Override
    public Cycle of(Cycle cycle) {
        double[] in = cycle.points().toArray();
        Run run = new Run(in, 1 / (cycle.frequency() * in.length), cycle.peak());
        Period before = run.from(new State(0, 0, 0, 0));
        Period period = run.from(before.end.withCharge(0));
        double charge = 0;
        double gap = period.end.charge;
        double next = gap / 2;
        for (int i = 0; i < MOST_TRIES && Math.abs(gap) > SETTLED; i++) {
            period = run.from(period.end.withCharge(next));
            double nextGap = period.end.charge - next;
            double step = nextGap == gap ? 0 : -nextGap * (next - charge) / (nextGap - gap);
            charge = next;
            gap = nextGap;
            next += step;
        }
        return new Cycle(cycle.frequency(), run.from(period.end).out);
    }

    private final class Run {
        private final double[] in;
        private final double perFarad;
        private final double fed;
        private final double stored;
        private final double conductance;
        private final ClampCurve clamp;

        /** A period of so many points with a step in s between them. */
        Run(double[] in, double step, double peak) {
            this.in = in;
            perFarad = step / (2 * coupling);
            fed = 1 / (resistance + perFarad);
            stored = 2 * across / step;
            conductance = fed + stored + 1 / load;
            clamp = new ClampCurve(pair, 1 / conductance, 4 * peak);
        }

        Period from(State start) {
            double[] out = new double[in.length];
            State s = start;
            for (int i = 0; i < in.length; i++) {
                double source = in[i] - s.charge - perFarad * s.current;
                double node = clamp.at((source * fed + stored * s.node + s.inflow) / conductance);
                double current = (source - node) * fed;
                s = new State(
                        s.charge + perFarad * (current + s.current),
                        current,
                        node,
                        stored * (node - s.node) - s.inflow);
                out[i] = node;
            }
            return new Period(Samples.of(out), s);
        }
    }
}
