package clipwitness.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.report.ExampleJob;
import java.util.List;
import org.junit.jupiter.api.Test;

class MainConditionTest {
    @Test
    void theSettingNearestHalfWayThatClipsSpeaksForAll() {
        assertThat(MainCondition.of(ExampleJob.good().results())).contains(ExampleJob.condition(50));
    }

    @Test
    void aSettingThatFewerStatesHaveDoesNot() {
        JobResults good = ExampleJob.good().results();
        JobResults without = new JobResults(
                good.job(),
                good.inputsDigest(),
                good.captures().stream()
                        .filter(c -> c.row().condition().gainPercent().orElseThrow() != 50
                                || !c.row().state().orElseThrow().equals("new"))
                        .toList(),
                good.series(),
                good.comparisons(),
                List.of());
        assertThat(MainCondition.of(without)).contains(ExampleJob.condition(25));
    }

    @Test
    void withoutWavesThereIsNone() {
        JobResults good = ExampleJob.good().results();
        assertThat(MainCondition.of(
                        new JobResults(good.job(), good.inputsDigest(), List.of(), List.of(), List.of(), List.of())))
                .isEmpty();
    }
}
