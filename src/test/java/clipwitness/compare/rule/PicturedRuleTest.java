package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.Remainders;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What pictures say beside themselves: changes at the condition that they show, the smallest and the largest remainder. */
class PicturedRuleTest {
    @TempDir
    private Path folder;

    private static Condition condition(double gain) {
        return MadeUpCapture.ordinary("before", gain).condition();
    }

    /** The second harmonic of the changed state is another one at each setting: the more, the larger the remainder. */
    private JobResults results() throws IOException, InputException {
        return new TestExamination(folder)
                .of(
                        MadeUpCapture.ordinary("before", 25),
                        MadeUpCapture.ordinary("before", 50),
                        MadeUpCapture.ordinary("before", 75),
                        second(25, 0.1),
                        second(50, 0.3),
                        second(75, 0.02));
    }

    private static MadeUpCapture second(double gain, double share) {
        return MadeUpCapture.ordinary("new", gain)
                .with(WaveformQuantity.RMS, 1.4, 0.001)
                .with(WaveformQuantity.THD, 5, 0.01)
                .harmonics(1, share, 0.1);
    }

    @Test
    void levelAndDistortionOfTheShownConditionAreTold() throws IOException, InputException {
        List<Pictured> changes = PicturedRule.changes(results(), condition(50));
        assertThat(changes).hasSize(1);
        assertThat(changes.get(0).subject().condition()).isEqualTo(condition(50));
        assertThat(changes.get(0).subject().later()).isEqualTo("new");
        assertThat(changes.get(0).tellings())
                .extracting(t -> t.item().quantity())
                .containsExactly(ItemQuantity.LEVEL, ItemQuantity.THD);
        assertThat(changes.get(0).tellings()).extracting(t -> t.kind().code()).containsExactly("more", "less");
        assertThat(PicturedRule.changes(results(), condition(60))).isEmpty();
    }

    @Test
    void theDeepestAndTheShallowestOfTheShownConditionsAreTold() throws IOException, InputException {
        List<Remainders> all = PicturedRule.remainders(results(), List.of(condition(25), condition(50), condition(75)));
        assertThat(all).hasSize(1);
        assertThat(gain(all.get(0).deepest())).isEqualTo(75);
        assertThat(gain(all.get(0).shallowest())).isEqualTo(50);
        assertThat(all.get(0).subject().condition()).isEqualTo(condition(50));
        Remainders two = PicturedRule.remainders(results(), List.of(condition(25), condition(75)))
                .get(0);
        assertThat(gain(two.shallowest())).isEqualTo(25);
        assertThat(PicturedRule.remainders(results(), List.of(condition(60)))).isEmpty();
        assertThat(PicturedRule.remainders(results(), List.of(condition(25)))
                        .get(0)
                        .word())
                .isEqualTo("one");
    }

    private static double gain(Item item) {
        return item.condition().gainPercent().orElseThrow();
    }
}
