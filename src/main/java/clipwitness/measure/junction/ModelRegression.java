package clipwitness.measure.junction;

import clipwitness.signal.NonlinearFit;

/**
 * Voltage over current of {@link JunctionModel} as a curve to be fitted. Parameters: ln Is, ln nVt, Rs, and ln Gp where the model has a
 * shunt; logarithms keep what must be positive so.
 */
final class ModelRegression implements NonlinearFit.Regression {
    static final int SATURATION = 0;
    static final int SLOPE = 1;
    static final int SERIES = 2;
    static final int SHUNT = 3;

    /** Farther than any device: a search that strays so far finds nothing. */
    private static final double MOST_LOG = 200;

    private static final double MOST_SLOPE_LOG = 9;
    private static final double MOST_OHMS = 1e12;

    private static JunctionModel model(double... p) {
        return new JunctionModel(
                exp(p[SATURATION], MOST_LOG),
                exp(p[SLOPE], MOST_SLOPE_LOG),
                Math.max(-MOST_OHMS, Math.min(MOST_OHMS, p[SERIES])),
                p.length > SHUNT ? exp(p[SHUNT], MOST_LOG) : 0);
    }

    private static double exp(double log, double most) {
        return Math.exp(Math.max(-most, Math.min(most, log)));
    }

    /** The model that a fit found. */
    static JunctionModel model(NonlinearFit fit, int parameters) {
        double[] p = new double[parameters];
        for (int k = 0; k < parameters; k++) {
            p[k] = fit.parameter(k);
        }
        return model(p);
    }

    /** The parameters of a model. */
    static double[] parameters(JunctionModel model) {
        double saturation = Math.log(model.saturationCurrent());
        double slope = Math.log(model.slopeVoltage());
        return model.shuntConductance() > 0
                ? new double[] {saturation, slope, model.seriesResistance(), Math.log(model.shuntConductance())}
                : new double[] {saturation, slope, model.seriesResistance()};
    }

    @Override
    public double at(double current, double[] p, double[] gradient) {
        JunctionModel model = model(p);
        double v = model.junctionVoltageAt(current);
        double conductance = model.conductance(v);
        double saturation = model.saturationCurrent();
        double u = v / model.slopeVoltage();
        gradient[SATURATION] = -saturation * Math.expm1(u) / conductance;
        gradient[SLOPE] = saturation * Math.exp(u) * u / conductance;
        gradient[SERIES] = current;
        if (p.length > SHUNT) {
            gradient[SHUNT] = -model.shuntConductance() * v / conductance;
        }
        return v + current * model.seriesResistance();
    }
}
