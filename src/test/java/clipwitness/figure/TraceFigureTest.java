package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.Curves;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.NamedDevice;
import clipwitness.words.Speech;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class TraceFigureTest {
    private static final NamedDevice DIODE = device("D1", i -> 0.045 * Math.log1p(i / 2.5e-9));
    private static final NamedDevice RESISTOR = device("R1", i -> 470 * i);

    private static NamedDevice device(String name, DoubleUnaryOperator voltage) {
        double[] amperes =
                DoubleStream.iterate(1e-6, i -> i <= 1e-2, i -> i * 1.1).toArray();
        double[] volts = DoubleStream.of(amperes).map(voltage).toArray();
        return new NamedDevice(
                name,
                JunctionMeasurement.of(Curves.of(Samples.of(volts), Samples.of(amperes)), new Temperature(23, 0)));
    }

    private static String finding(NamedDevice... devices) {
        return TraceFigure.of(List.of(devices), Speech.ENGLISH).finding().replace('\u00A0', ' ');
    }

    /** The diode's 10 mA need 0.68 V, the resistor's 4.7 V: axes for both would leave the diode a seventh of the width. */
    @Test
    void theAxesSuitTheJunctions() {
        Figure figure = TraceFigure.of(List.of(DIODE, RESISTOR), Speech.ENGLISH);
        RecordingCanvas canvas = new RecordingCanvas();
        figure.paint(canvas, 500, 500 * figure.aspect());
        assertThat(canvas.texts())
                .extracting(RecordingCanvas.Written::text)
                .contains("Voltage, mV")
                .doesNotContain("Voltage, V");
        assertThat(finding(DIODE, RESISTOR))
                .isEqualTo(
                        "At 1 mA: D1 580 mV; R1 470 mV. The axes are scaled to the junctions; curves of devices without a junction may leave the picture.");
    }

    @Test
    void aloneAResistorIsShownWhole() {
        assertThat(finding(RESISTOR)).isEqualTo("At 1 mA: R1 470 mV.");
        assertThat(finding(DIODE)).isEqualTo("At 1 mA: D1 580 mV.");
    }
}
