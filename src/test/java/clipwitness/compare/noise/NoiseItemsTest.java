package clipwitness.compare.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestExamination;
import clipwitness.job.Job;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One record of hiss, made louder by a known factor, and lines of the mains of known amplitude: changes worked out by hand. */
class NoiseItemsTest {
    private static final String MAINS = "bench: {mains: 50 Hz, knob-repeatability: 1 %}\n";

    /** 20 lg 2. */
    private static final double TWICE = 6.0206;

    @TempDir
    private Path folder;

    private List<Item> items(String to, ItemQuantity quantity, CaptureResult... captures)
            throws IOException, InputException {
        return new TestExamination(folder)
                .examined(MAINS, List.of(captures)).comparisons().stream()
                        .filter(c -> c.to().equals(to))
                        .flatMap(c -> c.items().stream())
                        .filter(i -> i.quantity() == quantity)
                        .toList();
    }

    private static CaptureResult hiss(String state, double factor) {
        return MadeUpQuiet.of(state).gain(50).noise(MadeUpQuiet.hiss(factor));
    }

    private static CaptureResult humming(String state, double... amplitudes) {
        return MadeUpQuiet.of(state).gain(50).noise(MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, amplitudes)));
    }

    private static CaptureResult wave(String state, double gainPercent, double smallSignalGain) {
        return MadeUpCapture.ordinary(state, gainPercent)
                .with(WaveformQuantity.SMALL_SIGNAL_GAIN, smallSignalGain, 0.01)
                .done();
    }

    private static double number(Item item) {
        return item.change().value().orElseThrow();
    }

    private static double share(Measured value, Source source) {
        return Math.sqrt(value.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(Contribution::standardUncertainty)
                .map(u -> u * u)
                .sum());
    }

    private static Job job(Path folder) throws IOException, InputException {
        return new TestExamination(folder).job(MAINS);
    }

    private static NoiseItems source(Job job, CaptureResult... captures) {
        Catalogue waves = Catalogue.of(List.of(captures), job.sheet()::label);
        return new NoiseItems(
                job,
                NoiseCatalogue.of(List.of(captures), job.sheet()::label),
                waves,
                new Repeatability(waves, job.sheet().bench()));
    }

    private String whyNot(ItemQuantity quantity, CaptureResult... captures) throws IOException, InputException {
        return Said.reason(source(job(folder), captures).whyNot(quantity, "before", "old"))
                .orElseThrow();
    }

    @Test
    void theSameHissOfTwiceTheVoltsIsSixDecibelsMoreByBothFiguresAndFails() throws IOException, InputException {
        List<Item> noise = items("old", ItemQuantity.NOISE, hiss("before", 1), hiss("old", 2));
        assertThat(noise).extracting(Item::decision).containsExactly(Decision.FAIL, Decision.FAIL);
        assertThat(noise)
                .extracting(i -> i.subject().map(ItemSubject::key).orElseThrow())
                .containsExactly("rms", "aWeighted");
        assertThat(noise).allSatisfy(i -> {
            assertThat(number(i)).isCloseTo(TWICE, within(1e-4));
            assertThat(i.limit()).hasValue(2);
            assertThat(i.condition().gainPercent()).hasValue(50);
            assertThat(i.conformanceProbability().orElseThrow()).isLessThan(1e-6);
        });
    }

    /** White hiss of 4000 samples, half a second, in a band of 20 Hz to 3.6 kHz: relative uncertainty near 1 / (2 sqrt(B T)) = 1.2 % of each rms. */
    @Test
    void theUncertaintyOfAChangeIsThatOfTwoRecordsOfSuchALength() throws IOException, InputException {
        Item rms = items("old", ItemQuantity.NOISE, hiss("before", 1), hiss("old", 2))
                .get(0);
        double oneRecord = 8.685889638 / (2 * Math.sqrt(3580 * 0.5));
        assertThat(share(rms.change(), Source.NOISE))
                .isBetween(0.7 * Math.sqrt(2) * oneRecord, 1.6 * Math.sqrt(2) * oneRecord);
    }

    @Test
    void lessHissPasses() throws IOException, InputException {
        List<Item> noise = items("old", ItemQuantity.NOISE, hiss("before", 2), hiss("old", 1));
        assertThat(noise).extracting(Item::decision).containsExactly(Decision.PASS, Decision.PASS);
        assertThat(noise).allSatisfy(i -> assertThat(number(i)).isCloseTo(-TWICE, within(1e-4)));
    }

    /** Gain 20 dB before and 26.02 dB now: hiss of twice the volts at the output is the same hiss at the input. */
    @Test
    void ofAChangedStateNoiseIsJudgedAtTheInput() throws IOException, InputException {
        List<Item> noise = items(
                "new",
                ItemQuantity.NOISE,
                hiss("before", 1),
                hiss("new", 2),
                wave("before", 50, 20),
                wave("new", 50, 20 + TWICE));
        assertThat(noise).extracting(Item::decision).containsExactly(Decision.PASS, Decision.PASS);
        assertThat(noise).allSatisfy(i -> assertThat(number(i)).isCloseTo(0, within(1e-4)));
    }

    @Test
    void withoutAGainOfBothStatesNoiseOfAChangedStateIsDescribedAtTheOutput() throws IOException, InputException {
        CaptureResult[] noise = {hiss("before", 1), hiss("new", 2)};
        assertThat(items("new", ItemQuantity.NOISE, noise[0], noise[1], wave("before", 50, 20)))
                .allSatisfy(i -> {
                    assertThat(i.decision()).isEqualTo(Decision.DESCRIBED);
                    assertThat(number(i)).isCloseTo(TWICE, within(1e-4));
                });
        assertThat(items("new", ItemQuantity.NOISE, noise[0], noise[1], wave("before", 25, 20), wave("new", 50, 20)))
                .extracting(Item::decision)
                .containsExactly(Decision.DESCRIBED, Decision.DESCRIBED);
    }

    /** 3 % is a bound, u = 3 % / sqrt 3 of each record; of two records sqrt 2 times that is 2.449 %, 0.2128 dB. */
    @Test
    void theVerticalAccuracyCountsOnlyWhereRangeOrInstrumentDiffer() throws IOException, InputException {
        NoiseResult fine = MadeUpQuiet.hiss(1, Optional.of(0.01), 0.03);
        NoiseResult coarse = MadeUpQuiet.hiss(1, Optional.of(0.02), 0.03);
        MadeUpQuiet before = MadeUpQuiet.of("before");
        MadeUpQuiet old = MadeUpQuiet.of("old");
        assertThat(accuracy(before.noise(fine), old.noise(fine))).isZero();
        assertThat(accuracy(before.noise(fine), old.noise(coarse))).isCloseTo(0.21276, within(1e-4));
        assertThat(accuracy(before.noise(fine), old.instrument("other").noise(fine)))
                .isCloseTo(0.21276, within(1e-4));
    }

    private double accuracy(CaptureResult before, CaptureResult old) throws IOException, InputException {
        return share(items("old", ItemQuantity.NOISE, before, old).get(0).change(), Source.VERTICAL_ACCURACY);
    }

    /** Amplitude gain 5, 10, 15 at 25, 50, 75 %: 0.2 a percent of 10, 8.686 dB * 0.02 = 0.1737 dB at a knob of 1 %, in both states. */
    @Test
    void settingTheGainAgainMovesTheNoiseAsItMovesTheGain() throws IOException, InputException {
        Item rms = items(
                        "old",
                        ItemQuantity.NOISE,
                        hiss("before", 1),
                        hiss("old", 1),
                        wave("before", 25, 13.9794),
                        wave("before", 50, 20),
                        wave("before", 75, 23.5218),
                        wave("old", 25, 13.9794),
                        wave("old", 50, 20),
                        wave("old", 75, 23.5218))
                .get(0);
        assertThat(share(rms.change(), Source.KNOB)).isCloseTo(0.1737 * Math.sqrt(2), within(2e-3));
    }

    /** 3 and 4 mV before, 6, 8 and 10 mV now: 25 and 200, ten times the logarithm of 8. A fourth line was not looked for before. */
    @Test
    void humIsTheSumOfTheLinesThatStandOutInEitherStateAndWereLookedForInBoth() throws IOException, InputException {
        List<Item> hum = items(
                "old", ItemQuantity.HUM, humming("before", 3e-3, 4e-3, 0), humming("old", 6e-3, 8e-3, 10e-3, 50e-3));
        assertThat(hum).hasSize(1);
        assertThat(number(hum.get(0))).isCloseTo(9.0309, within(1e-3));
        assertThat(hum.get(0).decision()).isEqualTo(Decision.FAIL);
        assertThat(hum.get(0).limit()).hasValue(3);
    }

    @Test
    void aLineThatWentCountsAsHumOfBefore() throws IOException, InputException {
        Item hum = items("old", ItemQuantity.HUM, humming("before", 3e-3, 4e-3), humming("old", 3e-3, 0))
                .get(0);
        assertThat(number(hum)).isCloseTo(-4.4370, within(1e-3)); // 10 lg (9 / 25)
        assertThat(hum.decision()).isEqualTo(Decision.PASS);
    }

    @Test
    void humIsJudgedInAChangedStateToo() throws IOException, InputException {
        assertThat(items("new", ItemQuantity.HUM, humming("before", 3e-3), humming("new", 6e-3)))
                .extracting(Item::decision)
                .containsExactly(Decision.FAIL);
    }

    /** Two captures of 3 and 5 mV have a mean square of 17 (mV)². */
    @Test
    void replicatesAreAveragedByTheirPower() throws IOException, InputException {
        CaptureResult second = MadeUpQuiet.of("before")
                .gain(50)
                .export("second")
                .noise(MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, 5e-3)));
        Item hum = items("old", ItemQuantity.HUM, humming("before", 3e-3), second, humming("old", 34e-3))
                .get(0);
        assertThat(number(hum)).isCloseTo(18.3251, within(1e-3)); // 10 lg (1156 / 17)
    }

    @Test
    void aRecordThatIsTooShortLeavesTheChangeOpenAndSaysWhichStateToCaptureAgain() throws IOException, InputException {
        CaptureResult shortRecord = MadeUpQuiet.of("old").gain(50).noise(MadeUpQuiet.tooShort());
        List<Item> noise = items("old", ItemQuantity.NOISE, hiss("before", 1), shortRecord);
        assertThat(noise).hasSize(2).allSatisfy(i -> {
            assertThat(i.decision()).isEqualTo(Decision.UNDECIDED);
            assertThat(Said.reason(i.change().reason()).orElseThrow()).contains("old pair");
            assertThat(Said.remark(i.remedy())).isPresent();
        });
        CaptureResult shortBefore = MadeUpQuiet.of("before").gain(50).noise(MadeUpQuiet.tooShort());
        assertThat(Said.reason(items("old", ItemQuantity.NOISE, shortBefore, hiss("old", 1))
                                .get(0)
                                .change()
                                .reason())
                        .orElseThrow())
                .contains("as it came");
        assertThat(items("old", ItemQuantity.HUM, shortBefore, humming("old", 3e-3)))
                .extracting(Item::decision)
                .containsExactly(Decision.UNDECIDED);
    }

    @Test
    void whyThereIsNoItemIsSaid() throws IOException, InputException {
        Job job = job(folder);
        CaptureResult before = hiss("before", 1);
        assertThat(source(job, before, hiss("old", 1)).whyNot(ItemQuantity.LEVEL, "before", "old"))
                .isEmpty();
        assertThat(whyNot(ItemQuantity.NOISE, before)).contains("noise").contains("old pair");
        assertThat(whyNot(ItemQuantity.HUM, hiss("old", 1))).contains("as it came");
        String same = whyNot(
                ItemQuantity.NOISE,
                before,
                MadeUpQuiet.of("old").gain(50).export("export of before").noise(MadeUpQuiet.hiss(1)));
        String other =
                whyNot(ItemQuantity.HUM, before, MadeUpQuiet.of("old").gain(75).noise(MadeUpQuiet.hiss(1)));
        assertThat(same).isNotEqualTo(other).contains("old pair").contains("as it came");
    }

    @Test
    void whyHumIsNotExaminedIsSaidByTheMains() throws IOException, InputException {
        assertThat(whyNot(ItemQuantity.HUM, hiss("before", 1), hiss("old", 1))).containsPattern("50.Hz");
        CaptureResult shortRecord = MadeUpQuiet.of("old").gain(50).noise(MadeUpQuiet.tooShort());
        assertThat(whyNot(ItemQuantity.HUM, hiss("before", 1), shortRecord)).contains("Old pair");
        Job unknown = new TestExamination(folder).job("");
        assertThat(Said.reason(
                        source(unknown, hiss("before", 1), hiss("old", 1)).whyNot(ItemQuantity.HUM, "before", "old")))
                .hasValueSatisfying(s -> assertThat(s).doesNotContainPattern("50.Hz"));
        CaptureResult elsewhere =
                MadeUpQuiet.of("new").noise(MadeUpQuiet.hiss(1).withHum(MadeUpQuiet.hum(50, 1e-3)));
        assertThat(Said.reason(source(unknown, hiss("before", 1), hiss("old", 1), elsewhere)
                        .whyNot(ItemQuantity.HUM, "before", "old")))
                .hasValueSatisfying(s -> assertThat(s).containsPattern("50.Hz"));
    }

    @Test
    void oneExportListedTwiceIsOneCaptureAndARunIsAnOccasion() {
        CaptureResult first = hiss("before", 1);
        CaptureResult second =
                MadeUpQuiet.of("before").gain(50).export("second").run(2).noise(MadeUpQuiet.hiss(3));
        CaptureResult third =
                MadeUpQuiet.of("before").gain(50).export("third").run(2).noise(MadeUpQuiet.tooShort());
        CaptureResult elsewhere =
                MadeUpQuiet.of("before").gain(75).export("fourth").noise(MadeUpQuiet.hiss(1));
        NoiseCatalogue catalogue = NoiseCatalogue.of(
                List.of(wave("before", 50, 20), third, first, first, second, elsewhere, hiss("old", 1)),
                s -> "State " + s);
        assertThat(catalogue.all()).hasSize(3);
        assertThat(catalogue.of("before")).hasSize(2);
        Condition half =
                new Condition(OptionalDouble.of(50), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
        NoiseAtCondition setting = catalogue.at("before", half).orElseThrow();
        assertThat(setting.replicates()).containsExactly(third, first, second);
        assertThat(setting.label()).isEqualTo("State before");
        assertThat(setting.runs()).isEqualTo(2);
        assertThat(setting.first()).isEqualTo(first.noise().orElseThrow());
        double one = MadeUpQuiet.hiss(1).values().get(NoiseFigure.RMS).value().orElseThrow();
        assertThat(setting.figure(NoiseFigure.RMS).value().orElseThrow()).isCloseTo(2 * one, within(1e-9));
        assertThat(catalogue.pairs("before", "old")).hasSize(1);
        assertThat(catalogue.pairs("old", "before")).hasSize(1);
        assertThat(catalogue.at("new", half)).isEmpty();
    }

    @Test
    void theNoiseOfAStateIsListedAtTheOutputAndDividedByTheGain() throws IOException, InputException {
        var results = new TestExamination(folder)
                .examined(MAINS, List.of(humming("before", 3e-3, 0), wave("before", 50, 20), hiss("old", 1)));
        var before = results.noise().get(0);
        double output =
                MadeUpQuiet.hiss(1).values().get(NoiseFigure.RMS).value().orElseThrow();
        double relative = share(MadeUpQuiet.hiss(1).values().get(NoiseFigure.RMS), Source.NOISE) / output;
        assertThat(before.values().get(NoiseFigure.RMS).value().orElseThrow()).isCloseTo(output, within(1e-12));
        Measured input = before.atInput().get(NoiseFigure.RMS);
        assertThat(input.unit()).isEqualTo(Unit.VOLT);
        assertThat(input.value().orElseThrow()).isCloseTo(output / 10, within(1e-12));
        // 0.01 dB of the gain is 0.115 %
        assertThat(share(input, Source.NOISE) / (output / 10))
                .isCloseTo(Math.hypot(relative, 0.00115129), within(1e-6));
        assertThat(before.hum().get(0).level().value().orElseThrow()).isCloseTo(2.12132e-3, within(1e-7));
        assertThat(before.hum().get(1).level().value()).isEmpty();
        assertThat(before.mains().orElseThrow().number()).isEqualTo(50.02);
        assertThat(before.band()).isPresent();
        assertThat(before.spectrum()).isPresent();
        assertThat(before.condition().gainPercent()).hasValue(50);
        var old = results.noise().get(1);
        assertThat(old.state()).isEqualTo("old");
        assertThat(old.atInput().get(NoiseFigure.A_WEIGHTED).reason()).isPresent();
        assertThat(old.mains()).isEmpty();
    }
}
