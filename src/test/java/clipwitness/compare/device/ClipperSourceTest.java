package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.job.Clipper;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperLeg;
import clipwitness.measure.clipper.ClippingPair;
import clipwitness.measure.clipper.DeviceLaw;
import clipwitness.measure.junction.JunctionModel;
import clipwitness.reason.DeviceReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Where the source is known from, and the words of the report on it. The pair: silicon, 2.2 kΩ ahead of it. */
class ClipperSourceTest {
    private static final ClipperLeg LEG =
            new ClipperLeg(List.of(DeviceLaw.of(new JunctionModel(2.5e-9, 1.75 * 0.0256926, 0.6, 0))));
    private static final ClipperCircuit CIRCUIT = new ClipperCircuit.Shunt(new ClippingPair(LEG, LEG), 2200);

    /** 1.4 V at the output without clippers, seven tenths of the source's: the source is 2 V. */
    @Test
    void theStateWithoutClippersShowsTheSource() {
        ClipperSource.Answer answer = answer(
                clipper(OptionalDouble.of(0.7), Optional.of("open")),
                MadeUpCapture.ordinary("new", 50),
                MadeUpCapture.ordinary("open", 50).with(WaveformQuantity.FUNDAMENTAL, 1.4, 0.014));
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) answer;
        assertThat(known.amplitude()).isCloseTo(2, within(1e-9));
        assertThat(known.relativeUncertainty()).isCloseTo(0.01, within(1e-9));
        assertThat(Said.remark(known.source())).isEqualTo("source from the state without clippers");
    }

    /** 20 dB times 0.1 V is 1 V at the output; the pair's slope at zero, 5.56e-8 S, loads 2.2 kΩ by a ten-thousandth. */
    @Test
    void theGainForSmallSignalsShowsItToo() {
        ClipperSource.Answer answer = answer(
                clipper(OptionalDouble.of(1), Optional.empty()),
                MadeUpCapture.ordinary("new", 50)
                        .with(WaveformQuantity.SMALL_SIGNAL_GAIN, 20, 0.01)
                        .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 0.0001)
                        .with(WaveformQuantity.ONSET_UP, 0.04, 0.001));
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) answer;
        assertThat(known.amplitude()).isCloseTo(1.000245, within(1e-5));
        assertThat(Said.remark(known.source())).isEqualTo("source from the gain for small signals");
    }

    @Test
    void withoutEitherTheSourceIsNotKnown() {
        assertThat(answer(clipper(OptionalDouble.of(1), Optional.empty()), MadeUpCapture.ordinary("new", 50)))
                .isEqualTo(new ClipperSource.Answer.Unknown(DeviceReason.SOURCE_UNKNOWN));
    }

    /** 2 V behind 2.2 kΩ clip to about half a volt: how far is known, so the drive is. */
    @Test
    void withoutTheGainBehindTheClipperItFollowsFromHowFarTheWaveIsClipped() {
        double rms = rmsAt(2);
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) matched(3 * rms, 3 * 2);
        assertThat(known.amplitude()).isCloseTo(2, within(1e-3));
        assertThat(known.relativeUncertainty()).isBetween(0.01, 0.05); // the level's 1 %, more for the flat top
        assertThat(Said.remark(known.source()))
                .isEqualTo(
                        "source from the state without clippers; the gain behind the clipper from how far the wave is"
                                + " clipped");
    }

    /** A sine's rms is 0.7071 of its peak, clipped or not known within 1 % then. */
    @Test
    void aWaveThatIsHardlyClippedDoesNotTellTheGainBehindTheClipper() {
        ClipperSource.Answer unknown = new ClipperSource.Answer.Unknown(DeviceReason.OUTPUT_GAIN_UNKNOWN);
        assertThat(matched(0.7071, 1)).isEqualTo(unknown);
        assertThat(matched(1e-6, 1)).isEqualTo(unknown);
    }

    private static ClipperSource.Answer matched(double rms, double open) {
        return answer(
                clipper(OptionalDouble.empty(), Optional.of("open")),
                MadeUpCapture.ordinary("new", 50).with(WaveformQuantity.RMS, rms, rms / 1000),
                MadeUpCapture.ordinary("open", 50).with(WaveformQuantity.FUNDAMENTAL, open, open / 100));
    }

    private static double rmsAt(double amplitude) {
        double square = 0;
        for (int i = 0; i < 1000; i++) {
            double v = CIRCUIT.outputAt(amplitude * Math.sin(2 * Math.PI * (i + 0.5) / 1000));
            square += v * v / 1000;
        }
        return Math.sqrt(square);
    }

    private static ClipperSource.Answer answer(Clipper clipper, MadeUpCapture... captures) {
        List<CaptureResult> results = new ArrayList<>();
        for (MadeUpCapture b : captures) {
            results.add(b.done());
        }
        return new ClipperSource(clipper, Catalogue.of(results, s -> s)).of(captures[0].setting(), CIRCUIT);
    }

    private static Clipper clipper(OptionalDouble outputGain, Optional<String> unclipped) {
        return new Clipper(
                Clipper.Topology.SHUNT,
                OptionalDouble.of(2200),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Clipper.GainControl.SERIES,
                outputGain,
                unclipped,
                false,
                Map.of());
    }
}
