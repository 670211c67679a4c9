package clipwitness.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.NotExamined;
import clipwitness.compare.result.OnsetGain;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.Contribution;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of a whole job: what was not compared, and why; what looks wrong. */
class ExaminationTest {
    @TempDir
    private Path folder;

    @Test
    void twoStatesWithoutACommonConditionAreUndecided() throws IOException, InputException {
        Comparison old = comparison(MadeUpCapture.ordinary("before", 25), MadeUpCapture.ordinary("old", 75));
        assertThat(old.verdict()).isEqualTo(Decision.UNDECIDED);
        assertThat(Said.reason(old.reason()))
                .hasValue("no waveform capture of as it came and old pair under the same gain, frequency, level and "
                        + "setting, so nothing says whether it is unchanged");
        assertThat(old.notExamined())
                .extracting(NotExamined::quantity, ExaminationTest::why)
                .contains(
                        tuple(ItemQuantity.LEVEL, "no waveform capture under a condition that both states share"),
                        tuple(ItemQuantity.POLARITY, "no input channel was captured in both states"));
    }

    /**
     * The third harmonic rises by 20 dB over half the rotation: 0.4 dB for the 1 % to which a knob is set again, once for each state; the
     * sheet's word counts as 8 degrees of freedom, k = 2.37.
     */
    @Test
    void theKnobCountsInTheChangeOfAHarmonic() throws IOException, InputException {
        List<MadeUpCapture> captures = new ArrayList<>();
        for (String state : List.of("before", "old")) {
            captures.add(MadeUpCapture.ordinary(state, 25).harmonics(1, 0, 0.01));
            captures.add(MadeUpCapture.ordinary(state, 50).harmonics(1, 0, Math.sqrt(1e-3)));
            captures.add(MadeUpCapture.ordinary(state, 75).harmonics(1, 0, 0.1));
        }
        List<LevelMatchedHarmonic> matched =
                comparison(captures.toArray(new MadeUpCapture[0])).levelMatched();
        LevelMatchedHarmonic third = matched.stream()
                .filter(h -> h.order() == 3 && h.condition().gainPercent().getAsDouble() == 50)
                .findFirst()
                .orElseThrow();
        assertThat(third.change().value().orElseThrow()).isZero();
        assertThat(third.change().expandedUncertainty().orElseThrow())
                .isCloseTo(2.37 * Math.sqrt(2) * 0.4, within(0.12));
    }

    @Test
    void whatWasNotCapturedIsNamed() throws IOException, InputException {
        assertThat(comparison(MadeUpCapture.ordinary("before", 50), MadeUpCapture.ordinary("old", 50))
                        .notExamined())
                .extracting(NotExamined::quantity, ExaminationTest::why)
                .contains(
                        tuple(ItemQuantity.NOISE, "as it came: no noise capture"),
                        tuple(ItemQuantity.HUM, "as it came: no noise capture"),
                        tuple(ItemQuantity.RESPONSE, "as it came: no response capture"),
                        tuple(ItemQuantity.RAIL, "the sheet has no meter readings"));
    }

    @Test
    void oneExportForTwoStatesSaysNothingOfAChange() throws IOException, InputException {
        JobResults results = examined(
                MadeUpCapture.ordinary("before", 100).sha256("aa"),
                MadeUpCapture.ordinary("old", 100).sha256("aa"));
        assertThat(results.captures().get(1).doubts())
                .extracting(Doubt::code, Said::doubt)
                .containsExactly(tuple(
                        DoubtCode.NOT_COMPARABLE,
                        "the same export, byte for byte, is also listed for as it came (line 2 of the captures table): "
                                + "the two are not compared"));
        assertThat(results.comparisons().get(0).verdict()).isEqualTo(Decision.UNDECIDED);
        assertThat(Said.reason(results.comparisons().get(0).reason()))
                .hasValue(
                        "one export, byte for byte, stands for as it came and old pair, so nothing says whether it is "
                                + "unchanged");
    }

    @Test
    void oneExportListedTwiceIsNoReplicate() throws IOException, InputException {
        JobResults results = examined(
                MadeUpCapture.ordinary("before", 100).sha256("aa"),
                MadeUpCapture.ordinary("before", 100).run(2).sha256("aa"),
                MadeUpCapture.ordinary("before", 0).sha256("aa"),
                MadeUpCapture.ordinary("old", 100));
        assertThat(results.captures().get(1).doubts())
                .extracting(Said::doubt)
                .containsExactly(
                        "the same export, byte for byte, is also listed in line 2 of the captures table: it is counted once");
        assertThat(results.captures().get(2).doubts())
                .extracting(Said::doubt)
                .containsExactly(
                        "the same export, byte for byte, is also listed for another setting (line 2 of the captures"
                                + " table): one of the two is wrong");
        Item level = results.comparisons().get(0).items().get(0);
        assertThat(level.change().asValue().orElseThrow().budget())
                .extracting(Contribution::source)
                .containsExactly(Source.NOISE);
    }

    @Test
    void aControlSetOnceAtOnePositionIsADoubt() throws IOException, InputException {
        JobResults results = examined(MadeUpCapture.ordinary("before", 50), MadeUpCapture.ordinary("old", 50));
        assertThat(results.captures().get(1).doubts())
                .extracting(Said::doubt)
                .containsExactly(
                        "the gain control was set only once: the uncertainty does not include how well it is set again"
                                + " (capture a second setting or run)");
    }

