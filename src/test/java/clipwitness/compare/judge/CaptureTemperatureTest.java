package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.MadeUpCapture;
import clipwitness.job.CaptureRow;
import clipwitness.measure.junction.Temperature;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The rule of the contract: a capture's own temperature, else the bench's, else 23 °C known to 3 K (a bound: u = a / sqrt 3, 1.732 K). */
class CaptureTemperatureTest {
    private static final Temperature UNKNOWN = CaptureTemperature.of(OptionalDouble.empty());
    private static final Temperature READ = CaptureTemperature.of(OptionalDouble.of(21));

    @Test
    void whatNobodyReadIs23DegreesKnownTo3Kelvin() {
        assertThat(UNKNOWN.celsius()).isEqualTo(23);
        assertThat(UNKNOWN.standardUncertainty()).isCloseTo(1.7320508, within(1e-6));
    }

    @Test
    void whatSomebodyReadIsKnownToOneKelvin() {
        assertThat(READ.celsius()).isEqualTo(21);
        assertThat(READ.standardUncertainty()).isCloseTo(0.5773503, within(1e-6));
    }

    @Test
    void theTablesTemperatureGoesBeforeTheBenchs() {
        CaptureRow own = MadeUpCapture.capture("before").temperature(30).done().row();
        CaptureRow none = MadeUpCapture.capture("before").done().row();
        assertThat(CaptureTemperature.of(own, bench(OptionalDouble.of(21))).celsius())
                .isEqualTo(30);
        assertThat(CaptureTemperature.of(none, bench(OptionalDouble.of(21)))).isEqualTo(READ);
        assertThat(CaptureTemperature.of(none, bench(OptionalDouble.empty()))).isEqualTo(UNKNOWN);
    }

    private static clipwitness.job.Bench bench(OptionalDouble celsius) {
        OptionalDouble none = OptionalDouble.empty();
        return new clipwitness.job.Bench(celsius, none, none, none, List.of(), 0.03, 0.01, 0.005);
    }

    /** 3 K and 4 K at right angles are 5 K; of two readings of one thermometer the worse counts once. */
    @Test
    void temperaturesApartAddUpAtRightAngles() {
        assertThat(CaptureTemperature.apart(new Temperature(20, 4), new Temperature(23, 1)))
                .isCloseTo(5, within(1e-12));
        assertThat(CaptureTemperature.apart(READ, READ)).isCloseTo(0.5773503, within(1e-6));
    }
}
