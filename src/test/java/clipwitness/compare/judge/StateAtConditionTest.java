package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One state at one setting: all of its captures count, a refused one only where there is no other. */
class StateAtConditionTest {
    private static final Doubt REFUSAL = Doubt.of(Severity.REFUSAL, DoubtReason.NO_FUNDAMENTAL);
    private static final Doubt SOUND = Doubt.of(Severity.NOTE, DoubtReason.UNIT_ASSUMED_SOUND, Argument.name("CH2"));

    private static MadeUpCapture capture() {
        return MadeUpCapture.ordinary("a", 50);
    }

    private static StateAtCondition of(MadeUpCapture... captures) {
        List<CaptureResult> done = Stream.of(captures).map(MadeUpCapture::done).toList();
        return new StateAtCondition("a", "State a", done.get(0).row().condition(), done);
    }

    private static StateAtCondition thd(double percent) {
        return of(capture().with(WaveformQuantity.THD, percent, 0.01));
    }

    @Test
    void aWaveClipsBeyondThreePercentAndIsJudgedFromOne() {
        assertThat(thd(3).isClipped()).isFalse();
        assertThat(thd(3.01).isClipped()).isTrue();
        assertThat(thd(1).hasThdToJudge()).isTrue();
        assertThat(thd(0.99).hasThdToJudge()).isFalse();
        StateAtCondition unknown = of(capture().refused(WaveformQuantity.THD, FigureReason.CAPTURE_NOT_MEASURED));
        assertThat(unknown.isClipped()).isFalse();
        assertThat(unknown.hasThdToJudge()).isTrue();
    }

    @Test
    void theFirstCaptureThatWasNotRefusedSpeaksForTheSetting() {
        MadeUpCapture refused = capture().with(WaveformQuantity.RMS, 1, 0.1).doubting(REFUSAL);
        MadeUpCapture good = capture().run(2).with(WaveformQuantity.RMS, 2, 0.1);
        assertThat(rms(of(refused, good).first().get(WaveformQuantity.RMS))).isEqualTo(2);
        assertThat(rms(of(good, refused).first().get(WaveformQuantity.RMS))).isEqualTo(2);
        assertThat(rms(of(refused).first().get(WaveformQuantity.RMS))).isEqualTo(1);
    }

    private static double rms(Measured figure) {
        return figure.value().orElseThrow();
    }

    @Test
    void oneCaptureWithoutVoltsLeavesTheSettingWithoutThem() {
        assertThat(of(capture()).hasVolts()).isTrue();
        assertThat(of(capture(), capture().run(2).doubting(SOUND)).hasVolts()).isFalse();
    }

    /** Two captures of the first run and one of the third: two runs; the mean of 1, 2 and 6 is 3. */
    @Test
    void runsAreCountedOnceAndAllCapturesAverage() {
        StateAtCondition three = of(
                capture().with(WaveformQuantity.RMS, 1, 0.1),
                capture().with(WaveformQuantity.RMS, 2, 0.1),
                capture().run(3).with(WaveformQuantity.RMS, 6, 0.1));
        assertThat(three.runs()).isEqualTo(2);
        assertThat(rms(three.figure(WaveformQuantity.RMS))).isCloseTo(3, within(1e-12));
        assertThat(three.figure(ItemValue.LEVEL).value().orElseThrow())
                .isCloseTo(20 * Math.log10(12) / 3, within(1e-9));
        assertThat(rms(three.only(three.replicates().get(2)).figure(WaveformQuantity.RMS)))
                .isEqualTo(6);
        assertThat(three.name().toString()).contains("State a");
    }

    @Test
    void aHarmonicThatNoCaptureListsIsRefused() {
        StateAtCondition listed = of(capture().third(-12), capture().run(2));
        assertThat(listed.harmonic(3).value().orElseThrow()).isEqualTo(-12);
        assertThat(listed.harmonic(5).reason().orElseThrow().is(FigureReason.HARMONIC_NOT_MEASURED))
                .isTrue();
    }

    @Test
    void settingsShareAnExportWhereOneOfTheirCapturesIsOfTheSameBytes() {
        StateAtCondition one = of(capture().sha256("x"), capture().run(2).sha256("y"));
        assertThat(one.sharesExport(of(capture().sha256("z"), capture().sha256("y"))))
                .isTrue();
        assertThat(one.sharesExport(of(capture().sha256("z")))).isFalse();
    }

    @Test
    void aSettingWithoutACaptureIsNone() {
        StateAtCondition one = of(capture());
        assertThatThrownBy(() -> new StateAtCondition("a", "a", one.condition(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static StateAtCondition warm(String state, double celsius) {
        return MadeUpCapture.ordinary(state, 50).temperature(celsius).setting();
    }

    private static StateAtCondition clipped(double up, double down, WaveformQuantity upper, WaveformQuantity lower) {
        return MadeUpCapture.ordinary("a", 50)
                .temperature(20)
                .with(upper, up, 0.001)
                .with(lower, down, 0.001)
                .setting();
    }

    /** 2 mV/K and 10 K are 20 mV: of a mean clip level of 0.5 V 8.686 dB times 0.04, of peaks of 1 V half of it. */
    @Test
    void whereNoClipLevelIsKnownThePeaksTellWhatTheTemperatureMoves() {
        TemperatureChange change = new TemperatureChange(OptionalDouble.empty(), 1);
        assertThat(change.ofLevel(
                                clipped(0.6, 0.4, WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN), warm("b", 30))
                        .orElseThrow()
                        .standardUncertainty())
                .isCloseTo(8.6859 * 0.04, within(1e-4));
        assertThat(change.ofLevel(
                                clipped(1.2, 0.8, WaveformQuantity.PEAK_UP, WaveformQuantity.PEAK_DOWN), warm("b", 10))
                        .orElseThrow()
                        .standardUncertainty())
                .isCloseTo(8.6859 * 0.02, within(1e-4));
        assertThat(change.ofLevel(warm("a", 20), warm("b", 30))).isEmpty();
        assertThat(change.ofLevel(clipped(0, 0, WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN), warm("b", 30)))
                .isEmpty();
        StateAtCondition clean = MadeUpCapture.ordinary("a", 50)
                .temperature(20)
                .with(WaveformQuantity.THD, 2, 0.1)
                .with(WaveformQuantity.PEAK_UP, 1, 0.1)
                .with(WaveformQuantity.PEAK_DOWN, 1, 0.1)
                .setting();
        assertThat(change.ofLevel(clean, warm("b", 30))).isEmpty();
    }

    /** More than 3 K raise a doubt; a temperature that nobody states is none. */
    @Test
    void temperaturesThreeKelvinApartAreNoDoubt() {
        TemperatureChange change = new TemperatureChange(OptionalDouble.empty(), 1);
        assertThat(change.doubt(warm("a", 20), warm("b", 23))).isEmpty();
        assertThat(change.doubt(warm("a", 20), warm("b", 23.25))).isPresent();
        assertThat(change.doubt(warm("a", 23.25), warm("b", 20))).isPresent();
        StateAtCondition unknown = MadeUpCapture.ordinary("b", 50).setting();
        assertThat(change.doubt(warm("a", 20), unknown)).isEmpty();
        assertThat(new TemperatureChange(OptionalDouble.of(30), 1).doubt(warm("a", 20), unknown))
                .isPresent();
    }

    @Test
    void sharesOfNothingAreNothing() {
        assertThat(Change.shares(List.of(new Contribution(Source.KNOB, 0)), List.of()))
                .isEqualTo(Map.of(Source.KNOB, 0.0));
    }
}
