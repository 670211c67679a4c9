package clipwitness.bench;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * One leg of a clipper: junctions in series and the resistance of the joints that hold them.
 *
 * @param junctions junctions in series, all the same way round; none stands for an open leg
 * @param joints    resistance of the joints together in Ω, 0 when they are sound
 */
public record ClipperLeg(List<Junction> junctions, double joints) {
    /** Copies what it is given. */
    public ClipperLeg {
        junctions = List.copyOf(junctions);
        if (!(joints >= 0)) {
            throw new IllegalArgumentException("joints have 0 Ω or more but got " + joints);
        }
    }

    /** Junctions in series with sound joints. */
    public static ClipperLeg of(Junction... junctions) {
        return new ClipperLeg(List.of(junctions), 0);
    }

    /** A leg that never conducts. */
    public static ClipperLeg open() {
        return of();
    }

    /** The same leg with a bad joint. */
    public ClipperLeg withJoint(double ohms) {
        return new ClipperLeg(junctions, ohms);
    }

    /** Current in A at a voltage in V across the leg. */
    public double currentAt(double voltage) {
        return at(voltage).value();
    }

    /**
     * Current in A and its slope in S at a voltage in V across the leg, found as I = Is (exp(s) - 1) with Is of the junction that
     * saturates first: in s the voltage is neither steep nor flat.
     */
    public Point at(double voltage) {
        if (junctions.isEmpty()) {
            return new Point(0, 0);
        }
        Junction first = Collections.min(junctions, Comparator.comparingDouble(Junction::saturationCurrent));
        double saturation = first.saturationCurrent();
        double ohms = joints
                + junctions.stream().mapToDouble(Junction::seriesResistance).sum();
        double steepest = voltage / first.slopeVoltage();
        double most =
                voltage > 0 && ohms > 0 ? Math.min(steepest, Math.log1p(voltage / (ohms * saturation))) : steepest;
        double s = RisingRoot.of(
                x -> {
                    Point across = across(x, saturation, ohms);
                    return new Point(across.value() - voltage, across.slope());
                },
                Math.min(0, most),
                Math.max(0, most));
        return new Point(
                saturation * Math.expm1(s),
                saturation * Math.exp(s) / across(s, saturation, ohms).slope());
    }

    /** Voltage across the leg in V and its slope over s. */
    private Point across(double s, double saturation, double ohms) {
        double value = ohms * saturation * Math.expm1(s);
        double slope = ohms * saturation * Math.exp(s);
        for (Junction junction : junctions) {
            double share =
                    saturation / junction.saturationCurrent(); // log1p would lose what s still holds where it is 1
            value += junction.slopeVoltage() * (share == 1 ? s : Math.log1p(share * Math.expm1(s)));
            slope += junction.slopeVoltage() * (share == 1 ? 1 : share * Math.exp(s) / (1 + share * Math.expm1(s)));
        }
        return new Point(value, slope);
    }
}
