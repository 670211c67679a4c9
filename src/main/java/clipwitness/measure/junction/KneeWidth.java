package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;

/**
 * Width of the knee of current over voltage: the voltage from where the slope dI/dV is 10 % to where it is 90 % of that at the highest
 * current traced. Of the fitted model: with Im the highest current and r = nVt / (Im + Is) + Rs the resistance there, the slope is f / r where
 * I + Is = nVt / (r / f - Rs). Without Rs it is nVt ln 9, 2.197 nVt. A shunt is left out.
 */
final class KneeWidth {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    private KneeWidth() {}

    static Measured of(FitAttempt attempt, Temperature temperature) {
        JunctionModel m = attempt.model();
        JunctionModel plain = new JunctionModel(m.saturationCurrent(), m.slopeVoltage(), m.seriesResistance(), 0);
        double highest = attempt.points().stream()
                .mapToDouble(TracedPoint::amperes)
                .max()
                .orElseThrow();
        double low = current(plain, highest, LOW);
        if (low < 0) {
            return Measured.refused(Unit.VOLT, DeviceReason.SLOPE_AT_ZERO);
        }
        double width = plain.voltageAt(current(plain, highest, HIGH)) - plain.voltageAt(low);
        double relative = attempt.alikeness() * attempt.fit().standardUncertainty(ModelRegression.SLOPE);
        double kelvin = temperature.celsius() + ThermalVoltage.ZERO_CELSIUS;
        return Measured.withNoise(width, Unit.VOLT, width * relative)
                .plus(Source.TEMPERATURE, width * temperature.standardUncertainty() / kelvin);
    }

    private static double current(JunctionModel m, double highest, double share) {
        double resistance = m.resistanceAt(highest);
        return m.slopeVoltage() / (resistance / share - m.seriesResistance()) - m.saturationCurrent();
    }
}
