package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How well the knob is set and how far runs scatter besides, by maximum likelihood of normal variances. Where one unknown makes all of the variance the solution
 * is the pooled variance, each variance weighing by its degrees of freedom; the sheet's repeatability counts as eight degrees of freedom.
 */
class RunFitTest {
    private static final double SHEET = 0.4;

    private static RunFit ofLevel(RunVariance... runs) {
        return RunFit.ofLevel(SHEET, List.of(runs));
    }

    /** A variance of 0.05 on a slope of 0.5 dB per percent is a knob's variance of 0.2; with 8 times 0.16 and 4 degrees of freedom 2.08 / 12. */
    @Test
    void theKnobIsPooledFromTheSheetAndTheRuns() {
        RunFit fit = ofLevel(new RunVariance(0.05, 0, 4, 0.5));
        assertThat(fit.knob()).isCloseTo(Math.sqrt((8 * 0.16 + 4 * 0.2) / 12), within(1e-9));
        assertThat(fit.knobFreedom()).isCloseTo(12, within(1e-9));
        assertThat(fit.scatter()).isZero();
        RunFit two = ofLevel(new RunVariance(0.05, 0, 4, 0.5), new RunVariance(0.25, 0, 3, 1));
        assertThat(two.knob()).isCloseTo(Math.sqrt((8 * 0.16 + 4 * 0.2 + 3 * 0.25) / 15), within(1e-9));
        assertThat(two.knobFreedom()).isCloseTo(15, within(1e-9));
    }

    /** Runs that agree better than the sheet says do not make the knob better than the sheet says by more than they weigh: 8 of 12. */
    @Test
    void runsThatAgreeLeaveWhatTheSheetSays() {
        RunFit fit = ofLevel(new RunVariance(0, 0, 4, 0.5));
        assertThat(fit.knob()).isCloseTo(SHEET * Math.sqrt(8.0 / 12), within(1e-9));
    }

    /** Noise of 0.3 explains the larger part of 0.34: the rest is that of a knob of 0.4 on a slope of 0.5 dB. */
    @Test
    void noiseWithinTheCapturesIsNotTheKnobs() {
        RunFit fit = ofLevel(new RunVariance(0.34, 0.3, 10, 0.5));
        assertThat(fit.knob()).isCloseTo(0.4, within(1e-9));
        assertThat(fit.knobFreedom()).isCloseTo(8 + 10 * square(0.04 / 0.34), within(1e-6));
        assertThat(fit.scatter()).isZero();
    }

    /** At end stops no slope: variances of 0.04 and 0.09 with 2 and 3 degrees of freedom pool to 0.07. */
    @Test
    void atEndStopsAllIsScatter() {
        RunFit fit = ofLevel(new RunVariance(0.04, 0, 2, 0), new RunVariance(0.09, 0, 3, 0));
        assertThat(fit.scatter()).isCloseTo(Math.sqrt(0.07), within(1e-9));
        assertThat(fit.scatterFreedom()).isCloseTo(5, within(1e-9));
        assertThat(fit.knob()).isEqualTo(SHEET);
        assertThat(fit.knobFreedom()).isEqualTo(8);
        RunFit noisy = ofLevel(new RunVariance(0.04, 0.03, 2, 0), new RunVariance(0.09, 0.03, 3, 0));
        assertThat(noisy.scatter()).isCloseTo(0.2, within(1e-9));
        assertThat(noisy.scatterFreedom()).isCloseTo(5 * square(4.0 / 7), within(1e-9));
    }

    @Test
    void scatterThatNoiseExplainsIsNone() {
        RunFit fit = ofLevel(new RunVariance(0.01, 0.02, 4, 0));
        assertThat(fit.scatter()).isZero();
        assertThat(fit.scatterFreedom()).isEqualTo(1);
        assertThat(fit.scatter(1)).isEmpty();
    }

    /** A slope of 2 dB and a knob of 0.4 make 0.64 of 0.73, scatter 0.09: both fit exactly, and share the degrees of freedom as they share the variance. */
    @Test
    void knobAndScatterAreToldApartByTheSlope() {
        RunFit fit = ofLevel(new RunVariance(0.09, 0, 6, 0), new RunVariance(0.73, 0, 5, 2));
        assertThat(fit.knob()).isCloseTo(0.4, within(1e-6));
        assertThat(fit.scatter()).isCloseTo(0.3, within(1e-6));
        assertThat(fit.knobFreedom()).isCloseTo(8 + 5 * square(0.64 / 0.73), within(1e-4));
        assertThat(fit.scatterFreedom()).isCloseTo(6 + 5 * square(0.09 / 0.73), within(1e-4));
    }

