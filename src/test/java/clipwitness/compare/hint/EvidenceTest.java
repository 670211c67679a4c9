package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.noise.NoiseCatalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Devices;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What hints are drawn from: pairs of settings, the middle of the gain control, what the sheet says of the legs. */
class EvidenceTest {
    private static final String CLIPPER =
            "clipper: {topology: shunt, source-resistance: 10 kΩ, pairs: {before: [D1, D2], old: [%s], new: [null,"
                    + " null]}}\n";

    @TempDir
    private Path folder;

    private Evidence evidence(String sections, MadeUpCapture... made) throws IOException, InputException {
        List<CaptureResult> captures = Stream.of(made).map(MadeUpCapture::done).toList();
        Job job = new TestExamination(folder).job(sections);
        Catalogue waves = Catalogue.of(captures, job.sheet()::label);
        return new Evidence(
                job,
                waves,
                new Repeatability(waves, job.sheet().bench()),
                Devices.NONE,
                NoiseCatalogue.of(captures, job.sheet()::label));
    }

    private static State state(Evidence evidence, String name) {
        return evidence.job().sheet().states().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Optional<Double> middle(double... gains) throws IOException, InputException {
        Evidence evidence = evidence(
                "",
                DoubleStream.of(gains)
                        .mapToObj(g -> MadeUpCapture.ordinary("before", g))
                        .toArray(MadeUpCapture[]::new));
        List<StateAtCondition> settings = evidence.catalogue().of("before");
        return evidence.middle(settings.get(settings.size() - 1)).map(Catalogue::gain);
    }

    @Test
    void theMiddleIsTheSettingNearestToHalfWayBetweenTheEnds() throws IOException, InputException {
        assertThat(middle(0, 25, 50, 75, 100)).hasValue(50.0);
        assertThat(middle(50, 60, 80, 100)).hasValue(80.0); // of 75
        assertThat(middle(10, 70, 80)).hasValue(70.0); // of 45
        assertThat(middle(0, 10, 100)).hasValue(10.0);
        assertThat(middle(75, 100)).hasValue(75.0);
        assertThat(middle(100)).isEmpty();
    }

    @Test
    void thePairAtTheHighestGainOfBothStatesIsLookedAt() throws IOException, InputException {
        Evidence evidence = evidence(
                "",
                MadeUpCapture.ordinary("before", 50),
                MadeUpCapture.ordinary("before", 75),
                MadeUpCapture.ordinary("before", 25),
                MadeUpCapture.ordinary("old", 25),
                MadeUpCapture.ordinary("old", 75).with(WaveformQuantity.RMS, 1.4, 0.001),
                MadeUpCapture.ordinary("old", 100));
        Evidence.Pair top = evidence.highestPair(state(evidence, "old")).orElseThrow();
        assertThat(Catalogue.gain(top.from())).isEqualTo(75);
        assertThat(top.change(ItemValue.LEVEL).orElseThrow()).isCloseTo(6.0206, within(1e-4)); // twice 0.7 V
        assertThat(evidence.pairs(state(evidence, "old"))).hasSize(2);
        assertThat(evidence.highestPair(state(evidence, "new"))).isEmpty();
        assertThat(evidence.compared()).extracting(State::name).containsExactly("old", "new");
    }

    @Test
    void onlyPairsThatClippedBeforeCount() throws IOException, InputException {
        Evidence evidence = evidence(
                "",
                MadeUpCapture.ordinary("before", 50).with(WaveformQuantity.THD, 0.5, 0.01),
                MadeUpCapture.ordinary("before", 75),
                MadeUpCapture.ordinary("old", 50),
                MadeUpCapture.ordinary("old", 75));
        assertThat(evidence.clippedBefore(state(evidence, "old")))
                .extracting(p -> Catalogue.gain(p.from()))
                .containsExactly(75.0);
    }

    @ParameterizedTest
    @CsvSource({
        "'D3, D4', false, false",
        "'null, D4', true, false",
        "'D3, null', true, false",
        "'null, null', true, true"
    })
    void theSheetSaysWhichLegsAreOpen(String legs, boolean one, boolean both) throws IOException, InputException {
        Evidence evidence = evidence(CLIPPER.formatted(legs));
        assertThat(evidence.hasOpenLeg(state(evidence, "old"))).isEqualTo(one);
        assertThat(evidence.hasNoLeg(state(evidence, "old"))).isEqualTo(both);
    }

    @Test
    void aSheetWithoutClipperSaysNothingOfLegs() throws IOException, InputException {
        Evidence evidence = evidence("");
        assertThat(evidence.hasOpenLeg(state(evidence, "old"))).isFalse();
        assertThat(evidence.hasNoLeg(state(evidence, "old"))).isFalse();
    }
}
