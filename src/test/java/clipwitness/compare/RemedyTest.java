package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is advised where a change of 0.4 dB stands against a limit of 0.5 dB: 0.1 dB is left for its expanded uncertainty. */
class RemedyTest {
    private static final double LIMIT = 0.5;

    /** Contributions that are independent fall with the root of their number: U of 0.2 dB needs four times as much, 0.3 dB nine times. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            KNOB | 0.1 | Set the controls anew and capture each state until it has 4 runs (column run of captures.csv): how well the knob is set again is the largest part of the uncertainty.
            REPEATABILITY | 0.15 | Set the controls anew and capture each state until it has 9 runs (column run of captures.csv): how well the knob is set again is the largest part of the uncertainty.
            CONVERTER_STEP | 0.1 | Capture both states at a finer vertical range: the converter step is the largest part of the uncertainty.
            NOISE | 0.1 | Capture a record 4 times as long, or average 4 captures: noise is the largest part of the uncertainty.
            TEMPERATURE | 0.1 | Capture both states 4 times under equal conditions: temperature is the largest part of the uncertainty.
            KNOB | 0.6 | The uncertainty exceeds the limit by far: stop the knob at a mark that it finds again, and capture both states.
            STIMULUS | 0.6 | Set the generator to the same level in both states and capture again.
            NOISE | 0.6 | The uncertainty exceeds the limit by far: a longer record at a finer range is needed first.
            """)
    void theLargestPartSaysWhatHelps(Source source, double uncertainty, String remedy) {
        assertThat(Remedy.of(change(source, uncertainty), 0.1, LIMIT)).isEqualTo(remedy);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.01 | The change lies so near the limit that more captures would hardly decide.
            0    | The change lies on the limit; more captures would not decide.
            """)
    void atTheLimitNothingHelps(double distance, String remedy) {
        assertThat(Remedy.of(change(Source.NOISE, 0.1), distance, LIMIT)).isEqualTo(remedy);
    }

    private static Measured.Value change(Source source, double uncertainty) {
        return new Measured.Value(0.4, Unit.DECIBEL, List.of(new Contribution(source, uncertainty)), false);
    }
}
