package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.compare.result.Series;
import clipwitness.fixture.ExampleDevices;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.report.model.Table;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SeriesBuilderTest {
    /** 0.4 V out at 50 mV, 0.6 V at 100 mV: 3.52 dB for 6.02 dB, a slope of 0.585. */
    @Test
    void aTableOfLevelStepsHasTheOutputFirstAndTheSlopeSecond() {
        LevelSeries steps = new LevelSeries(
                OptionalDouble.of(50),
                List.of(
                        new LevelStep(
                                0.05,
                                Measured.withNoise(0.4, Unit.VOLT, 1e-4),
                                Measured.refused(Unit.ONE, FigureReason.LOWEST_STEP)),
                        new LevelStep(
                                0.1,
                                Measured.withNoise(0.6, Unit.VOLT, 1e-4),
                                Measured.withNoise(0.585, Unit.ONE, 1e-4))),
                Measured.withNoise(0.08, Unit.VOLT, 1e-3));
        Table table = last(steps);
        assertThat(table.rows().get(1).cells())
                .extracting(c -> ExampleDevices.plain(c.text()))
                .containsExactly("600.00", "0.58500");
        assertThat(ExampleDevices.plain(table.columns().get(0))).contains("mV");
        assertThat(table.rows().get(2).cells().get(0).text()).contains("80");
    }

    private static Table last(LevelSeries steps) {
        JobResults good = ExampleJob.good().results();
        Series first = good.series().get(0);
        Series series = new Series(first.state(), first.condition(), first.points(), first.onsetGain(), List.of(steps));
        List<Table> tables = new SeriesBuilder(ExampleDevices.wording())
                .of(new JobResults(
                        good.job(), good.inputsDigest(), good.captures(), List.of(series), List.of(), List.of()));
        return tables.get(tables.size() - 1);
    }
}
