package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Measurement book, section 5: what two occasions at the bench add to a change of level. */
class DriftTest {
    private static final Drift DRIFT = new Drift(new TemperatureChange(OptionalDouble.empty(), 1));

    @Test
    void twoCapturesAlikeAddNothing() {
        StateAtCondition a = MadeUpCapture.ordinary("a", 50)
                .range(steps(0.01))
                .temperature(21)
                .setting();
        StateAtCondition b = MadeUpCapture.ordinary("b", 50)
                .range(steps(0.0101))
                .temperature(21)
                .setting();
        assertThat(DRIFT.of(a, b, ItemValue.LEVEL)).isEmpty();
        assertThat(DRIFT.doubts(a, b)).isEmpty();
    }

    /** A bound of 3 % is u = 3 % / sqrt 3 (JCGM 100, 4.3.7) in each: 8.686 dB times 0.01732 times sqrt 2 = 0.2127 dB. */
    @Test
    void threePercentAtTwoRangesAdd0Point2127Decibels() {
        Contribution part =
                ofLevel(accurate("a").range(steps(0.01)), accurate("b").range(steps(0.02)));
        assertThat(part.source()).isEqualTo(Source.VERTICAL_ACCURACY);
        assertThat(part.standardUncertainty()).isCloseTo(0.2127, within(1e-4));
        assertThat(ofLevel(accurate("a").range(divisions(0.1)), accurate("b").range(divisions(0.2))))
                .isEqualTo(part);
        assertThat(ofLevel(accurate("a").instrument("scope"), accurate("b").instrument("other scope")))
                .isEqualTo(part);
    }

    @Test
    void aGainAtTwoRangesCarriesTheSameAndADistortionNothing() {
        StateAtCondition a = accurate("a").range(steps(0.01)).setting();
        StateAtCondition b = accurate("b").range(steps(0.02)).setting();
        assertThat(DRIFT.of(a, b, ItemValue.GAIN)).isEqualTo(DRIFT.of(a, b, ItemValue.LEVEL));
        assertThat(DRIFT.of(a, b, ItemValue.THD)).isEmpty();
    }

    /** Common practice: 2 mV/K. 10 K are 20 mV of a clip level of 0.6 V: 8.686 dB / 30 = 0.2895 dB. */
    @Test
    void tenKelvinMoveAClipLevelOf600MillivoltsBy0Point29Decibels() {
        Contribution part = ofLevel(clipping("a").temperature(18), clipping("b").temperature(28));
        assertThat(part.source()).isEqualTo(Source.TEMPERATURE);
        assertThat(part.standardUncertainty()).isCloseTo(0.2895, within(1e-4));
    }

    /** An output of twice the node has twice the clip level, which moves by twice as much. */
    @Test
    void theClipLevelIsThatOfTheNode() {
        Drift doubled = new Drift(new TemperatureChange(OptionalDouble.of(18), 2));
        assertThat(doubled.of(
                                clipping("a").setting(),
                                clipping("b").temperature(28).setting(),
                                ItemValue.LEVEL)
                        .get(0)
                        .standardUncertainty())
                .isCloseTo(2 * 0.2895, within(2e-4));
    }

    /** On a straight curve the output follows the input: 20 lg 1.5 = 3.522 dB. On a level one it stays. */
    @Test
    void aStrongerInputIsWorthWhatTheTransferCurveMakesOfIt() {
        assertThat(ofLevel(driven("a", 0.1), driven("b", 0.15).transfer(line(1)))
                        .standardUncertainty())
                .isCloseTo(3.522, within(1e-3));
        assertThat(ofLevel(driven("a", 0.1), driven("b", 0.15).transfer(line(1e-4)))
                        .standardUncertainty())
                .isLessThan(0.1);
        assertThat(ofLevel(driven("a", 0.1), driven("b", 0.15)).standardUncertainty())
                .isCloseTo(3.522, within(1e-3));
    }

    @Test
    void whatDiffersIsSaid() {
        StateAtCondition a = clipping("a").temperature(18).coupling("dc").setting();
        StateAtCondition b = clipping("b").temperature(28).coupling("ac").setting();
        assertThat(DRIFT.doubts(a, b))
                .extracting(Said::doubt)
                .containsExactly(
                        "captured 10.0 K away from State a: a junction's clip level moves by about 2 mV/K",
                        "coupling is ac here and dc in State a: what changed may be that");
    }

    private static Contribution ofLevel(MadeUpCapture from, MadeUpCapture to) {
        return DRIFT.of(from.setting(), to.setting(), ItemValue.LEVEL).get(0);
    }

    private static MadeUpCapture accurate(String state) {
        return MadeUpCapture.ordinary(state, 50)
                .with(
                        WaveformQuantity.RMS,
                        Measured.of(
                                0.7, Unit.VOLT, new Contribution(Source.VERTICAL_ACCURACY, 0.7 * 0.03 / Math.sqrt(3))));
    }

    private static MadeUpCapture clipping(String state) {
        return MadeUpCapture.ordinary(state, 50)
                .with(WaveformQuantity.CLIP_UP, 0.6, 0.001)
                .with(WaveformQuantity.CLIP_DOWN, 0.6, 0.001);
    }

    private static MadeUpCapture driven(String state, double peak) {
        return MadeUpCapture.ordinary(state, 50).with(WaveformQuantity.INPUT_FUNDAMENTAL, peak, 1e-6);
    }

    /** Straight up to an input, level beyond it. */
    private static TransferCurve line(double straight) {
        double[] x = new double[4001];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = 0.15 * (i - 2000) / 2000;
            y[i] = Math.max(-straight, Math.min(straight, x[i]));
        }
        return new TransferCurve(Samples.of(x), Samples.of(y), 0, false);
    }

    private static VerticalRange steps(double volts) {
        return new VerticalRange(OptionalDouble.empty(), OptionalDouble.of(volts));
    }

    private static VerticalRange divisions(double volts) {
        return new VerticalRange(OptionalDouble.of(volts), OptionalDouble.empty());
    }
}
