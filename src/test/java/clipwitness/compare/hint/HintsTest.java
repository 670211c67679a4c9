package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.compare.SaidHint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each hint of the measurement book, section 9, on a made fault, and silence beside it. */
class HintsTest {
    @TempDir
    private Path folder;

    @Test
    void anOldPairThatNoLongerNullsBesideANewOneThatDoesLooksSwapped() throws IOException, InputException {
        List<SaidHint> hints = hints(
                MadeUpCapture.ordinary("before", 100),
                MadeUpCapture.ordinary("old", 100).harmonics(1, 0.2, 0.1),
                MadeUpCapture.ordinary("new", 100));
        assertThat(hints)
                .containsExactly(new SaidHint(
                        "states-swapped",
                        Optional.of("old"),
                        "New pair sounds as the unit did before, old pair does not: the two positions, or their "
                                + "captures, look swapped.",
                        "new pair meets every limit for an unchanged state at 1 clipped setting; old pair fails the "
                                + "null-depth limit"));
    }

    @Test
    void twoPairsThatBothNullLookNotSwapped() throws IOException, InputException {
        assertThat(hints(
                        MadeUpCapture.ordinary("before", 50),
                        MadeUpCapture.ordinary("old", 50),
                        MadeUpCapture.ordinary("new", 50)))
                .isEmpty();
    }

    /** An unclipped stage: 1 % instead of 10 %, 4 dB louder (20 lg 1.5849 = 4.000). */
    @Test
    void aCleanLouderOutputDoesNotClip() throws IOException, InputException {
        MadeUpCapture clean = MadeUpCapture.ordinary("old", 100)
                .with(WaveformQuantity.THD, 1, 0.01)
                .with(WaveformQuantity.RMS, 0.7 * 1.5849, 0.001)
                .harmonics(1, 0, 0.01);
        assertThat(hints(MadeUpCapture.ordinary("before", 100), clean))
                .contains(new SaidHint(
                        "not-clipping",
                        Optional.of("old"),
                        "Old pair: it does not clip where the unit did before. Look for clippers that are not connected, "
                                + "a switch that leaves them out, or devices that do not conduct.",
                        "at full gain the distortion is 1.0 % instead of 10 %, and the level is 4.0 dB higher"));
    }

    @Test
    void aStateThatTheSheetNamesAsWithoutClippersIsMeantNotToClip() throws IOException, InputException {
        MadeUpCapture clean = MadeUpCapture.ordinary("old", 100)
                .with(WaveformQuantity.THD, 1, 0.01)
                .with(WaveformQuantity.RMS, 0.7 * 1.5849, 0.001)
                .harmonics(1, 0, 0.01);
        String clipper =
                "clipper: {topology: shunt, source-resistance: 10 kΩ, unclipped: %s, pairs: {before: [D1, D2]}}\n";
        assertThat(new TestExamination(folder)
                        .with(clipper.formatted("old"), MadeUpCapture.ordinary("before", 100), clean)
                        .hints())
                .isEmpty();
        assertThat(new TestExamination(folder)
                        .with(clipper.formatted("new"), MadeUpCapture.ordinary("before", 100), clean)
                        .hints())
                .extracting(h -> h.code().code())
                .contains("not-clipping");
    }

    /** Clipped short pulses distort by more than their fundamental: such a figure is still written without an exponent. */
    @Test
    void aDistortionBeyondAHundredPercentIsWrittenOut() throws IOException, InputException {
        MadeUpCapture before = MadeUpCapture.ordinary("before", 100).with(WaveformQuantity.THD, 124, 0.01);
        MadeUpCapture clean = MadeUpCapture.ordinary("old", 100)
                .with(WaveformQuantity.THD, 0.126, 0.01)
                .with(WaveformQuantity.RMS, 1, 0.001)
                .harmonics(1, 0, 0.01);
        assertThat(hints(before, clean))
                .extracting(SaidHint::evidence)
                .anyMatch(e -> e.startsWith("at full gain the distortion is 0.13 % instead of 120 %,"));
    }

    @Test
    void aCleanQuieterOutputIsNoSuchFault() throws IOException, InputException {
        MadeUpCapture clean = MadeUpCapture.ordinary("new", 100)
                .with(WaveformQuantity.THD, 1, 0.01)
                .with(WaveformQuantity.RMS, 0.5, 0.001);
        assertThat(hints(MadeUpCapture.ordinary("before", 100), clean)).isEmpty();
    }

    @Test
    void anOutputWithoutTheTestToneIsNone() throws IOException, InputException {
        MadeUpCapture dead = MadeUpCapture.capture("old")
                .gain(50)
                .refused(WaveformQuantity.RMS, DoubtReason.NO_FUNDAMENTAL)
                .doubting(Doubt.of(Severity.REFUSAL, DoubtReason.NO_FUNDAMENTAL));
        assertThat(hints(MadeUpCapture.ordinary("before", 50), dead))
                .containsExactly(new SaidHint(
                        "no-output",
                        Optional.of("old"),
                        "Old pair: it gives no output where the unit did before. Look for a broken connection, a switch "
                                + "without contact, a missing supply, or a probe in the wrong place.",
                        "at 50\u00a0% gain the test tone does not stand out of the noise"));
    }

