package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Mark;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The marks of the first page. */
class MarksTest {
    @TempDir
    private Path folder;

    @Test
    void aSoundThatIsMeantToChangeDoesNotPassBecauseItsPolarityDoes() throws IOException, InputException {
        JobResults results = new TestExamination(folder).of(withInput("before", 0.5), withInput("new", 0.9));
        assertThat(results.comparisons().get(1).items())
                .anyMatch(i -> i.quantity() == ItemQuantity.POLARITY && i.decision() == Decision.PASS);
        Mark sound = Marks.of(results.comparisons().get(1)).get(0);
        assertThat(sound.part()).isEqualTo(Mark.Part.SOUND);
        assertThat(sound.decision()).contains(Decision.DESCRIBED);
        assertThat(sound.telling().orElseThrow().quantity()).isEqualTo(ItemQuantity.LEVEL);
    }

    private static MadeUpCapture withInput(String state, double rms) {
        return MadeUpCapture.ordinary(state, 50)
                .with(WaveformQuantity.RMS, rms, 0.001)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 0.0001)
                .with(WaveformQuantity.GAIN, 10, 0.01)
                .with(WaveformQuantity.PHASE, 0, 0.1);
    }

    /** A comparison with a state that was to stay is marked before one with a state that was to change; a described one is not marked. */
    @Test
    void theComparisonThatWasToStayTheSameIsMarked() {
        JobResults good = ExampleJob.good().results();
        Comparison unchanged = good.comparisons().get(0);
        Comparison changed = good.comparisons().get(1);
        Comparison described = good.comparisons().get(2);
        assertThat(Marks.marked(with(described, changed, unchanged))).contains(unchanged);
        assertThat(Marks.marked(with(described, changed))).contains(changed);
        assertThat(Marks.marked(with(described))).isEmpty();
    }

    private static JobResults with(Comparison... comparisons) {
        JobResults good = ExampleJob.good().results();
        return new JobResults(
                good.job(), good.inputsDigest(), good.captures(), good.series(), List.of(comparisons), List.of());
    }

    private static Item level(double gain, double change, double expanded, double limit, Decision decision) {
        return new Item(
                ItemQuantity.LEVEL,
                ExampleJob.condition(gain),
                ExampleJob.value(change, Unit.DECIBEL, expanded),
                OptionalDouble.of(limit),
                decision,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static Mark sound(Item... items) {
        return Marks.of(new Comparison(
                        "received",
                        "original",
                        Intent.UNCHANGED,
                        Decision.PASS,
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(items),
                        List.of(),
                        List.of()))
                .get(0);
    }

    /** 0.3 dB and its U of 0.1 dB are 80 % of 0.5 dB, 0.2 dB and 0.25 dB are 90 %; of a limit of 1 dB they are 45 %. */
    @Test
    void theLevelThatUsesMostOfItsLimitIsTold() {
        Item nearer = level(25, -0.3, 0.1, 0.5, Decision.PASS);
        Item wider = level(50, 0.2, 0.25, 0.5, Decision.PASS);
        assertThat(sound(nearer, wider).telling()).contains(wider);
        assertThat(sound(wider, nearer).telling()).contains(wider);
        assertThat(sound(nearer, level(50, 0.2, 0.25, 1, Decision.PASS)).telling())
                .contains(nearer);
    }

    @Test
    void theGravestDecisionIsTheMark() {
        Item pass = level(25, 0.3, 0.1, 0.5, Decision.PASS);
        Item open = level(50, 0.5, 0.1, 0.5, Decision.UNDECIDED);
        Item fail = level(75, 0.9, 0.1, 0.5, Decision.FAIL);
        Item worse = level(100, -1.2, 0.1, 0.5, Decision.FAIL);
        assertThat(sound(pass, open).decision()).contains(Decision.UNDECIDED);
        assertThat(sound(pass, open).telling()).contains(open);
        assertThat(sound(pass, fail, worse, open).decision()).contains(Decision.FAIL);
        assertThat(sound(pass, fail, worse, open).telling()).contains(worse);
        assertThat(sound().decision()).isEmpty();
    }
}