    /** The knob is known from the level; another figure has only its scatter to find. 0.5 squared times 0.16 is 0.04. */
    @Test
    void anotherFigureKeepsTheKnobOfTheLevel() {
        RunFit fit = RunFit.ofSheet(SHEET).ofFigure(List.of(new RunVariance(1.04, 0, 9, 0.5)));
        assertThat(fit.knob()).isCloseTo(SHEET, within(1e-12));
        assertThat(fit.knobFreedom()).isEqualTo(8);
        assertThat(fit.scatter()).isCloseTo(1, within(1e-9));
        assertThat(fit.scatterFreedom()).isCloseTo(9 * square(1 / 1.04), within(1e-6));
        RunFit none = RunFit.ofSheet(SHEET).ofFigure(List.of());
        assertThat(none).isEqualTo(new RunFit(SHEET, 8, 0, 1));
        assertThat(RunFit.ofLevel(SHEET, List.of())).isEqualTo(none);
    }

    /**
     * Twice the gain in log likelihood has to exceed 2.706, the 90 % point of chi-squared with one degree of freedom: for f degrees of freedom and r
     * times the variance that the knob makes it is f (r - 1 - ln r), 10 times 0.19315 for r of 2 and 10 times 0.5837 for r of 2.5.
     */
    @Test
    void scatterBesideAKnobCountsWhereItIsLikely() {
        RunFit sheet = RunFit.ofSheet(SHEET);
        assertThat(sheet.ofFigure(List.of(new RunVariance(0.04 * 1.7, 0, 10, 0.5)))
                        .scatter())
                .isZero();
        assertThat(sheet.ofFigure(List.of(new RunVariance(0.04 * 2, 0, 10, 0.5)))
                        .scatter())
                .isCloseTo(0.2, within(1e-9));
        assertThat(sheet.ofFigure(List.of(new RunVariance(0.04 * 2, 0, 8, 0.5))).scatter())
                .isZero();
    }

    /** Independent runs average: with the root of their number. */
    @Test
    void contributionsFallWithTheRootOfTheRuns() {
        RunFit fit = new RunFit(0.4, 9, 0.3, 5);
        assertThat(fit.knob(2, 4)).hasValue(new Contribution(Source.KNOB, 0.4, 9));
        assertThat(fit.scatter(9)).hasValueSatisfying(c -> {
            assertThat(c.source()).isEqualTo(Source.REPEATABILITY);
            assertThat(c.standardUncertainty()).isCloseTo(0.1, within(1e-12));
            assertThat(c.degreesOfFreedom()).isEqualTo(5);
        });
        assertThat(fit.knob(0, 4)).isEmpty();
        assertThat(new RunFit(0, 9, 0.3, 5).knob(2, 4)).isEmpty();
    }

    private static double square(double x) {
        return x * x;
    }

    private static StateAtCondition runs(Measured... phases) {
        return new StateAtCondition(
                "a",
                "State a",
                MadeUpCapture.ordinary("a", 50).condition(),
                Stream.iterate(0, i -> i + 1)
                        .limit(phases.length)
                        .map(i -> MadeUpCapture.ordinary("a", 50)
                                .run(i + 1)
                                .with(WaveformQuantity.PHASE, phases[i])
                                .done())
                        .toList());
    }

    private static Measured degrees(double value, double noise) {
        return Measured.withNoise(value, Unit.DEGREE, noise).plus(Source.VERTICAL_ACCURACY, 7);
    }

    /** 179°, -179° and -175° lie 2, 4 and 6 degrees apart: a third of the sum of these squares, with two degrees of freedom, is a variance of 9.33. */
    @Test
    void theVarianceOfRunsIsThatOfTheirFiguresAboutTheMean() {
        StateAtCondition setting = runs(degrees(179, 0.1), degrees(-179, 0.2), degrees(-175, 0.2));
        RunVariance variance = RunVariance.of(setting, s -> s.figure(WaveformQuantity.PHASE), -2)
                .orElseThrow();
        assertThat(variance.variance()).isCloseTo((4.0 * 4 + 2 * 2 + 6 * 6) * 2 / 3 / 4, within(1e-9));
        assertThat(variance.noise()).isCloseTo(0.03, within(1e-12));
        assertThat(variance.freedom()).isEqualTo(2);
        assertThat(variance.slope()).isEqualTo(2);
    }

    @Test
    void runsWithoutTheFigureOrWithABoundOfALevelDoNotCount() {
        StateAtCondition setting = runs(degrees(1, 0), degrees(2, 0), degrees(3, 0));
        Measured.Value level = Measured.withNoise(-40, Unit.DECIBEL, 1);
        assertThat(RunVariance.of(setting, s -> run(s) == 1 ? Measured.refused(Unit.DECIBEL, NONE) : level, 1))
                .hasValueSatisfying(v -> assertThat(v.freedom()).isEqualTo(1));
        assertThat(RunVariance.of(setting, s -> run(s) == 1 ? level.asUpperBound() : level, 1))
                .hasValueSatisfying(v -> assertThat(v.freedom()).isEqualTo(1));
        assertThat(RunVariance.of(setting, s -> run(s) < 3 ? level.asUpperBound() : level, 1))
                .isEmpty();
        assertThat(RunVariance.runs(setting)).hasSize(3);
    }

    private static final FigureReason NONE = FigureReason.CAPTURE_NOT_MEASURED;

    private static int run(StateAtCondition setting) {
        return setting.replicates().get(0).row().run();
    }
}
