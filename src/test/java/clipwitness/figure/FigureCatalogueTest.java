package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.JobResults;
import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.DemoJob;
import clipwitness.job.Role;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FigureCatalogueTest {
    private static Map<String, Figure> figures(DemoJob job) {
        return FigureCatalogue.of(job.results()).all();
    }

    @Test
    void aFullJobHasEveryFigureInReadingOrder() {
        assertThat(figures(DemoJob.usual()).keySet())
                .containsExactly(
                        "answer",
                        "cycles-main",
                        "cycles",
                        "cycles-matched",
                        "transfer",
                        "transfer-all",
                        "harmonics",
                        "harmonics-all",
                        "series",
                        "series-thd",
                        "series-level",
                        "series-onset",
                        "series-crest",
                        "series-asymmetry",
                        "series-clip-asymmetry",
                        "decisions");
    }

    @Test
    void withoutAnInputChannelThereIsNoTransferCurveAndNoOnset() {
        assertThat(figures(DemoJob.usual().withoutInput()).keySet())
                .doesNotContain("transfer", "transfer-all", "series-onset")
                .contains("cycles-main", "series-thd");
    }

    @Test
    void oneSettingMakesNoSeries() {
        assertThat(figures(DemoJob.usual().gains(50)).keySet())
                .containsExactly("answer", "cycles-main", "cycles-matched", "transfer", "harmonics", "decisions");
    }

    @Test
    void oneStateIsComparedWithNothing() {
        assertThat(figures(DemoJob.empty().state("received", "As received", Role.BEFORE))
                        .keySet())
                .contains("cycles-main", "cycles", "series")
                .doesNotContain("cycles-matched", "decisions");
    }

    @Test
    void aSecondConditionHasFiguresWithASuffixAndItsNameInTheTitle() {
        Map<String, Figure> all = figures(DemoJob.usual().withSecondCondition());
        assertThat(all.get("cycles-main-2").title())
                .isEqualTo("Mean cycle of the output at 50\u00a0% gain, 200\u00a0Hz");
        assertThat(all.get("series-thd-2").title()).endsWith(", 200\u00a0Hz");
        assertThat(all.get("series-thd").title()).doesNotContain("Hz");
    }

    @Test
    void levelStepsAreDrawnWithTheInputAtWhichEachStateCompresses() {
        Figure levels = figures(DemoJob.usual().levelSteps(50)).get("levels");
        assertThat(levels.title()).isEqualTo("Output against input over level steps at 50\u00a0% gain");
        assertThat(levels.finding())
                .isEqualTo(
                        "The output falls 1 dB short of the line through its lowest step at these inputs: as received "
                                + "62.3\u00a0mV at 50\u00a0% gain; original clippers 62.3\u00a0mV at 50\u00a0% gain; "
                                + "new clippers none of those captured at 50\u00a0% gain.");
        assertThat(figures(DemoJob.usual()).keySet()).doesNotContain("levels");
    }

    @Test
    void nothingCapturedMakesNoFigure() {
        JobResults usual = DemoJob.usual().results();
        JobResults empty =
                new JobResults(usual.job(), usual.inputsDigest(), List.of(), List.of(), List.of(), List.of());
        assertThat(FigureCatalogue.of(empty).all()).isEmpty();
    }

    /** At 50 % none but the new clippers cut; at 55 % all do. Distortion above 3 % in one state is enough. */
    @Test
    void theMainCycleIsTheClearlyClippedOneNearestTheMiddle() {
        assertThat(figures(DemoJob.usual().gains(0, 20, 30, 55, 90))
                        .get("cycles-main")
                        .title())
                .isEqualTo("Mean cycle of the output at 55\u00a0% gain");
        assertThat(figures(DemoJob.usual().gains(0, 10, 20)).get("cycles-main").title())
                .isEqualTo("Mean cycle of the output at 20\u00a0% gain");
    }
}
