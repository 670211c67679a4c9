package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.signal.ReferenceRow;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * diode-clipper-dc.csv and diode-clipper-sine.csv: computed to 50 digits by Lambert's W and against a general circuit simulator, which agrees
 * with them within 2e-8 V to 2e-5 V (diode-clipper-ngspice.csv).
 */
class ShuntClipperReferenceTest {
    static Stream<ReferenceRow> voltages() {
        return ReferenceRow.of(ReferenceClipper.class, "/clipwitness/bench/diode-clipper-dc.csv");
    }

    static Stream<ReferenceRow> sines() {
        return ReferenceRow.of(ReferenceClipper.class, "/clipwitness/bench/diode-clipper-sine.csv")
                .filter(r -> r.number("source peak") <= 2);
    }

    @Test
    void nodeVoltageIsTheReferences() {
        voltages()
                .forEach(row -> assertThat(
                                ReferenceClipper.named(row.text("case")).outputAt(row.number("source voltage")))
                        .as(row.toString())
                        .isCloseTo(row.number("node voltage"), within(1e-10)));
    }

    /** A record of 480 samples a period is allowed 1e-3 of a peak that is read from its arc. */
    @ParameterizedTest
    @MethodSource("sines")
    void predictedFiguresAreTheReferences(ReferenceRow row) {
        double peak = row.number("source peak");
        ClipperPrediction prediction = ClipperPrediction.of(
                ReferenceClipper.named(row.text("case")), new Drive(peak, 0, peak), 1, new JunctionUncertainty(0, 0));
        double up = row.number("plateau max");
        double down = -row.number("plateau min");
        assertThat(value(prediction, WaveformQuantity.RMS)).isCloseTo(row.number("rms without dc"), within(3e-5));
        assertThat(value(prediction, WaveformQuantity.MEAN)).isCloseTo(row.number("dc"), within(3e-5));
        assertThat(value(prediction, WaveformQuantity.CLIP_UP)).isCloseTo(up, within(4e-3 * (up + down)));
        assertThat(value(prediction, WaveformQuantity.CLIP_DOWN)).isCloseTo(down, within(4e-3 * (up + down)));
        double a1 = Math.abs(row.number("A1 signed cosine series about positive crest"));
        double a3 = Math.abs(row.number("A3 signed cosine series about positive crest"));
        if (a3 > 1e-3 * a1) {
            assertThat(prediction.harmonics().get(3).value().orElseThrow())
                    .isCloseTo(20 * Math.log10(a3 / a1), within(0.05));
        }
    }

    private static double value(ClipperPrediction prediction, WaveformQuantity quantity) {
        Measured measured = prediction.get(quantity);
        return measured.value().orElseThrow();
    }
}
