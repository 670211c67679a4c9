package clipwitness.bench;

import java.util.Comparator;
import java.util.List;

/**
 * One leg of a clipper: junctions in series and the resistance of the joints that hold them.
 *
 * @param junctions junctions in series, all the same way round; none stands for an open leg
 * @param joints    resistance of the joints together in Ω, 0 when they are sound
 */
record ClipperLeg(List<Junction> junctions, double joints) {
    /** Copies what it is given. */
    ClipperLeg {
        junctions = List.copyOf(junctions);
        if (!(joints >= 0)) {
            throw new IllegalArgumentException("joints have 0 Ω or more but got " + joints);
        }
    }

    /** Junctions in series with sound joints. */
    static ClipperLeg of(Junction... junctions) {
        return new ClipperLeg(List.of(junctions), 0);
    }

    /** A leg that never conducts. */
    static ClipperLeg open() {
        return of();
    }

    /** The same leg with a bad joint. */
    ClipperLeg withJoint(double ohms) {
        return new ClipperLeg(junctions, ohms);
    }

    /**
     * Current in A at a voltage in V across the leg, found as I = Is (exp(s) - 1) with Is of the junction that saturates first:
     * in s the voltage is neither steep nor flat.
     */
    double currentAt(double voltage) {
        if (junctions.isEmpty()) {
            return 0;
        }
        Junction first = junctions.stream()
                .min(Comparator.comparingDouble(Junction::saturationCurrent))
                .orElseThrow();
        double saturation = first.saturationCurrent();
        double ohmic = joints
                + junctions.stream().mapToDouble(Junction::seriesResistance).sum();
        double steepest = voltage / first.slopeVoltage();
        double most =
                voltage > 0 && ohmic > 0 ? Math.min(steepest, Math.log1p(voltage / (ohmic * saturation))) : steepest;
        double root = RisingRoot.of(
                s -> voltageAt(saturation * Math.expm1(s)) - voltage,
                s -> saturation * Math.exp(s) * resistanceAt(saturation * Math.expm1(s)),
                Math.min(0, most),
                Math.max(0, most));
        return saturation * Math.expm1(root);
    }

    /** Differential conductance dI/dV in S at a voltage in V across the leg. */
    double conductanceAt(double voltage) {
        return junctions.isEmpty() ? 0 : 1 / resistanceAt(currentAt(voltage));
    }

    private double voltageAt(double current) {
        return current * joints
                + junctions.stream().mapToDouble(j -> j.voltageAt(current)).sum();
    }

    private double resistanceAt(double current) {
        return joints
                + junctions.stream().mapToDouble(j -> j.resistanceAt(current)).sum();
    }
}
