package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Waves that are drawn side by side: grouped by their condition without the gain control, a setting chosen to speak for all. */
class WaveGroupsTest {
    private static final CycleTrace CYCLE = new CycleTrace(Samples.of(new double[16]), 0, 1e-3);

    @TempDir
    private Path folder;

    private static MadeUpCapture wave(String state, double gain, double thd) {
        return MadeUpCapture.ordinary(state, gain)
                .with(WaveformQuantity.THD, thd, 0.01)
                .cycle(CYCLE);
    }

    private List<WaveGroup> groups(MadeUpCapture... captures) throws IOException, InputException {
        JobResults results = new TestExamination(folder).of(captures);
        return WaveGroups.of(results);
    }

    private static List<Double> gains(WaveGroup group) {
        return group.settings().stream().map(s -> s.gainPercent().orElse(-1)).toList();
    }

    @Test
    void settingsAreSortedByGainAndHoldTheStatesInTheOrderOfTheSheet() throws IOException, InputException {
        List<WaveGroup> groups = groups(
                wave("new", 75, 10),
                wave("before", 75, 10),
                wave("before", 25, 10),
                wave("old", 75, 10),
                wave("new", 0, 1));
        assertThat(groups).hasSize(1);
        WaveGroup group = groups.get(0);
        assertThat(gains(group)).containsExactly(0.0, 25.0, 75.0);
        assertThat(group.settings().get(2).waves().keySet()).containsExactly("before", "old", "new");
        assertThat(group.waves()).isEqualTo(5);
        assertThat(group.states()).containsExactlyInAnyOrder("before", "old", "new");
    }

    @Test
    void aCaptureWithoutACycleIsNoWave() throws IOException, InputException {
        assertThat(groups(MadeUpCapture.ordinary("before", 50), wave("before", 75, 10)))
                .flatExtracting(WaveGroupsTest::gains)
                .containsExactly(75.0);
        assertThat(groups(MadeUpCapture.ordinary("before", 50))).isEmpty();
    }

    /** The group with most waves leads; a single setting at another level of the same test is a step of its level series. */
    @Test
    void theLargestGroupLeadsAndLevelStepsAreNoGroups() throws IOException, InputException {
        List<WaveGroup> groups = groups(
                wave("before", 50, 10).level(0.2),
                wave("before", 25, 10).level(0.4),
                wave("before", 50, 10).level(0.4),
                wave("before", 25, 10),
                wave("before", 50, 10),
                wave("before", 75, 10));
        assertThat(groups).extracting(g -> g.condition().level().orElseThrow()).containsExactly(0.1, 0.4);
        assertThat(groups.get(0).conditionOf(groups.get(0).settings().get(1)))
                .isEqualTo(wave("before", 50, 10).condition());
    }

    @Test
    void amongGroupsOfOneSizeTheFirstLeads() throws IOException, InputException {
        assertThat(groups(
                        wave("before", 25, 10).level(0.4),
                        wave("before", 50, 10).level(0.4),
                        wave("before", 25, 10),
                        wave("before", 50, 10)))
                .extracting(g -> g.condition().level().orElseThrow())
                .containsExactly(0.4, 0.1);
    }

    private static double chosen(WaveGroup group) {
        return group.chosen().gainPercent().orElseThrow();
    }

    /** From 3 % of distortion a setting clips; the one nearest half way speaks, of those that most states have. */
    @Test
    void theClippedSettingNearestHalfWaySpeaks() throws IOException, InputException {
        WaveGroup group = groups(wave("before", 30, 2.9), wave("before", 60, 3), wave("before", 80, 20))
                .get(0);
        assertThat(chosen(group)).isEqualTo(60);
        assertThat(group.further().gainPercent()).hasValue(80);
        WaveGroup fuller = groups(
                        wave("before", 50, 10), wave("before", 90, 10), wave("new", 90, 10), wave("before", 95, 10))
                .get(0);
        assertThat(chosen(fuller)).isEqualTo(90);
        assertThat(fuller.further().gainPercent()).hasValue(95);
    }

    @Test
    void whereNothingClipsTheMostDistortedSettingSpeaks() throws IOException, InputException {
        WaveGroup group = groups(wave("before", 50, 1), wave("before", 75, 1.5), wave("before", 100, 1.2))
                .get(0);
        assertThat(chosen(group)).isEqualTo(75);
        WaveGroup alike = groups(wave("before", 0, 1), wave("before", 60, 1), wave("before", 100, 1))
                .get(0);
        assertThat(chosen(alike)).isEqualTo(60);
    }

    @Test
    void theHighestSettingBesideTheMainOneIsFurther() throws IOException, InputException {
        WaveGroup group = groups(wave("before", 0, 1), wave("before", 25, 1), wave("before", 50, 10))
                .get(0);
        assertThat(chosen(group)).isEqualTo(50);
        assertThat(group.further().gainPercent()).hasValue(25);
    }

    /** A bound says only that the distortion is no more. */
    @Test
    void aBoundOfTheDistortionDoesNotCount() throws IOException, InputException {
        MadeUpCapture hidden = MadeUpCapture.ordinary("before", 50)
                .with(
                        WaveformQuantity.THD,
                        Measured.withNoise(9, Unit.PERCENT, 1).asUpperBound())
                .cycle(CYCLE);
        WaveSetting setting = groups(hidden, wave("new", 50, 4), wave("old", 50, 2))
                .get(0)
                .settings()
                .get(0);
        assertThat(setting.largest(WaveformQuantity.THD)).isEqualTo(4);
        assertThat(setting.value("before", WaveformQuantity.THD)).isPresent();
        assertThat(setting.value("nobody", WaveformQuantity.THD)).isEmpty();
    }

    @Test
    void wavesThatFulfilAConditionAreKeptAndSettingsWithoutOneGo() throws IOException, InputException {
        WaveGroup group = groups(wave("before", 25, 2), wave("before", 50, 8), wave("new", 50, 2))
                .get(0);
        WaveGroup kept = group.where(w -> w.get(WaveformQuantity.THD).value().orElseThrow() > 5);
        assertThat(gains(kept)).containsExactly(50.0);
        assertThat(kept.settings().get(0).waves().keySet()).containsExactly("before");
        assertThat(kept.condition()).isEqualTo(group.condition());
    }

    @Test
    void aGainThatIsNotStatedComesFirstAndIsFarFromHalfWay() throws IOException, InputException {
        MadeUpCapture open = MadeUpCapture.capture("before")
                .with(WaveformQuantity.THD, 10, 0.01)
                .cycle(CYCLE);
        WaveGroup group = groups(wave("before", 90, 10), open).get(0);
        assertThat(gains(group)).containsExactly(-1.0, 90.0);
        assertThat(chosen(group)).isEqualTo(90);
        Condition condition = group.conditionOf(new WaveSetting(OptionalDouble.of(10), Map.of()));
        assertThat(condition.gainPercent()).hasValue(10);
        assertThat(condition.frequency()).hasValue(1000);
    }
}
