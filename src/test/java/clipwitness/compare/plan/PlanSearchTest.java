package clipwitness.compare.plan;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.job.Bench;
import clipwitness.job.JobSheet;
import clipwitness.job.Limits;
import clipwitness.job.Stimulus;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.LimitQuantity;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlanSearchTest {
    private static final BenchPlan USUAL = PlanSearch.of(UsualSheet.of(), false);

    @Test
    void everyUsualLimitOfARecordCanBeKeptAtTheEndStopsWithHalfOfItToSpare() {
        assertThat(USUAL.reach())
                .extracting(Reach::quantity)
                .containsExactly(
                        ItemQuantity.LEVEL,
                        ItemQuantity.THD,
                        ItemQuantity.ASYMMETRY,
                        ItemQuantity.CREST_FACTOR,
                        ItemQuantity.NULL_DEPTH);
        assertThat(USUAL.reach().stream().filter(r -> r.limit() > 0))
                .allSatisfy(r -> assertThat(r.stops().orElseThrow().change()).isLessThanOrEqualTo(r.limit() / 2));
    }

    /** The measurement book: six periods or more, more than 45 samples a period, on the finest range that holds the wave. */
    @Test
    void theRecordHasWhatEveryWaveNeeds() {
        BenchPlan.WaveRecord wave = USUAL.wave();
        assertThat(wave.periods()).isGreaterThanOrEqualTo(6);
        assertThat(wave.samples() / (double) wave.periods()).isGreaterThan(45);
        assertThat(wave.screen()).isBetween(0.4, 0.8);
    }

    /** Five periods of 50 Hz, and bins that tell the lowest string of a bass, 41.2 Hz, from its neighbours. */
    @Test
    void theLongRecordsShowTheMainsAndTheLowestString() {
        assertThat(USUAL.noise().seconds()).isGreaterThanOrEqualTo(5 / 50.0);
        assertThat(USUAL.noise().rate()).isGreaterThan(2 * 20_000);
        assertThat(USUAL.sweep().seconds()).isGreaterThanOrEqualTo(13 / 41.2);
        assertThat(USUAL.sweep().reach()).singleElement().matches(Reach::sufficient);
    }

    /** The README and the manual ask for half a second without signal and for a sweep over one second. */
    @Test
    void theLongRecordsAreNoShorterThanTheManualAsks() {
        assertThat(USUAL.noise().seconds()).isEqualTo(0.5);
        assertThat(USUAL.sweep().seconds()).isEqualTo(1);
    }

    @Test
    void tighterLimitsAskForLongerRecordsOrMoreTakes() {
        BenchPlan tight = PlanSearch.of(
                with(new Limits(
                        Map.of(LimitQuantity.LEVEL, 0.1, LimitQuantity.THD, 0.1, LimitQuantity.ASYMMETRY, 0.3))),
                true);
        assertThat(tight.wave().samples()).isGreaterThan(USUAL.wave().samples());
        assertThat(tight.runs()).isGreaterThan(USUAL.runs());
    }

    /** A change that the knob alone hides, and no number of takes that anybody would make uncovers. */
    @Test
    void aLimitFarBelowWhatTheKnobRepeatsIsNotPromised() {
        BenchPlan hopeless = PlanSearch.of(with(new Limits(Map.of(LimitQuantity.LEVEL, 0.01))), true);
        Reach level = hopeless.reach().get(0);
        assertThat(level.limit()).isEqualTo(0.01);
        assertThat(level.sufficient()).isFalse();
        assertThat(level.between().orElseThrow().sufficient()).isFalse();
    }

    @Test
    void aBetterKnobShowsSmallerChangesBetweenTheEndStops() {
        BenchPlan stepped = PlanSearch.of(knob(0.0001), true);
        BenchPlan loose = PlanSearch.of(knob(0.05), true);
        assertThat(stepped.runs()).isLessThanOrEqualTo(loose.runs());
        assertThat(stepped.reach().get(0).between().orElseThrow().change())
                .isLessThan(loose.reach().get(0).between().orElseThrow().change());
    }

    @Test
    void theSheetsStimulusIsPlannedWith() {
        JobSheet usual = UsualSheet.of();
        Stimulus stimulus = new Stimulus(Stimulus.SINE, OptionalDouble.of(1000), OptionalDouble.of(0.2));
        BenchPlan plan = PlanSearch.of(sheet(usual.bench(), stimulus, usual.limits()), true);
        assertThat(plan.frequency()).isEqualTo(1000);
        assertThat(plan.level()).isEqualTo(0.2);
    }

    @Test
    void thePlanIsTheSameEachTime() {
        assertThat(PlanSearch.of(UsualSheet.of(), false)).isEqualTo(USUAL);
    }

    private static JobSheet with(Limits limits) {
        JobSheet usual = UsualSheet.of();
        return sheet(usual.bench(), usual.stimulus(), limits);
    }

    private static JobSheet knob(double repeatability) {
        JobSheet usual = UsualSheet.of();
        Bench bench = new Bench(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                Bench.DEFAULT_VERTICAL_ACCURACY,
                repeatability,
                Bench.DEFAULT_METER_ACCURACY);
        return sheet(bench, usual.stimulus(), usual.limits());
    }

    private static JobSheet sheet(Bench bench, Stimulus stimulus, Limits limits) {
        JobSheet usual = UsualSheet.of();
        return new JobSheet(
                usual.report(),
                usual.shop(),
                usual.customer(),
                usual.unit(),
                usual.work(),
                bench,
                stimulus,
                usual.settings(),
                usual.states(),
                limits,
                usual.rails(),
                usual.clipper(),
                usual.photos());
    }
}
