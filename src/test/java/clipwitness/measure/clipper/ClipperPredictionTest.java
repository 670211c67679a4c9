package clipwitness.measure.clipper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.JunctionModel;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A source of 5 V peak behind 2.2 kΩ into a silicon pair; the wave is the root of the node at each instant. */
class ClipperPredictionTest {
    private static final ClipperLeg LEG =
            new ClipperLeg(List.of(DeviceLaw.of(new JunctionModel(2.5e-9, 1.75 * 0.0256926, 0.6, 0))));
    private static final ClipperCircuit CIRCUIT = new ClipperCircuit.Shunt(new ClippingPair(LEG, LEG), 2200);
    private static final ClipperPrediction PREDICTED =
            ClipperPrediction.of(CIRCUIT, new Drive(5, 0.02, 0.1), 0.5, new JunctionUncertainty(0.01, 0));

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    /** Sine amplitude of a harmonic of the wave, V at the node. */
    private static double harmonic(int order) {
        return IntStream.range(0, 4000)
                .mapToDouble(i -> 2 * Math.PI * (i + 0.5) / 4000)
                .map(t -> CIRCUIT.outputAt(5 * Math.sin(t)) * Math.sin(order * t) / 2000)
                .sum();
    }

    @Test
    void theWaveIsTheNodesTimesTheGainBehindIt() {
        double square = IntStream.range(0, 4000)
                .mapToDouble(i -> CIRCUIT.outputAt(5 * Math.sin(2 * Math.PI * (i + 0.5) / 4000)))
                .map(v -> v * v / 4000)
                .sum();
        assertThat(PREDICTED.get(WaveformQuantity.RMS).value().orElseThrow())
                .isCloseTo(0.5 * Math.sqrt(square), within(2e-4));
        assertThat(PREDICTED.get(WaveformQuantity.PEAK_UP).value().orElseThrow())
                .isCloseTo(0.5 * CIRCUIT.outputAt(5), within(1e-3));
        assertThat(PREDICTED.harmonics().get(3).value().orElseThrow())
                .isCloseTo(20 * Math.log10(Math.abs(harmonic(3) / harmonic(1))), within(0.01));
        assertThat(PREDICTED.harmonics().keySet()).containsExactly(2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(PREDICTED.cycle()).isPresent();
    }

    /** Behind a high resistance nearly the whole percent of the junctions' voltage reaches the output. */
    @Test
    void thePeakMovesWithTheVoltageOfTheJunctions() {
        Measured peak = PREDICTED.get(WaveformQuantity.PEAK_UP);
        assertThat(part(peak, Source.TEMPERATURE) / peak.value().orElseThrow()).isBetween(0.009, 0.0101);
    }

    /**
     * The drive is known to 2 %, resistances to 5 % / sqrt 3: 3.51 % together, 0.176 V of the 4.4 V across 2.2 kΩ, 3.99 % of the current. A junction of
     * 45 mV moves by 1.76 mV for that, and 0.6 Ω by 0.05 mV more; half of it is captured.
     */
    @Test
    void thePeakHardlyMovesWithTheDrive() {
        assertThat(part(PREDICTED.get(WaveformQuantity.PEAK_UP), Source.STIMULUS))
                .isCloseTo(0.90e-3, within(0.02e-3));
    }

    /**
     * A pole at twenty times the tone takes 10 lg((1 + 9 / 400) / (1 + 1 / 400)) = 0.0858 dB of the third harmonic over the fundamental and 0.790 dB of the
     * ninth; as bounds that is u = 0.0495 and 0.456 dB.
     */
    @Test
    void aFilterThatIsNotPredictedPutsItsPartOnTheHarmonics() {
        assertThat(part(PREDICTED.harmonics().get(3), Source.METHOD)).isCloseTo(0.0495, within(1e-4));
        assertThat(part(PREDICTED.harmonics().get(9), Source.METHOD)).isCloseTo(0.456, within(1e-3));
        Measured thd = PREDICTED.get(WaveformQuantity.THD);
        assertThat(part(thd, Source.METHOD) / thd.value().orElseThrow()).isCloseTo(0.00569, within(2e-5));
    }

    /** The onset of a source that is driven so hard lies far below a tenth of the input. */
    @Test
    void anOnsetTooFarBelowTheInputIsRefused() {
        assertThat(PREDICTED.get(WaveformQuantity.ONSET_UP).reason()).isPresent();
    }
}
