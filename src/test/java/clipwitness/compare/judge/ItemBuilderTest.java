package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.job.Limits;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Decisions of the measurement book, sections 4 and 5, on figures stated outright. */
class ItemBuilderTest {
    private static final Limits DEFAULTS = new Limits(Map.of());
    private static final Drift DRIFT = new Drift(new TemperatureChange(OptionalDouble.empty(), 1));

    @Test
    void theSameFiguresPassEveryLimit() {
        List<Item> items = items(Intent.UNCHANGED, MadeUpCapture.ordinary("a", 50), MadeUpCapture.ordinary("b", 50));
        assertThat(items)
                .extracting(Item::quantity)
                .containsExactly(
                        ItemQuantity.LEVEL,
                        ItemQuantity.THD,
                        ItemQuantity.ASYMMETRY,
                        ItemQuantity.CREST_FACTOR,
                        ItemQuantity.NULL_DEPTH);
        assertThat(items).extracting(Item::decision).containsOnly(Decision.PASS);
    }

    /** 20 lg 2 = 6.02 dB. */
    @Test
    void twiceTheLevelIsSixDecibelsAndFails() {
        Item level = item(
                ItemQuantity.LEVEL,
                items(
                        Intent.UNCHANGED,
                        MadeUpCapture.ordinary("a", 50),
                        MadeUpCapture.ordinary("b", 50).with(WaveformQuantity.RMS, 1.4, 0.001)));
        assertThat(level.change().value().orElseThrow()).isCloseTo(6.0206, within(1e-4));
        assertThat(level.decision()).isEqualTo(Decision.FAIL);
        assertThat(level.conformanceProbability().orElseThrow()).isLessThan(1e-9);
    }

    /**
     * Ten percent are 0.83 dB, over the limit of 0.5 dB. Between the end stops a knob that comes back to 1 % makes as much where it moves the level by 1 dB a
     * percent, as audio tapers do at the fastest (common practice); at an end stop it makes none.
     */
    @Test
    void aLevelThatTheKnobMayHaveMovedCannotFailWhereTheControlWasSetOnce() {
        Item between = item(ItemQuantity.LEVEL, items(Intent.UNCHANGED, louder("a", 50, 1), louder("b", 50, 1.1)));
        assertThat(between.decision()).isEqualTo(Decision.UNDECIDED);
        assertThat(Said.remark(between.remedy().orElseThrow())).contains("gain control was set only once");
        Item atStop = item(ItemQuantity.LEVEL, items(Intent.UNCHANGED, louder("a", 100, 1), louder("b", 100, 1.1)));
        assertThat(atStop.decision()).isEqualTo(Decision.FAIL);
    }

    private static MadeUpCapture louder(String state, double gain, double times) {
        return MadeUpCapture.ordinary(state, gain).with(WaveformQuantity.RMS, 0.7 * times, 0.001);
    }

    @Test
    void distortionIsNotJudgedWhileItIsUnderOnePercentInBoth() {
        MadeUpCapture a = MadeUpCapture.ordinary("a", 100).with(WaveformQuantity.THD, 0.2, 0.01);
        MadeUpCapture b = MadeUpCapture.ordinary("b", 100).with(WaveformQuantity.THD, 0.6, 0.01);
        assertThat(item(ItemQuantity.THD, items(Intent.UNCHANGED, a, b)).decision())
                .isEqualTo(Decision.DESCRIBED);
        MadeUpCapture c = MadeUpCapture.ordinary("b", 100).with(WaveformQuantity.THD, 1.2, 0.01);
        assertThat(item(ItemQuantity.THD, items(Intent.UNCHANGED, a, c)).decision())
                .isEqualTo(Decision.FAIL);
    }

