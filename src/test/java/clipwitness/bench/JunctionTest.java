package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import clipwitness.signal.ReferenceRow;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The junction against src/test/resources/clipwitness/bench/shockley-*.csv; tolerance: the same formula, so 1e-12 of the value. */
class JunctionTest {
    /** What 40 digits leave of the current at no voltage, and more. */
    private static final double NO_CURRENT = 1e-40;

    /** Devices of shockley-params.csv without a shunt, by name and temperature. */
    private static Junction device(ReferenceRow row) {
        ReferenceRow device = ReferenceRow.of(ClipperCase.class, "shockley-params.csv")
                .filter(r -> r.text("device").equals(row.text("device")))
                .filter(r -> r.number("temperature") == row.number("temperature"))
                .findFirst()
                .orElseThrow();
        return new Junction(device.number("Is"), device.number("n"), device.number("Rs"), device.number("temperature"));
    }

    private static boolean hasNoShunt(ReferenceRow row) {
        return ReferenceRow.of(ClipperCase.class, "shockley-params.csv")
                .filter(r -> r.text("device").equals(row.text("device")))
                .allMatch(r -> r.text("shunt Rp").isEmpty());
    }

    static Stream<ReferenceRow> forwardVoltages() {
        return ReferenceRow.of(ClipperCase.class, "shockley-forward-voltages.csv")
                .filter(JunctionTest::hasNoShunt);
    }

    static Stream<ReferenceRow> curvePoints() {
        return ReferenceRow.of(ClipperCase.class, "shockley-curves.csv").filter(JunctionTest::hasNoShunt);
    }

    @ParameterizedTest
    @MethodSource("forwardVoltages")
    void forwardVoltageIsTheReferences(ReferenceRow row) {
        double expected = row.number("terminal voltage");
        assertThat(device(row).voltageAt(row.number("current"))).isCloseTo(expected, within(1e-12 * expected));
    }

    @ParameterizedTest
    @MethodSource("curvePoints")
    void currentIsTheReferences(ReferenceRow row) {
        double expected = row.number("current");
        assertThat(device(row).currentAt(row.number("voltage")))
                .isCloseTo(expected, within(1e-12 * Math.abs(expected) + NO_CURRENT));
    }

    @Test
    void thereIsNoJunctionBelowAbsoluteZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Junction(1e-9, 1.8, 0, -300));
    }
}
