package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.job.Clipper;
import clipwitness.job.Clipper.GainControl;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperLeg;
import clipwitness.measure.clipper.ClippingPair;
import clipwitness.measure.clipper.DeviceLaw;
import clipwitness.measure.junction.JunctionModel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A stage of 1 kΩ and 99 kΩ amplifies by 1 + 99 = 100, 40 dB; 4 V at its output without clippers are 40 mV at its source. */
class GainControlledStageTest {
    private static final ClipperLeg LEG =
            new ClipperLeg(List.of(DeviceLaw.of(new JunctionModel(2.5e-9, 1.75 * 0.0256926, 0.6, 0))));
    private static final ClipperCircuit.Feedback FULL =
            new ClipperCircuit.Feedback(new ClippingPair(LEG, LEG), 1000, 99_000, false);
    private static final double KNOWN_TO = 0.05;

    private static GainControlledStage.Answer answer(
            GainControl control, Optional<String> unclipped, MadeUpCapture setting, MadeUpCapture... others) {
        Clipper clipper = new Clipper(
                Clipper.Topology.FEEDBACK,
                OptionalDouble.empty(),
                OptionalDouble.of(1000),
                OptionalDouble.of(99_000),
                control,
                OptionalDouble.of(1),
                unclipped,
                false,
                Map.of());
        List<CaptureResult> captures = Stream.concat(Stream.of(setting), Stream.of(others))
                .map(MadeUpCapture::done)
                .toList();
        return new GainControlledStage(clipper, Catalogue.of(captures, s -> s)).of(setting.setting(), FULL);
    }

    private static MadeUpCapture clipped(double gain) {
        return MadeUpCapture.ordinary("new", gain);
    }

    /** The state without clippers: its gain in dB, and the level of its output. */
    private static MadeUpCapture open(double gain, double decibels) {
        return MadeUpCapture.ordinary("open", gain)
                .with(WaveformQuantity.GAIN, decibels, KNOWN_TO)
                .with(WaveformQuantity.FUNDAMENTAL, 4, 0.04);
    }

    private static GainControlledStage.Answer.Known half(GainControl control) {
        return (GainControlledStage.Answer.Known)
                answer(control, Optional.of("open"), clipped(50), clipped(100), open(50, 20), open(100, 40));
    }

    /** A tenth of the gain, 10 = 1 + 9: 9 kΩ across the amplifier, or 99 kΩ / 9 = 11 kΩ ahead of it. */
    @Test
    void aTenthOfTheGainTellsTheResistanceThatTheControlHas() {
        assertThat(half(GainControl.FEEDBACK).circuit()).isInstanceOfSatisfying(ClipperCircuit.Feedback.class, c -> {
            assertThat(c.feedback()).isCloseTo(9000, within(1e-6));
            assertThat(c.input()).isEqualTo(1000);
        });
        assertThat(half(GainControl.INPUT).circuit()).isInstanceOfSatisfying(ClipperCircuit.Feedback.class, c -> {
            assertThat(c.feedback()).isEqualTo(99_000);
            assertThat(c.input()).isCloseTo(11_000, within(1e-6));
        });
    }

    /** The source is that of full gain. Level 1 %, two gains 0.05 dB each: 0.0707 dB are 0.814 %; 1.289 % together. */
    @Test
    void theSourceIsThatOfFullGainAndCarriesTheUncertaintyOfBothGains() {
        GainControlledStage.Answer.Known known = half(GainControl.FEEDBACK);
        assertThat(known.source().amplitude()).isCloseTo(0.04, within(1e-12));
        assertThat(known.source().relativeUncertainty()).isCloseTo(0.01289, within(1e-5));
        assertThat(Said.remark(known.source().source()))
                .isEqualTo(
                        "source from the state without clippers; feedback resistance 9.0\u00A0kΩ at this setting, from the gain");
        assertThat(Said.remark(half(GainControl.INPUT).source().source()))
                .endsWith("input resistance 11\u00A0kΩ at this setting, from the gain");
    }

    @Test
    void atFullGainTheStageIsTheSheets() {
        GainControlledStage.Answer.Known known = (GainControlledStage.Answer.Known)
                answer(GainControl.FEEDBACK, Optional.of("open"), clipped(100), open(100, 40));
        assertThat(known.circuit()).isEqualTo(FULL);
        assertThat(known.source().relativeUncertainty()).isCloseTo(0.01, within(1e-12));
        assertThat(Said.remark(known.source().source())).isEqualTo("source from the state without clippers");
    }

    /** Where no state is without clippers, a tenth of the gain for small signals, which the pair's slope at zero loads. */
    @Test
    void withoutSuchAStateTheGainForSmallSignalsTells() {
        GainControlledStage.Answer.Known known = (GainControlledStage.Answer.Known)
                answer(GainControl.FEEDBACK, Optional.empty(), small(50, 19.9), small(100, 39.9));
        assertThat(known.circuit().smallSignalGain()).isCloseTo(FULL.smallSignalGain() / 10, within(1e-9));
        assertThat(known.source().relativeUncertainty()).isGreaterThan(0.00814);
    }

    private static MadeUpCapture small(double gain, double decibels) {
        return clipped(gain)
                .with(WaveformQuantity.SMALL_SIGNAL_GAIN, decibels, KNOWN_TO)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.04, 1e-6)
                .with(WaveformQuantity.ONSET_UP, 0.01, 1e-4);
    }

    @Test
    void aStateThatWasNotCapturedAtFullGainTellsNothing() {
        assertThat(said(answer(GainControl.FEEDBACK, Optional.of("open"), clipped(50), open(50, 20), open(100, 40))))
                .isEqualTo("the gain control is the feedback resistance of the clipper, stated for full gain,"
                        + " and nothing of this state was captured there");
    }

    /** A stage that does not invert amplifies by more than 1. */
    @Test
    void aGainThatNoResistanceGivesTellsNothing() {
        assertThat(said(answer(
                        GainControl.INPUT,
                        Optional.of("open"),
                        clipped(50),
                        clipped(100),
                        open(50, -1),
                        open(100, 40))))
                .isEqualTo(
                        "the input resistance of the clipper at this setting cannot be found from the gain for small signals");
        assertThat(answer(GainControl.INPUT, Optional.of("open"), clipped(50), clipped(100), open(100, 40)))
                .isInstanceOf(GainControlledStage.Answer.Unknown.class);
    }

    private static String said(GainControlledStage.Answer answer) {
        return Said.reason(Optional.of(((GainControlledStage.Answer.Unknown) answer).why()))
                .orElseThrow();
    }
}
