package clipwitness.measure.junction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.IvCurve;
import clipwitness.signal.ReferenceRow;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reference junctions, computed to 50 digits: shockley-params.csv, shockley-curves.csv, shockley-forward-voltages.csv. */
class ShockleyTest {
    static Stream<ReferenceRow> devices() {
        return Shockley.parameters();
    }

    @ParameterizedTest
    @MethodSource("devices")
    void modelSolvesBothWaysToTwelveDigits(ReferenceRow device) {
        JunctionModel model = Shockley.model(device);
        for (ReferenceRow row : Shockley.forwardVoltages(device)) {
            double volts = row.number("terminal voltage");
            assertThat(model.voltageAt(row.number("current"))).isCloseTo(volts, within(1e-12 * volts));
        }
        IvCurve curve = Shockley.curve(device);
        for (int i = 0; i < curve.volts().size(); i++) {
            double amperes = curve.amperes().at(i);
            assertThat(model.currentAt(curve.volts().at(i)))
                    .isCloseTo(amperes, within(1e-11 * Math.abs(amperes) + 1e-25));
        }
    }

    /** 1e-6 is what a fit in double can give back, by the note of the reference. */
    @ParameterizedTest
    @MethodSource("devices")
    void fitOfAnExactCurveReturnsItsParameters(ReferenceRow device) {
        JunctionResult result = JunctionMeasurement.of(Shockley.curve(device), Shockley.temperature(device));
        assertThat(result.refusal()).isEmpty();
        JunctionFit fit = result.fit().orElseThrow();
        JunctionModel wanted = Shockley.model(device);
        JunctionModel found = fit.model();
        assertThat(found.saturationCurrent())
                .isCloseTo(wanted.saturationCurrent(), within(1e-5 * wanted.saturationCurrent()));
        assertThat(fit.ideality().value().orElseThrow()).isCloseTo(device.number("n"), within(2e-6));
        assertThat(found.seriesResistance()).isCloseTo(wanted.seriesResistance(), within(1e-5));
        assertThat(found.shuntConductance())
                .isCloseTo(wanted.shuntConductance(), within(1e-4 * wanted.shuntConductance()));
    }

    /** The points lie 17 mV apart and more, so that a curve through them is open by some tenths of a millivolt at a bend. */
    @ParameterizedTest
    @MethodSource("devices")
    void forwardVoltagesAreThoseOfTheReferenceWithinTheirUncertainty(ReferenceRow device) {
        JunctionResult result = JunctionMeasurement.of(Shockley.curve(device), Shockley.temperature(device));
        for (ReferenceRow row : Shockley.forwardVoltages(device)) {
            for (ForwardVoltage f : result.forwardVoltages()) {
                if (f.current() == row.number("current") && f.voltage().value().isPresent()) {
                    assertThat(f.voltage().value().getAsDouble())
                            .isCloseTo(
                                    row.number("terminal voltage"),
                                    within(1e-5
                                            + f.voltage().expandedUncertainty().orElseThrow()));
                }
            }
        }
    }
}