    /** That figures are refused for another reason does not say that there is no tone. */
    @Test
    void aCaptureThatWasRefusedForAnotherReasonIsNoMissingOutput() throws IOException, InputException {
        MadeUpCapture shortened = MadeUpCapture.capture("old")
                .gain(50)
                .refused(WaveformQuantity.RMS, FigureReason.CAPTURE_NOT_MEASURED)
                .doubting(Doubt.of(Severity.REFUSAL, DoubtReason.TOO_FEW_PERIODS, Argument.count(1)));
        assertThat(hints(MadeUpCapture.ordinary("before", 50), shortened)).isEmpty();
    }

    /** 20 lg(0.7 / 0.0035) = 46 dB. */
    @Test
    void anOutputOf46DecibelsLessIsNone() throws IOException, InputException {
        MadeUpCapture faint = MadeUpCapture.ordinary("old", 50).with(WaveformQuantity.RMS, 0.0035, 1e-5);
        assertThat(hints(MadeUpCapture.ordinary("before", 50), faint))
                .extracting(SaidHint::code, SaidHint::evidence)
                .contains(tuple("no-output", "at 50\u00a0% gain the level is 46 dB lower"));
    }

    /** A wave with a second harmonic, and the same with every sign turned. */
    @Test
    void anAsymmetricWaveUpsideDownIsInverted() throws IOException, InputException {
        assertThat(hints(
                        MadeUpCapture.ordinary("before", 50).harmonics(1, 0.3, 0.1),
                        MadeUpCapture.ordinary("old", 50).harmonics(-1, -0.3, -0.1)))
                .extracting(SaidHint::code, SaidHint::text)
                .containsExactly(tuple(
                        "inverted",
                        "Old pair: its wave is upside down. Look for a reversed pair, or a stage that inverts."));
    }

    @Test
    void aChangedPairTheOtherWayRoundIsMeantToBe() throws IOException, InputException {
        assertThat(hints(
                        MadeUpCapture.ordinary("before", 50).harmonics(1, 0.3, 0.1),
                        MadeUpCapture.ordinary("new", 50).harmonics(-1, -0.3, -0.1)))
                .isEmpty();
    }

    @Test
    void aPhaseThatMovedByHalfATurnIsInverted() throws IOException, InputException {
        assertThat(hints(phase("before", 3), phase("new", -178)))
                .containsExactly(new SaidHint(
                        "inverted",
                        Optional.of("new"),
                        "New pair: it turns the wave over, which the unit did not before. Look for a stage wired the "
                                + "other way round, or probes exchanged.",
                        "at 50\u00a0% gain the phase moved by 179°"));
    }

    /** Level and distortion in dB are straight lines over the gain control here; 5 % more moves them by 0.5 dB and 1 dB. */
    @Test
    void changesThatFivePercentOfTheKnobWouldMakeAreAKnobOffset() throws IOException, InputException {
        assertThat(hints(alongGain(0.0))).as("the same settings").isEmpty();
        assertThat(hints(alongGain(5.0)))
                .containsExactly(new SaidHint(
                        "knob-offset",
                        Optional.of("old"),
                        "Old pair: all its changes are what the gain control would make if it stood elsewhere. The knob "
                                + "may sit differently on its shaft, or was set by another mark.",
                        "turning it by +5.0 % of its rotation leaves no change of level or distortion above 0.00 dB"));
    }

    @Test
    void aChangeOfDistortionAloneIsNoKnobOffset() throws IOException, InputException {
        MadeUpCapture[] captures = alongGain(0.0);
        for (int i = captures.length / 2; i < captures.length; i++) {
            captures[i].with(WaveformQuantity.THD, 15, 0.01);
        }
        assertThat(hints(captures)).isEmpty();
    }

    private static MadeUpCapture[] alongGain(double offset) {
        return Stream.of("before", "old")
                .flatMap(state -> DoubleStream.of(0, 25, 50, 75, 100).mapToObj(gain -> {
                    boolean end = gain == 0 || gain == 100;
                    double at = gain + (state.equals("old") && !end ? offset : 0);
                    return MadeUpCapture.ordinary(state, gain)
                            .with(WaveformQuantity.RMS, 0.1 * Math.pow(10, at / 200), 1e-5)
                            .with(WaveformQuantity.THD, 2 * Math.pow(10, at / 100), 1e-3);
                }))
                .toArray(MadeUpCapture[]::new);
    }

    private static MadeUpCapture phase(String state, double degrees) {
        return MadeUpCapture.ordinary(state, 50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 1e-5)
                .with(WaveformQuantity.GAIN, 20, 0.01)
                .with(WaveformQuantity.PHASE, degrees, 0.1);
    }

    private List<SaidHint> hints(MadeUpCapture... captures) throws IOException, InputException {
        return new TestExamination(folder)
                .of(captures).hints().stream().map(SaidHint::of).toList();
    }
}