    @Test
    void aChangedStateIsDescribedAndOnlyItsPolarityJudged() {
        MadeUpCapture a = MadeUpCapture.ordinary("a", 50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 1e-5)
                .with(WaveformQuantity.GAIN, 20, 0.01)
                .with(WaveformQuantity.PHASE, 178, 0.1);
        MadeUpCapture b = MadeUpCapture.ordinary("b", 50)
                .with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.1, 1e-5)
                .with(WaveformQuantity.GAIN, 14, 0.01)
                .with(WaveformQuantity.PHASE, -178, 0.1);
        List<Item> items = items(Intent.CHANGED, a, b);
        assertThat(items).filteredOn(Item::judged).extracting(Item::quantity).containsExactly(ItemQuantity.POLARITY);
        Item polarity = item(ItemQuantity.POLARITY, items);
        assertThat(polarity.change().value().orElseThrow()).isCloseTo(4, within(1e-12));
        assertThat(polarity.decision()).isEqualTo(Decision.PASS);
        assertThat(item(ItemQuantity.GAIN, items).change().value().orElseThrow())
                .isCloseTo(-6, within(1e-12));
    }

    @Test
    void aRefusedFigureIsUndecidedAndSaysWhatToCaptureAgain() {
        MadeUpCapture b =
                MadeUpCapture.ordinary("b", 50).refused(WaveformQuantity.RMS, FigureReason.CAPTURE_NOT_MEASURED);
        Item level = item(ItemQuantity.LEVEL, items(Intent.UNCHANGED, MadeUpCapture.ordinary("a", 50), b));
        assertThat(level.decision()).isEqualTo(Decision.UNDECIDED);
        assertThat(Said.reason(level.change().reason())).contains("for State b, the capture could not be measured");
        assertThat(Said.remark(level.remedy()))
                .contains("Capture it again: for State b, the capture could not be measured.");
    }

    @Test
    void whatWasRefusedBeforeTheWorkIsNotSimplyToBeCapturedAgain() {
        MadeUpCapture a =
                MadeUpCapture.ordinary("a", 50).refused(WaveformQuantity.RMS, FigureReason.CAPTURE_NOT_MEASURED);
        assertThat(Said.remark(item(ItemQuantity.LEVEL, items(Intent.UNCHANGED, a, MadeUpCapture.ordinary("b", 50)))
                        .remedy()))
                .contains(
                        "Capture it again if the unit can be put back into this state: for State a, the capture could not be "
                                + "measured.");
    }

    @Test
    void aRefusalBeforeTheWorkIsNamedByItsState() {
        MadeUpCapture a =
                MadeUpCapture.ordinary("a", 50).refused(WaveformQuantity.THD, FigureReason.CAPTURE_NOT_MEASURED);
        assertThat(Said.reason(item(ItemQuantity.THD, items(Intent.UNCHANGED, a, MadeUpCapture.ordinary("b", 50)))
                        .change()
                        .reason()))
                .hasValue("for State a, the capture could not be measured");
    }

    @Test
    void aSilentOutputHasNoLevelInDecibels() {
        WaveformResult silent = MadeUpCapture.ordinary("b", 50)
                .with(WaveformQuantity.RMS, 0, 0)
                .done()
                .waveform()
                .orElseThrow();
        assertThat(Said.reason(ItemValue.LEVEL.of(silent).reason()))
                .hasValue("a level cannot be given, because the rms is zero");
    }

    /**
     * Level rises by 6 dB from 25 % to 75 % in both states; a knob known to 5 % of rotation then carries 0.12 dB/% times 5 % = 0.6 dB a
     * state, 0.85 dB in the change, k = 2.37: a change of 0.2 dB against a limit of 0.5 dB cannot be decided.
     */
    @Test
    void aKnobSetByEyeLeavesASmallChangeUndecided() {
        List<CaptureResult> captures = new ArrayList<>();
        for (String state : List.of("a", "b")) {
            captures.add(MadeUpCapture.ordinary(state, 25)
                    .with(WaveformQuantity.RMS, 0.35, 1e-5)
                    .done());
            captures.add(MadeUpCapture.ordinary(state, 50)
                    .with(WaveformQuantity.RMS, state.equals("a") ? 0.495 : 0.5065, 1e-5)
                    .done());
            captures.add(MadeUpCapture.ordinary(state, 75)
                    .with(WaveformQuantity.RMS, 0.7, 1e-5)
                    .done());
        }
        Catalogue catalogue = Catalogue.of(captures, state -> "State " + state);
        StateAtCondition a = catalogue.of("a").get(1);
        StateAtCondition b = catalogue.of("b").get(1);
        Item level = item(
                ItemQuantity.LEVEL,
                new ItemBuilder(DEFAULTS, new Repeatability(catalogue, bench(0.05)), DRIFT, Intent.UNCHANGED).of(a, b));
        assertThat(level.decision()).isEqualTo(Decision.UNDECIDED);
        assertThat(level.change().expandedUncertainty().orElseThrow()).isCloseTo(2.0, within(0.05));
        assertThat(level.change().asValue().orElseThrow().largestFirst().get(0).source())
                .isEqualTo(Source.KNOB);
        assertThat(Said.remark(level.remedy()))
                .hasValue(
                        "Resetting the knob (5\u00a0%) hides changes up to 2.0\u00a0dB here, and State a cannot be captured again. "
                                + "More runs (State b) help only if they show that the knob is set better; an end stop hides nothing.");
    }

    /** Three runs whose level scatters by 0.2 dB, where no slope says what the knob has to do with it. */
    @Test
    void runsAtOnePositionOfTheKnobShowTheWhole() {
        List<CaptureResult> captures = new ArrayList<>();
        for (int run = 1; run <= 3; run++) {
            double rms = 0.7 * Math.pow(10, 0.2 * (run - 2) / 20);
            captures.add(MadeUpCapture.ordinary("a", 50)
                    .run(run)
                    .with(WaveformQuantity.RMS, rms, 1e-6)
                    .done());
        }
        captures.add(MadeUpCapture.ordinary("b", 50)
                .with(WaveformQuantity.RMS, 0.7, 1e-6)
                .done());
        Catalogue catalogue = Catalogue.of(captures, state -> "State " + state);
        Item level = item(
                ItemQuantity.LEVEL,
                new ItemBuilder(DEFAULTS, new Repeatability(catalogue, bench(0.05)), DRIFT, Intent.UNCHANGED)
                        .of(catalogue.of("a").get(0), catalogue.of("b").get(0)));
        // s = 0.2 dB over three runs: 0.2/sqrt(3) in state a, 0.2 in state b with its one run.
        assertThat(level.change().asValue().orElseThrow().standardUncertainty())
                .isCloseTo(Math.hypot(0.11547, 0.2), within(1e-4));
        // Three runs leave two degrees of freedom: k = 4.53 (JCGM 100:2008, table G.2).
        assertThat(level.change().expandedUncertainty().orElseThrow())
                .isCloseTo(4.53 * Math.hypot(0.11547, 0.2), within(1e-3));
    }

    private static List<Item> items(Intent intent, MadeUpCapture a, MadeUpCapture b) {
        CaptureResult x = a.done();
        CaptureResult y = b.done();
        Catalogue catalogue = Catalogue.of(List.of(x, y), state -> "State " + state);
        return new ItemBuilder(DEFAULTS, new Repeatability(catalogue, bench(0.01)), DRIFT, intent)
                .of(catalogue.all().get(0), catalogue.all().get(1));
    }

    private static Item item(ItemQuantity quantity, List<Item> items) {
        Optional<Item> found =
                items.stream().filter(i -> i.quantity() == quantity).findFirst();
        return found.orElseThrow();
    }

    private static clipwitness.job.Bench bench(double knob) {
        OptionalDouble none = OptionalDouble.empty();
        return new clipwitness.job.Bench(none, none, none, none, List.of(), 0.03, knob, 0.005);
    }
}
