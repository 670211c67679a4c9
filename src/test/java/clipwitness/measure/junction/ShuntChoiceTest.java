package clipwitness.measure.junction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.SyntheticTrace;
import clipwitness.measure.Measured;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A germanium-like diode, Is 1 µA, n 1.25, Rs 20 Ω at 25 °C, traced from -2 V to 10 mA with 50 µV of noise, with and without a leak beside it. */
class ShuntChoiceTest {
    private static final double SATURATION = 1e-6;
    private static final double SLOPE = 1.25 * 0.025692579121085846;

    private static JunctionResult traced(double leak, long seed) {
        JunctionModel model = new JunctionModel(SATURATION, SLOPE, 20, leak);
        return new SyntheticTrace(seed)
                .sweep(model::voltageAt, 2e-6, 1e-2, 200, 50e-6)
                .reverse(v -> SATURATION * Math.expm1(v / SLOPE) + leak * v, -2, -0.05, 40, 2e-9)
                .measured();
    }

    private static Measured.Value figure(Measured measured) {
        return measured.asValue().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aLeakOfTwoMegohmsIsFoundAndTheSaturationCurrentHeld(long seed) {
        JunctionFit fit = traced(0.5e-6, seed).fit().orElseThrow();
        Measured.Value ohms = figure(fit.shuntResistance());
        Measured.Value saturation = figure(fit.saturationCurrent());
        assertThat(ohms.number()).isCloseTo(2e6, within(3 * ohms.standardUncertainty()));
        assertThat(saturation.number()).isCloseTo(SATURATION, within(3 * saturation.standardUncertainty()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aSoundDiodeHasNoneAndItsSaturationCurrentIsHeld(long seed) {
        JunctionFit fit = traced(0, seed).fit().orElseThrow();
        Measured.Value saturation = figure(fit.saturationCurrent());
        assertThat(fit.shuntResistance().reason()).contains(Reason.of(DeviceReason.NO_SHUNT));
        assertThat(saturation.number()).isCloseTo(SATURATION, within(3 * saturation.standardUncertainty()));
    }

    /** Above 10 µA 2 MΩ take a thousandth of the current, and no reverse point shows them: that stands in the uncertainty, not in the figure. */
    @Test
    void aLeakThatTheTraceHardlyShowsWidensTheInterval() {
        JunctionModel model = new JunctionModel(SATURATION, SLOPE, 20, 0.5e-6);
        JunctionFit fit = new SyntheticTrace(3)
                .sweep(model::voltageAt, 1e-5, 1e-2, 200, 300e-6)
                .measured()
                .fit()
                .orElseThrow();
        Measured.Value saturation = figure(fit.saturationCurrent());
        assertThat(saturation.number()).isCloseTo(SATURATION, within(3 * saturation.standardUncertainty()));
    }
}
