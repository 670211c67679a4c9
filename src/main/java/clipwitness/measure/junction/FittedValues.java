package clipwitness.measure.junction;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;
import clipwitness.signal.NonlinearFit;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The figures of a fit with their uncertainties: those of the fit, times how alike neighbouring residuals are, and those of the choice between a
 * model with and one without shunt; n also the temperature's.
 */
final class FittedValues {
    private FittedValues() {}

    static JunctionFit of(ShuntChoice choice, Temperature temperature) {
        FitAttempt attempt = choice.stands();
        JunctionModel model = attempt.model();
        NonlinearFit fit = attempt.fit();
        double alike = attempt.alikeness();
        double ideality = model.slopeVoltage() / ThermalVoltage.at(temperature.celsius());
        double kelvin = temperature.celsius() + ThermalVoltage.ZERO_CELSIUS;
        return new JunctionFit(
                model,
                Measured.withNoise(
                                model.saturationCurrent(),
                                Unit.AMPERE,
                                model.saturationCurrent() * alike * fit.standardUncertainty(ModelRegression.SATURATION))
                        .plus(Source.METHOD, choice.uncertainty(JunctionModel::saturationCurrent)),
                Measured.withNoise(
                                ideality, Unit.ONE, ideality * alike * fit.standardUncertainty(ModelRegression.SLOPE))
                        .plus(Source.TEMPERATURE, ideality * temperature.standardUncertainty() / kelvin)
                        .plus(
                                Source.METHOD,
                                ideality * choice.uncertainty(m -> m.slopeVoltage() / model.slopeVoltage())),
                series(
                        model.seriesResistance(),
                        alike * fit.standardUncertainty(ModelRegression.SERIES),
                        choice.uncertainty(JunctionModel::seriesResistance)),
                shunt(model, fit, alike),
                correlations(model, fit),
                Samples.of(attempt.points().stream()
                        .mapToDouble(TracedPoint::amperes)
                        .toArray()),
                Samples.of(attempt.residuals()),
                attempt.scatter());
    }

    private static Measured series(double ohms, double uncertainty, double ofTheChoice) {
        return Measured.withNoise(ohms, Unit.OHM, uncertainty)
                .plus(Source.METHOD, ofTheChoice)
                .orUpperBound();
    }

    private static Measured shunt(JunctionModel model, NonlinearFit fit, double alike) {
        if (model.shuntConductance() == 0) {
            return Measured.refused(Unit.OHM, DeviceReason.NO_SHUNT);
        }
        double ohms = 1 / model.shuntConductance();
        return Measured.withNoise(ohms, Unit.OHM, ohms * alike * fit.standardUncertainty(ModelRegression.SHUNT));
    }

    /** By name; the parameters of {@link ModelRegression} are in the order of the names. */
    private static Map<String, Double> correlations(JunctionModel model, NonlinearFit fit) {
        int count = model.shuntConductance() > 0 ? 4 : 3;
        Map<String, Double> correlations = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            for (int k = i + 1; k < count; k++) {
                int sign = i == ModelRegression.SHUNT || k == ModelRegression.SHUNT ? -1 : 1; // Rp = 1 / Gp
                correlations.put(
                        JunctionFit.NAMES.get(i) + "-" + JunctionFit.NAMES.get(k), sign * fit.correlation(i, k));
            }
        }
        return correlations;
    }
}