    /**
     * Level rises from 0.1 V at an end stop to 0.3 V at half: 0.004 V a percent, which with nothing captured beyond may be off by itself, u = 1/sqrt 3 of
     * it. The knob comes back to 1 %, k = 2.366 for 8 degrees of freedom (JCGM 100:2008, table G.2: 2.37).
     */
    @Test
    void aFigureBetweenTheEndStopsCarriesHowWellTheKnobIsSetAgain() throws IOException, InputException {
        JobResults results = examined(
                MadeUpCapture.ordinary("before", 0).with(WaveformQuantity.RMS, 0.1, 0),
                MadeUpCapture.ordinary("before", 50).with(WaveformQuantity.RMS, 0.3, 0));
        assertThat(rms(results, 0)).isEqualTo(0);
        assertThat(rms(results, 1)).isCloseTo(2.366 * 0.004 * Math.sqrt(4.0 / 3), within(1e-5));
        assertThat(results.series()
                        .get(0)
                        .points()
                        .get(1)
                        .values()
                        .get(WaveformQuantity.RMS)
                        .expandedUncertainty())
                .hasValueCloseTo(2.366 * 0.004 * Math.sqrt(4.0 / 3), within(1e-5));
    }

    /** Two captures of one run share a setting: each has the same knob. */
    @Test
    void eachReplicateCarriesTheKnobOfItsSetting() throws IOException, InputException {
        JobResults results = examined(
                MadeUpCapture.ordinary("before", 0).with(WaveformQuantity.RMS, 0.1, 0),
                MadeUpCapture.ordinary("before", 50)
                        .with(WaveformQuantity.RMS, 0.3, 0)
                        .sha256("aa"),
                MadeUpCapture.ordinary("before", 50)
                        .with(WaveformQuantity.RMS, 0.3, 0)
                        .sha256("bb"));
        assertThat(rms(results, 1)).isCloseTo(2.366 * 0.004 * Math.sqrt(4.0 / 3), within(1e-5));
        assertThat(rms(results, 2)).isCloseTo(2.366 * 0.004 * Math.sqrt(4.0 / 3), within(1e-5));
    }

    /** The third harmonic rises by 20 dB over half the rotation: 0.4 dB for the 1 % to which a knob is set again; k = 2.37. */
    @Test
    void aHarmonicOfACaptureCarriesHowWellTheKnobIsSetAgain() throws IOException, InputException {
        JobResults results = examined(
                MadeUpCapture.ordinary("before", 25).third(-40),
                MadeUpCapture.ordinary("before", 50).third(-30),
                MadeUpCapture.ordinary("before", 75).third(-20));
        Harmonic third =
                results.captures().get(1).waveform().orElseThrow().harmonics().get(0);
        assertThat(third.level().expandedUncertainty()).hasValueCloseTo(2.37 * 0.4, within(0.07));
        assertThat(third.level().asValue().orElseThrow().budget())
                .extracting(Contribution::source)
                .contains(Source.KNOB);
    }

    /** What distorts by 10 % at half of the rotation does so within the 1 % to which the knob is set there; both states are set by hand. */
    @Test
    void anOnsetAndAnEquivalentGainAreKnownNoBetterThanTheKnobIsSetAgain() throws IOException, InputException {
        List<MadeUpCapture> captures = new ArrayList<>();
        for (String state : List.of("before", "old")) {
            captures.add(MadeUpCapture.ordinary(state, 25).with(WaveformQuantity.THD, 9.9, 0));
            captures.add(MadeUpCapture.ordinary(state, 50).with(WaveformQuantity.THD, 10, 0));
            captures.add(MadeUpCapture.ordinary(state, 75).with(WaveformQuantity.THD, 10.1, 0));
        }
        JobResults results = examined(captures.toArray(new MadeUpCapture[0]));
        OnsetGain tenPercent = results.series().get(0).onsetGain().get(2);
        assertThat(tenPercent.thdPercent()).isEqualTo(10);
        assertThat(tenPercent.gainPercent().value().orElseThrow()).isCloseTo(50, within(1e-6));
        assertThat(tenPercent.gainPercent().expandedUncertainty()).hasValueCloseTo(2.37, within(0.05));
        EquivalentGain half = results.comparisons().get(0).equivalentGain().stream()
                .filter(e -> e.fromGainPercent() == 50)
                .findFirst()
                .orElseThrow();
        assertThat(half.toGainPercent().expandedUncertainty()).hasValueCloseTo(2.37 * Math.sqrt(2), within(0.07));
    }

    private static double rms(JobResults results, int capture) {
        WaveformResult waveform = results.captures().get(capture).waveform().orElseThrow();
        return waveform.get(WaveformQuantity.RMS).expandedUncertainty().orElseThrow();
    }

    private Comparison comparison(MadeUpCapture... captures) throws IOException, InputException {
        return examined(captures).comparisons().get(0);
    }

    private JobResults examined(MadeUpCapture... captures) throws IOException, InputException {
        return new TestExamination(folder).of(captures);
    }

    private static String why(NotExamined missing) {
        return Said.reason(Optional.of(missing.reason())).orElseThrow();
    }
}
