package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import clipwitness.signal.ReferenceRow;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shunt clipper against src/test/resources/clipwitness/bench/diode-clipper-*.csv; the same formula, so 1e-12 V. */
class ShuntClipperTest {
    static Stream<ReferenceRow> steadyVoltages() {
        return ReferenceRow.of(ClipperCase.class, "diode-clipper-dc.csv");
    }

    static Stream<ReferenceRow> sines() {
        return ReferenceRow.of(ClipperCase.class, "diode-clipper-sine.csv");
    }

    @ParameterizedTest
    @MethodSource("steadyVoltages")
    void nodeAndCurrentsAreTheReferences(ReferenceRow row) {
        ShuntClipper clipper = ClipperCase.named(row.text("case"));
        double node = clipper.outputFor(row.number("source voltage"));
        assertThat(node).isCloseTo(row.number("node voltage"), within(1e-12));
        assertThat(clipper.pair().up().currentAt(node)).isCloseTo(current(row, "upper"), within(1e-12));
        assertThat(clipper.pair().down().currentAt(-node)).isCloseTo(current(row, "lower"), within(1e-12));
    }

    private static double current(ReferenceRow row, String side) {
        String cell = row.text("current of " + side + " diode");
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    @ParameterizedTest
    @MethodSource("sines")
    void plateausAreTheReferences(ReferenceRow row) {
        ShuntClipper clipper = ClipperCase.named(row.text("case"));
        double peak = row.number("source peak");
        assertThat(clipper.outputFor(peak)).isCloseTo(row.number("plateau max"), within(1e-12));
        assertThat(clipper.outputFor(-peak)).isCloseTo(row.number("plateau min"), within(1e-12));
    }

    /** The reference takes two equal junctions in series for one of twice the n and twice the Rs. */
    @Test
    void twoJunctionsInSeriesAreOneOfTwiceTheSlope() {
        Junction one = new Junction(2.5e-9, 1.75, 0.6, 25);
        ClipperLeg two = ClipperLeg.of(one, one);
        ReferenceRow.of(ClipperCase.class, "diode-clipper-dc.csv")
                .filter(row -> row.text("case").equals("one silicon up two in series down"))
                .forEach(row -> assertThat(new ShuntClipper(2200, new LegPair(ClipperLeg.of(one), two))
                                .outputFor(row.number("source voltage")))
                        .isCloseTo(row.number("node voltage"), within(1e-12)));
    }

    @Test
    void aSourceNeedsResistance() {
        LegPair none = new LegPair(ClipperLeg.open(), ClipperLeg.open());
        assertThatIllegalArgumentException().isThrownBy(() -> new ShuntClipper(0, none));
    }
}
