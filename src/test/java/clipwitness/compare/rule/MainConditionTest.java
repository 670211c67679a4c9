package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.figure.FigureCatalogue;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class MainConditionTest {
    private static final JobResults GOOD = ExampleJob.good().results();

    /** The picture is drawn at the condition that the table and the text speak of. */
    private static void isMain(JobResults results, int gain) {
        assertThat(MainCondition.of(results)).contains(ExampleJob.condition(gain));
        assertThat(FigureCatalogue.of(results).all().get("cycles-main").title())
                .endsWith(" at " + gain + "\u00a0% gain");
    }

    private static JobResults with(List<CaptureResult> captures) {
        return new JobResults(GOOD.job(), GOOD.inputsDigest(), captures, GOOD.series(), GOOD.comparisons(), List.of());
    }

    /** The good example with other waves of some states at half gain. */
    private static JobResults atHalfGain(UnaryOperator<WaveformResult> other, String... states) {
        return with(GOOD.captures().stream()
                .map(c -> List.of(states).contains(c.row().state().orElseThrow())
                                && c.row().condition().equals(ExampleJob.condition(50))
                        ? c.withWaveform(other.apply(c.waveform().orElseThrow()))
                        : c)
                .toList());
    }

    private static WaveformResult refused(WaveformResult wave) {
        return new WaveformResult(
                wave.values(),
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                wave.range(),
                List.of(Doubt.of(Severity.REFUSAL, DoubtReason.NO_FUNDAMENTAL)));
    }

    /** Noise hides the distortion: it lies somewhere below the value and its uncertainty. */
    private static WaveformResult buried(WaveformResult wave) {
        return wave.withValues((quantity, value) -> quantity == WaveformQuantity.THD
                ? value.asValue().<Measured>map(Measured.Value::asUpperBound).orElse(value)
                : value);
    }

    @Test
    void theSettingNearestHalfWayThatClipsSpeaksForAll() {
        isMain(GOOD, 50);
    }

    @Test
    void aSettingThatFewerStatesHaveDoesNot() {
        isMain(
                with(GOOD.captures().stream()
                        .filter(c -> !c.row().condition().equals(ExampleJob.condition(50))
                                || !c.row().state().orElseThrow().equals("new"))
                        .toList()),
                25);
    }

    /** A capture that was refused cannot be drawn, and counts as none. */
    @Test
    void aSettingWhereOneStateWasRefusedDoesNot() {
        isMain(atHalfGain(MainConditionTest::refused, "new"), 25);
    }

    /** That a wave may distort by as much as its bound does not say that it clips. */
    @Test
    void aSettingWhereTheDistortionIsABoundAloneDoesNot() {
        isMain(atHalfGain(MainConditionTest::buried, "received", "original", "new"), 25);
    }

    /** Two states have 0 %, two 25 %, all three the settings from 50 % up. */
    @Test
    void whereEveryWaveWasRefusedTheFirstSettingThatMostStatesHaveSpeaks() {
        List<CaptureResult> refused = GOOD.captures().stream()
                .filter(c -> !is(c, "original", 0) && !is(c, "received", 25))
                .map(c -> c.withWaveform(refused(c.waveform().orElseThrow())))
                .toList();
        assertThat(MainCondition.of(with(refused))).contains(ExampleJob.condition(50));
    }

    private static boolean is(CaptureResult capture, String state, double gain) {
        return capture.row().state().orElseThrow().equals(state)
                && capture.row().condition().equals(ExampleJob.condition(gain));
    }

    @Test
    void withoutWavesThereIsNone() {
        assertThat(MainCondition.of(
                        new JobResults(GOOD.job(), GOOD.inputsDigest(), List.of(), List.of(), List.of(), List.of())))
                .isEmpty();
    }
}
