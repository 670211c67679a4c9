package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.finding.Headroom;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.Contribution;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stage swings to within about 2 V of each rail; a wave that comes near to what the rails span is told. */
class HeadroomRuleTest {
    private static final String NINE_VOLTS =
            "rails: [{name: supply, old: 9 V, new: 8 V}, {name: current, old: 50 A, new: 50 A}]\n";
    private static final String BOTH_WAYS = "rails: [{name: plus, new: 3 V}, {name: minus, new: -3 V}]\n";

    @TempDir
    private Path folder;

    private static MadeUpCapture wave(String state, double gain, double up, double down) {
        return MadeUpCapture.ordinary(state, gain)
                .with(WaveformQuantity.PEAK_UP, up, 0.03)
                .with(WaveformQuantity.PEAK_DOWN, down, 0.04);
    }

    private List<Headroom> headroom(String rails, MadeUpCapture... captures) throws IOException, InputException {
        JobResults results = new TestExamination(folder).with(rails, captures);
        return results.comparisons().stream()
                .filter(c -> c.to().equals("new"))
                .flatMap(c -> new HeadroomRule(results).of(c).stream())
                .flatMap(p -> p.findings().stream())
                .map(Headroom.class::cast)
                .toList();
    }

    private int told(String rails, double up, double down) throws IOException, InputException {
        return headroom(rails, wave("before", 50, up, down), wave("new", 50, up, down))
                .size();
    }

    /** 8 V less 2 V at each end leave 4 V, which is half of 8 V too. */
    @Test
    void aSwingToWithinTwoVoltsOfEachRailIsNear() throws IOException, InputException {
        assertThat(told(NINE_VOLTS, 2.5, 1.5)).isEqualTo(1);
        assertThat(told(NINE_VOLTS, 2.5, 1.4)).isZero();
    }

    /** 6 V less 2 V at each end are 2 V, but under half of what the rails span nothing is near. */
    @Test
    void underHalfOfTheSpanNothingIsNear() throws IOException, InputException {
        assertThat(told(BOTH_WAYS, 1.5, 1.5)).isEqualTo(1);
        assertThat(told(BOTH_WAYS, 1.5, 1.4)).isZero();
    }

    /** 12 V less 2 V at each end are 8 V, more than half. */
    @Test
    void overALargeSpanTheTwoVoltsDecide() throws IOException, InputException {
        String twelve = "rails: [{name: supply, new: 12 V}]\n";
        assertThat(told(twelve, 4, 4)).isEqualTo(1);
        assertThat(told(twelve, 4, 3.5)).isZero();
    }

    @Test
    void withoutAReadingInVoltsNothingIsSaid() throws IOException, InputException {
        assertThat(told("rails: [{name: current, new: 5 A}]\n", 4, 4)).isZero();
        assertThat(told("rails: [{name: supply, before: 9 V}]\n", 4, 4)).isZero();
        assertThat(told("", 4, 4)).isZero();
    }

    /** The largest swing of the state: 3 V and 2.5 V; standard uncertainties of 30 mV and 40 mV make 50 mV at the stop of the knob. */
    @Test
    void theLargestSwingIsToldWithItsUncertaintyAndWhatTheRailsSpan() throws IOException, InputException {
        List<Headroom> told = headroom(
                NINE_VOLTS,
                wave("before", 50, 4, 4),
                wave("before", 100, 4, 4),
                wave("new", 100, 3, 2.5),
                wave("new", 50, 1, 4));
        assertThat(told)
                .extracting(h -> h.subject().condition().gainPercent().orElseThrow(), Headroom::span)
                .containsExactly(tuple(100.0, 8.0));
        assertThat(told.get(0).swing().number()).isCloseTo(5.5, within(1e-12));
        assertThat(told.get(0).swing().standardUncertainty()).isCloseTo(0.05, within(1e-12));
        assertThat(told.get(0).swing().budget())
                .extracting(Contribution::standardUncertainty)
                .hasSize(1);
    }

    @Test
    void aStateWhosePeaksAreNotKnownHasNoSwing() throws IOException, InputException {
        assertThat(headroom(
                        NINE_VOLTS,
                        wave("before", 50, 4, 4),
                        MadeUpCapture.ordinary("new", 50).with(WaveformQuantity.PEAK_UP, 4, 0.1)))
                .isEmpty();
    }
}
