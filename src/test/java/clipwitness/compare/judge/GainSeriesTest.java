package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.job.Bench;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Three settings of the gain control at 0.1 V, the sheet's level, and two more levels at half gain; the table is not in order. */
class GainSeriesTest {
    private static final List<Series> ALL = series(OptionalDouble.of(0.1));

    private static List<Series> series(OptionalDouble sheet) {
        Catalogue catalogue = Catalogue.of(
                Stream.of(at(100, 0.1, 30), at(0, 0.1, 0.5), at(50, 0.1, 5), at(50, 0.05, 2), at(50, 0.2, 9))
                        .map(MadeUpCapture::done)
                        .toList(),
                s -> s);
        OptionalDouble none = OptionalDouble.empty();
        Bench bench = new Bench(none, none, none, none, List.of(), 0.03, 0.01, 0.005);
        return new GainSeries(catalogue, new Repeatability(catalogue, bench), sheet).of(List.of("before", "missing"));
    }

    /** A straight amplifier of ten times. */
    private static MadeUpCapture at(double gain, double level, double thd) {
        return MadeUpCapture.ordinary("before", gain)
                .level(level)
                .with(WaveformQuantity.THD, thd, 0.001)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, level, 1e-9)
                .with(WaveformQuantity.FUNDAMENTAL, 10 * level, 1e-6);
    }

    @Test
    void aSeriesRisesAlongTheGainControlAtEachLevel() {
        assertThat(ALL).extracting(s -> s.condition().level().orElseThrow()).containsExactly(0.1, 0.05, 0.2);
        assertThat(ALL.get(0).points()).extracting(SeriesPoint::gainPercent).containsExactly(0.0, 50.0, 100.0);
        assertThat(ALL.get(0).condition().gainPercent()).isEmpty();
        assertThat(ALL.get(0).points().get(1).values().get(WaveformQuantity.THD).value())
                .hasValue(5);
        assertThat(ALL.get(1).points()).hasSize(1);
    }

    /** 0.5, 5 and 30 % at 0, 50 and 100 %: 1 and 3 % lie below half way, 10 % beyond. */
    @Test
    void theSettingsOfOneThreeAndTenPercentAreLookedFor() {
        List<OnsetGain> onsets = ALL.get(0).onsetGain();
        assertThat(onsets).extracting(OnsetGain::thdPercent).containsExactly(1.0, 3.0, 10.0);
        assertThat(onsets.get(0).gainPercent().value().orElseThrow()).isBetween(0.0, 30.0);
        assertThat(onsets.get(1).gainPercent().value().orElseThrow()).isBetween(30.0, 50.0);
        assertThat(onsets.get(2).gainPercent().value().orElseThrow()).isBetween(50.0, 80.0);
    }

    @Test
    void levelStepsBelongToTheSeriesAtTheSheetsLevel() {
        assertThat(ALL.get(0).levelSeries()).singleElement().satisfies(l -> {
            assertThat(l.gainPercent()).hasValue(50);
            assertThat(l.steps()).hasSize(3);
            assertThat(l.steps().get(2).slope().value().orElseThrow()).isCloseTo(1, within(1e-9));
        });
        assertThat(ALL.get(1).levelSeries()).isEmpty();
        assertThat(ALL.get(2).levelSeries()).isEmpty();
        assertThat(series(OptionalDouble.empty()))
                .allSatisfy(s -> assertThat(s.levelSeries()).isEmpty());
    }
}
