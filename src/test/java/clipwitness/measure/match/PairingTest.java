package clipwitness.measure.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.SyntheticTrace;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PairingTest {
    /** A device whose voltage lies so many volts above that of the silicon-like one at every current. */
    private static NamedDevice device(String name, double above, double celsius) {
        return new NamedDevice(
                name,
                JunctionMeasurement.of(
                        new SyntheticTrace(1)
                                .sweep(i -> SyntheticTrace.silicon(i) + above, 1e-6, 1e-2, 60, 0)
                                .curve(1, 1),
                        new Temperature(celsius, 0)));
    }

    private static NamedDevice device(String name, double above) {
        return device(name, above, 25);
    }

    @Test
    void mismatchIsTheRootMeanSquareOfTheVoltageDifference() {
        MatchedPair pair = Mismatch.of(device("a", 0), device("b", 0.005)).orElseThrow();
        assertThat(pair.mismatch().value().orElseThrow()).isCloseTo(0.005, within(1e-6));
        assertThat(pair.mismatchAt1mA().value().orElseThrow()).isCloseTo(0.005, within(1e-6));
    }

    /** Nearest neighbours first would pair b with c (1 mV) and leave a with d (12 mV); together 13 mV. The best way has 11 mV. */
    @Test
    void theSumOfTheMismatchesIsTheSmallestOfAllWays() {
        Pairing pairing =
                Pairing.of(List.of(device("a", 0), device("b", 0.0055), device("c", 0.0065), device("d", 0.012)));
        assertThat(pairing.pairs())
                .extracting(MatchedPair::devices)
                .containsExactlyInAnyOrder(List.of("a", "b"), List.of("c", "d"));
        assertThat(pairing.left()).isEmpty();
    }

    @Test
    void ofAnOddNumberTheOneThatFitsWorstIsLeft() {
        Pairing pairing = Pairing.of(
                List.of(device("far", 0.1), device("a", 0), device("b", 0.001), device("c", 0.01), device("d", 0.013)));
        assertThat(pairing.pairs())
                .extracting(MatchedPair::devices)
                .containsExactly(List.of("a", "b"), List.of("c", "d"));
        assertThat(pairing.left()).containsExactly("far");
    }

    @Test
    void whatIsNoJunctionIsLeft() {
        NamedDevice resistor = new NamedDevice(
                "r",
                new SyntheticTrace(2).sweep(i -> 100 * i, 1e-6, 1e-2, 60, 0).measured());
        assertThat(Pairing.of(List.of(resistor, device("a", 0), device("b", 0.1)))
                        .left())
                .containsExactly("r");
        assertThat(Pairing.of(List.of(device("a", 0))).left()).containsExactly("a");
    }

    @Test
    void tracesMoreThan3KelvinApartAreFlagged() {
        assertThat(Mismatch.of(device("a", 0, 20), device("b", 0, 23.5))
                        .orElseThrow()
                        .tracedApart())
                .isTrue();
        assertThat(Mismatch.of(device("a", 0, 20), device("b", 0, 22.5))
                        .orElseThrow()
                        .tracedApart())
                .isFalse();
    }

    /** One diode traced at 20 °C and at 30 °C: 18 mV apart as read, none apart at one temperature, known to 0.3 mV a kelvin. */
    @Test
    void tracesAreReferredToOneTemperature() {
        MatchedPair pair =
                Mismatch.of(device("cold", 0.018, 20), device("warm", 0, 30)).orElseThrow();
        assertThat(pair.mismatch().value().orElseThrow()).isLessThan(1e-6);
        assertThat(pair.mismatch().expandedUncertainty().orElseThrow())
                .isCloseTo(2 * 3e-3 / Math.sqrt(3), within(1e-5));
        assertThat(pair.mismatchAt1mA().value().orElseThrow()).isLessThan(1e-4);
        assertThat(pair.leftByTemperature()).isCloseTo(3e-3, within(1e-12));
    }

    /** 1 µA to 100 µA against 20 µA to 10 mA: the 0.7 decades in common say too little. */
    @Test
    void twoThatShareLessThanADecadeAreNoPair() {
        NamedDevice low = new NamedDevice(
                "low",
                new SyntheticTrace(1)
                        .sweep(SyntheticTrace::silicon, 1e-6, 1e-4, 60, 0)
                        .measured());
        NamedDevice high = new NamedDevice(
                "high",
                new SyntheticTrace(1)
                        .sweep(SyntheticTrace::silicon, 2e-5, 1e-2, 60, 0)
                        .measured());
        assertThat(Mismatch.of(low, high)).isEmpty();
        assertThat(Mismatch.refusal(low, high))
                .contains("their curves share less than a decade of current above the floors of the traces");
        assertThat(Mismatch.of(low, device("all", 0)).orElseThrow().range()).isEqualTo(new CurrentRange(1e-6, 1e-4));
    }

    /** Of points on a line the neighbours make the smallest sum: those of two hundred devices, in 19,900 possible pairs, are found. */
    @Test
    void ofTwoHundredDevicesTheNeighboursArePaired() {
        Random random = new Random(3);
        double[] above = random.doubles(200, -0.04, 0.04).toArray();
        List<NamedDevice> devices = new ArrayList<>();
        for (int i = 0; i < above.length; i++) {
            devices.add(device("d" + i, above[i]));
        }
        double[] sorted = Arrays.stream(above).sorted().toArray();
        double smallest = 0;
        for (int i = 0; i < sorted.length; i += 2) {
            smallest += sorted[i + 1] - sorted[i];
        }
        List<MatchedPair> pairs = Pairing.of(devices).pairs();
        assertThat(pairs).hasSize(100);
        assertThat(pairs.stream()
                        .mapToDouble(p -> p.mismatch().value().orElseThrow())
                        .sum())
                .isCloseTo(smallest, within(1e-6));
    }
}
