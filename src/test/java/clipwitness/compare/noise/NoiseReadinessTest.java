package clipwitness.compare.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ReadyItem;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.TestExamination;
import clipwitness.job.Job;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The least increase of noise and hum that shows: as large as the expanded uncertainty of a change between two such records. */
class NoiseReadinessTest {
    @TempDir
    private Path folder;

    private List<ReadyItem> ready(String sections, NoiseResult noise) throws IOException, InputException {
        Job job = new TestExamination(folder).job(sections);
        CaptureResult capture = MadeUpQuiet.of("before").noise(noise);
        Catalogue waves = Catalogue.of(List.of(capture), job.sheet()::label);
        return new NoiseReadiness(
                        job.sheet().limits(),
                        waves,
                        new Repeatability(waves, job.sheet().bench()))
                .of(new NoiseAtCondition("before", "As it came", Condition.NONE, List.of(capture)));
    }

    private static double detectable(ReadyItem item) {
        return item.smallestChange().value().orElseThrow();
    }

    /** White hiss over half a second: the figure over the wider band is known better, so the weighted one decides. */
    @Test
    void theFigureThatTellsLessDecides() throws IOException, InputException {
        ReadyItem noise = ready("", MadeUpQuiet.hiss(1)).get(0);
        double rmsAlone = 2 * Math.sqrt(2) * 8.685889638 / (2 * Math.sqrt(3580 * 0.5));
        assertThat(noise.quantity()).isEqualTo(ItemQuantity.NOISE);
        assertThat(noise.smallestChange().unit()).isEqualTo(Unit.DECIBEL);
        assertThat(detectable(noise)).isBetween(rmsAlone, 2 * rmsAlone);
        assertThat(noise.limit()).isEqualTo(2);
        assertThat(noise.sufficient()).isTrue();
        assertThat(noise.remedy()).isEmpty();
    }

    @Test
    void aLimitBelowWhatShowsAsksForMore() throws IOException, InputException {
        ReadyItem noise =
                ready("limits: {noise: 0.1 dB}\n", MadeUpQuiet.hiss(1)).get(0);
        assertThat(noise.limit()).isEqualTo(0.1);
        assertThat(noise.sufficient()).isFalse();
        assertThat(noise.remedy()).isPresent();
    }

    @Test
    void ofHumNothingIsSaidWhereNoLineStandsOut() throws IOException, InputException {
        assertThat(ready("", MadeUpQuiet.hiss(1)))
                .extracting(ReadyItem::quantity)
                .containsExactly(ItemQuantity.NOISE);
    }

    /** A line of 3 mV with 1 uV standard uncertainty: U = 2 * sqrt 2 * 8.686 / 3000 dB. */
    @Test
    void humThatIsKnownWellShowsLeast() throws IOException, InputException {
        List<ReadyItem> items = ready("", MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, 3e-3)));
        assertThat(items).hasSize(2);
        assertThat(items.get(1).quantity()).isEqualTo(ItemQuantity.HUM);
        assertThat(detectable(items.get(1))).isCloseTo(8.1891e-3, within(1e-5));
        assertThat(items.get(1).sufficient()).isTrue();
        assertThat(items.get(1).limit()).isEqualTo(3);
    }

    @Test
    void aRecordThatIsTooShortIsNotEnoughAndIsToBeCapturedAgain() throws IOException, InputException {
        List<ReadyItem> items = ready("", MadeUpQuiet.tooShort());
        assertThat(items).hasSize(1);
        assertThat(items.get(0).sufficient()).isFalse();
        assertThat(items.get(0).smallestChange().reason()).isPresent();
        assertThat(items.get(0).remedy()).isPresent();
    }
}
