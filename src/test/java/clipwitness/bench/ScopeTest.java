package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScopeTest {
    private static final Scope QUIET = new Scope(1_000, 0, 0);

    private static Recording seen(Scope scope, Probe probe) {
        return scope.record(new Random(1), 1e-5, List.of(probe));
    }

    /** 8 bits, 25 codes a division: at 100 mV a division the converter ends at 127 codes of 4 mV. */
    @Test
    void theConverterEndsAt127Codes() {
        Samples high =
                seen(QUIET, new Probe("out", t -> 3, 0.1)).channels().get(0).values();
        Samples low =
                seen(QUIET, new Probe("out", t -> -3, 0.1)).channels().get(0).values();
        assertThat(high.minimum()).isCloseTo(0.508, within(1e-12));
        assertThat(low.maximum()).isCloseTo(-0.512, within(1e-12));
    }

    /** Half a code of noise, and what rounding adds, 1/sqrt 12: sqrt(0.25 + 1/12) = 0.577 codes; 4 standard deviations of 10,000 samples. */
    @Test
    void noiseAndRoundingAddAsPowers() {
        Samples values = seen(new Scope(10_000, 0, 0.5), new Probe("out", t -> 0, 0.25))
                .channels()
                .get(0)
                .values();
        double power = IntStream.range(0, values.size())
                .mapToDouble(i -> values.at(i) * values.at(i))
                .average()
                .orElseThrow();
        assertThat(Math.sqrt(power) / 0.01).isCloseTo(0.577, within(0.017));
    }

    /** A ramp of 1 V/s on a clock that is 1 % slow: 999 intervals of 10 µs last 10.09 ms. */
    @Test
    void aSlowClockStretchesTheRecord() {
        Samples values = seen(new Scope(1_000, 0.01, 0), new Probe("out", t -> t, 2e-3))
                .channels()
                .get(0)
                .values();
        assertThat(values.at(999) - values.at(0)).isCloseTo(10.09e-3, within(0.08e-3));
    }

    @Test
    void timeRunsFromBeforeTheTriggerInEvenSteps() {
        Column time = seen(QUIET, new Probe("out", t -> 0, 1)).time();
        assertThat(time.text(0)).isEqualTo("-0.004000");
        assertThat(time.text(999)).isEqualTo("0.005990");
    }

    @ParameterizedTest
    @CsvSource({"0.0011, 0.002", "0.02, 0.02", "0.021, 0.05", "0.51, 1"})
    void rangesAreBuiltInSteps(double value, double step) {
        assertThat(Steps.atLeast(value)).isEqualTo(step);
    }

    @Test
    void someVoltagesFitNoRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> Steps.atLeast(51));
    }
}
