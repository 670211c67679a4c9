package clipwitness.measure.junction;

/**
 * The customary model of a junction: I = Is (exp(Vj / nVt) - 1) + Gp Vj, V = Vj + I Rs, so without shunt V = nVt ln(1 + I / Is) + I Rs.
 * Both directions are solved by Newton's method from above: the functions are convex and rising, so that it never overshoots.
 *
 * @param saturationCurrent Is, A, above 0
 * @param slopeVoltage      nVt, V, above 0
 * @param seriesResistance  Rs, Ω; less than 0 in a fit that is not {@link #passive() made passive} yet
 * @param shuntConductance  Gp, S, 0 where there is no shunt
 */
public record JunctionModel(
        double saturationCurrent, double slopeVoltage, double seriesResistance, double shuntConductance) {
    private static final int MOST_STEPS = 200;
    private static final double STEEPEST = 600;

    /** Checks the ranges. */
    public JunctionModel {
        if (!(saturationCurrent > 0 && slopeVoltage > 0 && shuntConductance >= 0)
                || !Double.isFinite(seriesResistance)) {
            throw new IllegalArgumentException("no junction: Is %s A, nVt %s V, Rs %s Ω, Gp %s S"
                    .formatted(saturationCurrent, slopeVoltage, seriesResistance, shuntConductance));
        }
    }

    /** The same model with a series resistance of 0 where a fit gave less: what else falls with the current is no resistance. */
    JunctionModel passive() {
        return seriesResistance < 0 ? new JunctionModel(saturationCurrent, slopeVoltage, 0, shuntConductance) : this;
    }

    /** Terminal voltage, V, at a current, A; negative infinity where a junction without shunt blocks so much. */
    public double voltageAt(double current) {
        return junctionVoltageAt(current) + current * seriesResistance;
    }

    /** Voltage across the junction itself, V. */
    double junctionVoltageAt(double current) {
        if (shuntConductance == 0) {
            return current <= -saturationCurrent
                    ? Double.NEGATIVE_INFINITY
                    : slopeVoltage * Math.log1p(current / saturationCurrent);
        }
        double v = current > 0
                ? Math.min(slopeVoltage * Math.log1p(current / saturationCurrent), current / shuntConductance)
                : 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double rise = Math.expm1(v / slopeVoltage);
            double next = v - (currentOf(rise, v) - current) / conductanceOf(rise);
            if (!(next < v)) {
                return v;
            }
            v = next;
        }
        return v;
    }

    /** Current, A, at a terminal voltage, V; needs a series resistance of 0 or more. */
    public double currentAt(double voltage) {
        double ohms = seriesResistance;
        double v = voltage > 0 ? highest(voltage, ohms) : 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double rise = Math.expm1(v / slopeVoltage);
            double next = v - (v + ohms * currentOf(rise, v) - voltage) / (1 + ohms * conductanceOf(rise));
            if (!(next < v)) {
                return junctionCurrent(v);
            }
            v = next;
        }
        return junctionCurrent(v);
    }

    private double highest(double voltage, double ohms) {
        double most = Math.min(voltage, STEEPEST * slopeVoltage);
        return ohms > 0 ? Math.min(most, slopeVoltage * Math.log1p(voltage / (ohms * saturationCurrent))) : most;
    }

    private double junctionCurrent(double v) {
        return currentOf(Math.expm1(v / slopeVoltage), v);
    }

    private double currentOf(double rise, double v) {
        return saturationCurrent * rise + shuntConductance * v;
    }

    /** dI/dVj where the exponential of the voltage over nVt is so much above 1. */
    private double conductanceOf(double rise) {
        return saturationCurrent * (rise + 1) / slopeVoltage + shuntConductance;
    }

    /** dI/dVj, S, at a voltage across the junction, V. */
    double conductance(double v) {
        return saturationCurrent * Math.exp(v / slopeVoltage) / slopeVoltage + shuntConductance;
    }

    /** dV/dI, Ω, at a current, A. */
    public double resistanceAt(double current) {
        return seriesResistance + 1 / conductance(junctionVoltageAt(current));
    }
}
