package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.NotExamined;
import clipwitness.fault.InputException;
import clipwitness.measure.Contribution;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of a whole job: what was not compared, and why; what looks wrong. */
class ExaminationTest {
    @TempDir
    private Path folder;

    @Test
    void twoStatesWithoutACommonConditionAreUndecided() throws IOException, InputException {
        Comparison old = comparison(Bench.ordinary("before", 25), Bench.ordinary("old", 75));
        assertThat(old.verdict()).isEqualTo(Decision.UNDECIDED);
        assertThat(old.reason())
                .hasValue("there is no waveform capture of “As it came” and “Old pair” under the same gain, frequency,"
                        + " level and setting, so nothing says whether it is unchanged");
        assertThat(old.notExamined())
                .contains(
                        new NotExamined(
                                ItemQuantity.LEVEL, "no waveform capture under a condition that both states share"),
                        new NotExamined(ItemQuantity.POLARITY, "no input channel was captured in both states"));
    }

    /** The third harmonic rises by 20 dB over half the rotation: 0.4 dB for the 1 % to which a knob is set again, once for each state. */
    @Test
    void theKnobCountsInTheChangeOfAHarmonic() throws IOException, InputException {
        List<Bench> captures = new ArrayList<>();
        for (String state : List.of("before", "old")) {
            captures.add(Bench.ordinary(state, 25).harmonics(1, 0, 0.01));
            captures.add(Bench.ordinary(state, 50).harmonics(1, 0, Math.sqrt(1e-3)));
            captures.add(Bench.ordinary(state, 75).harmonics(1, 0, 0.1));
        }
        List<LevelMatchedHarmonic> matched =
                comparison(captures.toArray(new Bench[0])).levelMatched();
        LevelMatchedHarmonic third = matched.stream()
                .filter(h -> h.order() == 3 && h.condition().gainPercent().getAsDouble() == 50)
                .findFirst()
                .orElseThrow();
        assertThat(third.change().value().orElseThrow()).isZero();
        assertThat(third.change().expandedUncertainty().orElseThrow()).isCloseTo(2 * Math.sqrt(2) * 0.4, within(0.05));
    }

    @Test
    void whatWasNotCapturedIsNamed() throws IOException, InputException {
        assertThat(comparison(Bench.ordinary("before", 50), Bench.ordinary("old", 50))
                        .notExamined())
                .contains(
                        new NotExamined(ItemQuantity.NOISE, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.HUM, "no noise capture of “As it came”"),
                        new NotExamined(ItemQuantity.RESPONSE, "no response capture of “As it came”"),
                        new NotExamined(ItemQuantity.RAIL, "the sheet has no meter readings"));
    }

    @Test
    void oneExportForTwoStatesSaysNothingOfAChange() throws IOException, InputException {
        JobResults results = examined(
                Bench.ordinary("before", 100).sha256("aa"),
                Bench.ordinary("old", 100).sha256("aa"));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::code, Doubt::text)
                .containsExactly(tuple(
                        DoubtCode.NOT_COMPARABLE,
                        "the same export, byte for byte, stands for “As it came” too (line 2 of the captures table): what it"
                                + " says of itself is not compared"));
        assertThat(results.comparisons().get(0).verdict()).isEqualTo(Decision.UNDECIDED);
        assertThat(results.comparisons().get(0).reason())
                .hasValue(
                        "one export, byte for byte, stands for “As it came” and “Old pair”, so nothing says whether it is"
                                + " unchanged");
    }

    @Test
    void oneExportListedTwiceIsNoReplicate() throws IOException, InputException {
        JobResults results = examined(
                Bench.ordinary("before", 100).sha256("aa"),
                Bench.ordinary("before", 100).run(2).sha256("aa"),
                Bench.ordinary("before", 0).sha256("aa"),
                Bench.ordinary("old", 100));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::text)
                .containsExactly(
                        "the same export, byte for byte, stands in line 2 of the captures table too: it is counted once");
        assertThat(results.captures().get(2).doubts())
                .extracting(Doubt::text)
                .containsExactly(
                        "the same export, byte for byte, stands for another setting too (line 2 of the captures"
                                + " table): one of them is wrong");
        Item level = results.comparisons().get(0).items().get(0);
        assertThat(level.change().asValue().orElseThrow().budget())
                .extracting(Contribution::source)
                .containsExactly(Source.NOISE);
    }

    @Test
    void aControlSetOnceAtOnePositionIsADoubt() throws IOException, InputException {
        JobResults results = examined(Bench.ordinary("before", 50), Bench.ordinary("old", 50));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::text)
                .containsExactly(
                        "the gain control was set once and at one position only, so how well it is set again is not"
                                + " in the uncertainty: a second setting, or a second run, would tell");
    }

    /** Level rises from 0.1 V at an end stop to 0.3 V at half: 0.004 V a percent, and the knob comes back to 1 %. */
    @Test
    void aFigureBetweenTheEndStopsCarriesHowWellTheKnobIsSetAgain() throws IOException, InputException {
        JobResults results = examined(
                Bench.ordinary("before", 0).with(WaveformQuantity.RMS, 0.1, 0),
                Bench.ordinary("before", 50).with(WaveformQuantity.RMS, 0.3, 0));
        assertThat(rms(results, 0)).isEqualTo(0);
        assertThat(rms(results, 1)).isCloseTo(2 * 0.004, within(1e-12));
        assertThat(results.series()
                        .get(0)
                        .points()
                        .get(1)
                        .values()
                        .get(WaveformQuantity.RMS)
                        .expandedUncertainty())
                .hasValueCloseTo(2 * 0.004, within(1e-12));
    }

    /** Two captures of one run share a setting: each has the same knob. */
    @Test
    void eachReplicateCarriesTheKnobOfItsSetting() throws IOException, InputException {
        JobResults results = examined(
                Bench.ordinary("before", 0).with(WaveformQuantity.RMS, 0.1, 0),
                Bench.ordinary("before", 50).with(WaveformQuantity.RMS, 0.3, 0).sha256("aa"),
                Bench.ordinary("before", 50).with(WaveformQuantity.RMS, 0.3, 0).sha256("bb"));
        assertThat(rms(results, 1)).isCloseTo(2 * 0.004, within(1e-12));
        assertThat(rms(results, 2)).isCloseTo(2 * 0.004, within(1e-12));
    }

    private static double rms(JobResults results, int capture) {
        WaveformResult waveform = results.captures().get(capture).waveform().orElseThrow();
        return waveform.get(WaveformQuantity.RMS).expandedUncertainty().orElseThrow();
    }

    private Comparison comparison(Bench... captures) throws IOException, InputException {
        return examined(captures).comparisons().get(0);
    }

    private JobResults examined(Bench... captures) throws IOException, InputException {
        return new TestExamination(folder).of(captures);
    }
}
