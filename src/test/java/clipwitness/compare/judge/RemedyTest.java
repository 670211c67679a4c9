package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.VerticalRange;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is advised where a change stands 0.1 dB from its limit: its expanded uncertainty may be 0.1 dB, its standard uncertainty 0.05 dB. */
class RemedyTest {
    private static final double DISTANCE = 0.1;
    private static final StateAtCondition BEFORE =
            MadeUpCapture.ordinary("a", 50).setting();
    private static final StateAtCondition AFTER =
            MadeUpCapture.ordinary("b", 50).setting();

    /** 200 of 256 codes: no range but this one holds the wave, and a step three times smaller is 2 bits. */
    @Test
    void aFinerRangeIsAdvisedOnlyWhereItHoldsTheWave() {
        StateAtCondition full = MadeUpCapture.ordinary("a", 50)
                .with(WaveformQuantity.PEAK_UP, 1, 0.001)
                .with(WaveformQuantity.PEAK_DOWN, 1, 0.001)
                .range(new VerticalRange(OptionalDouble.empty(), OptionalDouble.of(0.01)))
                .setting();
        assertThat(Said.remark(
                        Remedy.beforehand(change(new Contribution(Source.CONVERTER_STEP, 0.15)), DISTANCE, full)))
                .isEqualTo(
                        "Capture each state with 2 bits more: no finer range holds the wave, and the converter step hides"
                                + " the change.");
    }

    /** Independent parts fall with the root of their number (JCGM 100, 4.2.3), the converter step with the range. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NOISE | 0.1 | Capture each state with a record 4 times as long, or average 4 captures: noise hides the change.
            NOISE | 0.15 | Capture each state with a record 9 times as long, or average 9 captures: noise hides the change.
            CONVERTER_STEP | 0.15 | Capture each state at a vertical range 3 times finer, or with more bits: the converter step hides the change.
            KNOB | 0.1 | How well the knob is set again hides the change. Set the controls anew and capture each state until there are 4 runs (column run of captures.csv).
            KNOB | 0.6 | Set the gain control 12 times as well as it was: by a dial, a mark, or at an end stop. Then capture each state.
            METHOD | 0.6 | No practicable number of captures would show a change as small as the limit.
            """)
    void beforeTheWorkBothStatesCanBeCapturedBetter(Source source, double uncertainty, String remedy) {
        assertThat(beforehand(change(new Contribution(source, uncertainty)), DISTANCE, BEFORE))
                .isEqualTo(remedy);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            STIMULUS | 0.6 | Capture State b again with the generator set as it was for State a.
            TEMPERATURE | 0.6 | Capture State b again at the temperature at which State a was captured.
            VERTICAL_ACCURACY | 0.6 | Capture State b again at the vertical range, and with the instrument, at which State a was captured.
            """)
    void whatASecondOccasionBroughtCanBeTakenAway(Source source, double uncertainty, String remedy) {
        assertThat(after(Map.of(), new Contribution(source, uncertainty))).isEqualTo(remedy);
    }

    /** Of 0.06² of noise a sixth stays with the state before; 0.06² - 0.05² of it has to go from the other five sixths: 2 times as long. */
    @Test
    void afterTheWorkOnlyTheLaterStateCanBeCapturedAgain() {
        assertThat(after(Map.of(Source.NOISE, 1.0 / 6), new Contribution(Source.NOISE, 0.06)))
                .isEqualTo(
                        "Capture State b again with a record 2 times as long, or average 2 captures: noise hides the "
                                + "change.");
    }

    /** Half of 0.1² is more than 0.05². */
    @Test
    void whatTheStateBeforeBringsCannotBeMended() {
        assertThat(after(Map.of(Source.NOISE, 0.5), new Contribution(Source.NOISE, 0.1)))
                .isEqualTo(
                        "What was captured of State a is too uncertain for this limit, and it cannot be captured again.");
    }

    /** The knob leaves 0.1 dB and is half the earlier state's: without it all would be known; twice 0.1 dB with as good as known a knob. */
    @Test
    void whereTheKnobOfTheStateBeforeIsAllThatHidesItIsNamed() {
        assertThat(after(Map.of(Source.KNOB, 0.5), new Contribution(Source.KNOB, 0.1)))
                .isEqualTo(
                        "Resetting the knob (0.4\u00a0%) hides changes up to 0.20\u00a0dB here, and State a cannot be "
                                + "captured again. More runs (State b) help only if they show that the knob is set better; an end "
                                + "stop hides nothing.");
    }

    /** Two runs that there are, four times as many that are needed. */
    @Test
    void runsThatThereAreCount() {
        StateAtCondition twice = new StateAtCondition(
                "a",
                "State a",
                AFTER.condition(),
                List.of(
                        MadeUpCapture.ordinary("a", 50).done(),
                        MadeUpCapture.ordinary("a", 50).run(2).done()));
        assertThat(beforehand(change(new Contribution(Source.REPEATABILITY, 0.1)), DISTANCE, twice))
                .contains("until there are 8 runs");
    }

    /** 0.04² of knob is left: noise must fall from 0.12 to 0.03, sixteen times as long a record. Runs alone would need seven. */
    @Test
    void aLongerRecordComesBeforeMoreRuns() {
        assertThat(beforehand(
                        change(new Contribution(Source.KNOB, 0.04), new Contribution(Source.NOISE, 0.12)),
                        DISTANCE,
                        BEFORE))
                .contains("a record 16 times as long");
    }

    /** Neither alone would do: the sum of squares 0.06² + 0.08² = 0.1² has to fall to 0.05². */
    @Test
    void runsAverageNoiseToo() {
        assertThat(beforehand(
                        change(new Contribution(Source.KNOB, 0.06), new Contribution(Source.NOISE, 0.08)),
                        DISTANCE,
                        BEFORE))
                .contains("until there are 4 runs");
    }

    @Test
    void onTheLimitNothingHelps() {
        assertThat(beforehand(change(new Contribution(Source.NOISE, 0.1)), 0, BEFORE))
                .isEqualTo("The change lies on the limit; more captures would not decide.");
    }

    private static String beforehand(Measured.Value change, double distance, StateAtCondition setting) {
        return Said.remark(Remedy.beforehand(change, distance, setting));
    }

    private static String after(Map<Source, Double> stays, Contribution part) {
        return Said.remark(Remedy.of(change(part), DISTANCE, BEFORE, AFTER, stays, 0.4));
    }

    private static Measured.Value change(Contribution... budget) {
        return new Measured.Value(0.4, Unit.DECIBEL, List.of(budget), false);
    }
}
