package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is advised where a change stands 0.1 dB from its limit: its expanded uncertainty may be 0.1 dB, its standard uncertainty 0.05 dB. */
class RemedyTest {
    private static final double DISTANCE = 0.1;

    /** Independent parts fall with the root of their number (JCGM 100, 4.2.3), the converter step with the range. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NOISE | 0.1 | Capture both states with a record 4 times as long, or average 4 captures: noise is what hides the change.
            NOISE | 0.15 | Capture both states with a record 9 times as long, or average 9 captures: noise is what hides the change.
            CONVERTER_STEP | 0.15 | Capture both states at a vertical range 3 times finer, or with more bits: the converter step hides the change.
            KNOB | 0.1 | Set the controls anew and capture each state until it has 4 runs (column run of captures.csv): how well the knob is set again hides the change.
            STIMULUS | 0.6 | Set the generator to the same level in both states and capture again.
            TEMPERATURE | 0.6 | Capture both states at the same temperature.
            VERTICAL_ACCURACY | 0.6 | Capture both states at the same vertical range of the same instrument.
            KNOB | 0.6 | Set the gain control again 12 times as well as it was: by a dial, a mark, or at an end stop.
            METHOD | 0.6 | The change lies so near the limit that no number of captures would soon decide it: method is the largest part of its uncertainty.
            """)
    void onePartAlone(Source source, double uncertainty, String remedy) {
        assertThat(Remedy.of(change(new Contribution(source, uncertainty)), DISTANCE, 1))
                .isEqualTo(remedy);
    }

    /** Two runs that there are, four times as many that are needed. */
    @Test
    void runsThatThereAreCount() {
        assertThat(Remedy.of(change(new Contribution(Source.REPEATABILITY, 0.1)), DISTANCE, 2))
                .contains("until it has 8 runs");
    }

    /** 0.04² of knob is left: noise must fall from 0.12 to 0.03, sixteen times as long a record. Runs alone would need seven. */
    @Test
    void aLongerRecordComesBeforeMoreRuns() {
        assertThat(Remedy.of(
                        change(new Contribution(Source.KNOB, 0.04), new Contribution(Source.NOISE, 0.12)), DISTANCE, 1))
                .contains("a record 16 times as long");
    }

    /** Neither alone would do: the sum of squares 0.06² + 0.08² = 0.1² has to fall to 0.05². */
    @Test
    void runsAverageNoiseToo() {
        assertThat(Remedy.of(
                        change(new Contribution(Source.KNOB, 0.06), new Contribution(Source.NOISE, 0.08)), DISTANCE, 1))
                .contains("until it has 4 runs");
    }

    @Test
    void onTheLimitNothingHelps() {
        assertThat(Remedy.of(change(new Contribution(Source.NOISE, 0.1)), 0, 1))
                .isEqualTo("The change lies on the limit; more captures would not decide.");
    }

    private static Measured.Value change(Contribution... budget) {
        return new Measured.Value(0.4, Unit.DECIBEL, List.of(budget), false);
    }
}
