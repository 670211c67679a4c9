package clipwitness.compare.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.VerticalRange;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ReadyItem;
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
import clipwitness.measure.response.ResponsePoint;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes of made-up gains over frequency, worked out by hand. */
class ResponseItemsTest {
    private static final String BENCH = "bench: {vertical-accuracy: 3 %, knob-repeatability: 1 %}\n";

    @TempDir
    private Path folder;

    private List<Item> items(String to, CaptureResult... captures) throws IOException, InputException {
        return new TestExamination(folder)
                .examined(BENCH, List.of(captures)).comparisons().stream()
                        .filter(c -> c.to().equals(to))
                        .map(Comparison::items)
                        .flatMap(List::stream)
                        .filter(i -> i.quantity() == ItemQuantity.RESPONSE)
                        .toList();
    }

    private static CaptureResult sine(String state, double frequency, double gain) {
        return MadeUpQuiet.of(state)
                .gain(50)
                .frequency(frequency)
                .export(state + frequency)
                .response(MadeUpQuiet.steady(MadeUpQuiet.point(frequency, gain, 0.03)));
    }

    private static CaptureResult sweep(String state, double gain, double uncertainty) {
        List<ResponsePoint> points = new ArrayList<>();
        for (int k = -12; k <= 12; k++) {
            points.add(MadeUpQuiet.point(1000 * Math.pow(2, k / 12.0), gain, uncertainty));
        }
        return MadeUpQuiet.of(state).gain(50).response(MadeUpQuiet.sweep(points));
    }

    private static double number(Item item) {
        return item.change().value().orElseThrow();
    }

    private static List<Double> frequencies(List<Item> items) {
        return items.stream().map(i -> i.condition().frequency().orElseThrow()).toList();
    }

    private static double share(Measured value, Source source) {
        return Math.sqrt(value.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(Contribution::standardUncertainty)
                .map(u -> u * u)
                .sum());
    }

    /** The limit is 0.5 dB; U = 2 * 0.03 * sqrt 2 = 0.085 dB. */
    @Test
    void eachFrequencyOfBothStatesIsOneItem() throws IOException, InputException {
        List<Item> items = items(
                "old",
                sine("before", 100, 10),
                sine("before", 1000, 20),
                sine("before", 5000, 15),
                sine("before", 8000, 15),
                sine("old", 100, 10.3),
                sine("old", 1000, 19),
                sine("old", 5000, 15.45),
                sine("old", 12_000, 15));
        assertThat(frequencies(items)).containsExactly(100.0, 1000.0, 5000.0);
        assertThat(items).extracting(Item::decision).containsExactly(Decision.PASS, Decision.FAIL, Decision.UNDECIDED);
        assertThat(number(items.get(0))).isCloseTo(0.3, within(1e-9));
        assertThat(number(items.get(1))).isCloseTo(-1, within(1e-9));
        assertThat(items.get(0).change().expandedUncertainty().orElseThrow()).isCloseTo(0.08485, within(1e-5));
        assertThat(items.get(0).condition().gainPercent()).hasValue(50);
        assertThat(items).allSatisfy(i -> assertThat(i.limit()).hasValue(0.5));
        assertThat(items.get(2).remedy()).isPresent();
    }

    @Test
    void ofAChangedStateTheResponseIsDescribed() throws IOException, InputException {
        assertThat(items("new", sine("before", 100, 10), sine("new", 100, 20)))
                .extracting(Item::decision)
                .containsExactly(Decision.DESCRIBED);
    }

    /** Points of a sweep lie a twelfth of an octave apart; from 500 Hz to 2 kHz every fourth is judged. */
    @Test
    void ofASweepThreePointsAnOctaveAreJudged() throws IOException, InputException {
        List<Item> items = items("old", sweep("before", 10, 0.03), sweep("old", 10.1, 0.03));
        assertThat(frequencies(items).stream().map(Math::round).toList())
                .containsExactly(500L, 630L, 794L, 1000L, 1260L, 1587L, 2000L);
        assertThat(items).allSatisfy(i -> {
            assertThat(number(i)).isCloseTo(0.1, within(1e-9));
            assertThat(i.decision()).isEqualTo(Decision.PASS);
        });
    }

    @Test
    void aSweepIsNotComparedWithSteadySines() throws IOException, InputException {
        assertThat(items("old", sweep("before", 10, 0.03), sine("old", 1000, 10)))
                .isEmpty();
    }

    @Test
    void aPointThatWasRefusedStaysOpenOfASineAndIsLeftOutOfASweep() throws IOException, InputException {
        CaptureResult hidden =
                MadeUpQuiet.of("old").gain(50).frequency(100).response(MadeUpQuiet.steady(MadeUpQuiet.hidden(100)));
        List<Item> items = items("old", sine("before", 100, 10), hidden);
        assertThat(items).extracting(Item::decision).containsExactly(Decision.UNDECIDED);
        assertThat(Said.reason(items.get(0).change().reason()).orElseThrow()).contains("old pair");
        CaptureResult before =
                MadeUpQuiet.of("before").gain(50).frequency(100).response(MadeUpQuiet.steady(MadeUpQuiet.hidden(100)));
        assertThat(Said.reason(items("old", before, sine("old", 100, 10))
                                .get(0)
                                .change()
                                .reason())
                        .orElseThrow())
                .contains("as it came");
        CaptureResult sweep = MadeUpQuiet.of("old")
                .gain(50)
                .response(MadeUpQuiet.sweep(List.of(MadeUpQuiet.hidden(500), MadeUpQuiet.point(1000, 10, 0.03))));
        assertThat(frequencies(items("old", sweep("before", 10, 0.03), sweep))).containsExactly(1000.0);
    }

    /** Captured at two ranges, each with a bound of 3 %: 8.686 dB * 3 % * sqrt 2 / sqrt 3. */
    @Test
    void theVerticalAccuracyCountsWhereRangeOrInstrumentDiffer() throws IOException, InputException {
        assertThat(accuracy(range("before", 0.1), range("old", 0.1))).isZero();
        assertThat(accuracy(range("before", 0.1), range("old", 0.2))).isCloseTo(0.21276, within(1e-4));
        CaptureResult other = MadeUpQuiet.of("old")
                .instrument("other")
                .response(MadeUpQuiet.response(List.of(accurate()), false, division(0.1)));
        assertThat(accuracy(range("before", 0.1), other)).isCloseTo(0.21276, within(1e-4));
    }

    private static ResponsePoint accurate() {
        ResponsePoint point = MadeUpQuiet.point(1000, 10, 0.03);
        Measured gain = point.gain().asValue().orElseThrow().plus(Source.VERTICAL_ACCURACY, 0.7);
        return new ResponsePoint(1000, gain, point.phase(), point.coherence());
    }

    private static VerticalRange division(double volts) {
        return new VerticalRange(OptionalDouble.of(volts), OptionalDouble.empty());
    }

    private static CaptureResult range(String state, double volts) {
        return MadeUpQuiet.of(state).response(MadeUpQuiet.response(List.of(accurate()), false, division(volts)));
    }

    private double accuracy(CaptureResult before, CaptureResult old) throws IOException, InputException {
        return share(items("old", before, old).get(0).change(), Source.VERTICAL_ACCURACY);
    }

    @Test
    void replicatesAreAveragedAndOneExportCountsOnce() throws IOException, InputException {
        CaptureResult first = sine("before", 100, 10);
        CaptureResult second = MadeUpQuiet.of("before")
                .gain(50)
                .frequency(100)
                .export("second")
                .run(2)
                .response(MadeUpQuiet.steady(MadeUpQuiet.point(100, 12, 0.03)));
        var results = new TestExamination(folder).examined(BENCH, List.of(first, first, second));
        ResponsePoint mean = results.responses().get(0).curve().points().get(0);
        assertThat(mean.gain().value().orElseThrow()).isCloseTo(11, within(1e-9));
        assertThat(mean.phase().value().orElseThrow()).isCloseTo(-1.1, within(1e-9));
        assertThat(mean.gain().asValue().orElseThrow().standardUncertainty())
                .isCloseTo(0.03 / Math.sqrt(2), within(1e-9));
        assertThat(results.responses()).hasSize(1);
        assertThat(results.responses().get(0).swept()).isFalse();
        assertThat(results.responses().get(0).condition().frequency()).isEmpty();
    }

    private ResponseItems source(CaptureResult... captures) throws IOException, InputException {
        Job job = new TestExamination(folder).job(BENCH);
        Catalogue waves = Catalogue.of(List.of(captures), job.sheet()::label);
        return new ResponseItems(
                job.sheet(),
                ResponseCatalogue.of(List.of(captures), job.sheet()::label),
                waves,
                new Repeatability(waves, job.sheet().bench()));
    }

    @Test
    void whyThereIsNoItemIsSaid() throws IOException, InputException {
        CaptureResult before = sine("before", 100, 10);
        assertThat(source(before).whyNot(ItemQuantity.NOISE, "before", "old")).isEmpty();
        assertThat(Said.reason(source(before).whyNot(ItemQuantity.RESPONSE, "before", "old")))
                .hasValueSatisfying(s -> assertThat(s).contains("old pair").contains("response"));
        assertThat(Said.reason(source(sine("old", 100, 10)).whyNot(ItemQuantity.RESPONSE, "before", "old")))
                .hasValueSatisfying(s -> assertThat(s).contains("as it came"));
        var other = source(before, MadeUpQuiet.of("old").response(MadeUpQuiet.steady(MadeUpQuiet.point(100, 1, 0))))
                .whyNot(ItemQuantity.RESPONSE, "before", "old");
        CaptureResult same = MadeUpQuiet.of("old")
                .gain(50)
                .frequency(100)
                .export("before100.0")
                .response(MadeUpQuiet.steady(MadeUpQuiet.point(100, 1, 0)));
        var shared = source(before, same).whyNot(ItemQuantity.RESPONSE, "before", "old");
        assertThat(Said.reason(other)).isPresent().isNotEqualTo(Said.reason(shared));
        assertThat(items("old", before, same)).isEmpty();
    }

    /** Amplitude gain 5, 10, 15 at 25, 50, 75 %: at a knob of 1 % 0.1737 dB in each state. */
    @Test
    void settingTheGainAgainMovesTheResponse() throws IOException, InputException {
        List<CaptureResult> captures = new ArrayList<>(List.of(sine("before", 100, 10), sine("old", 100, 10)));
        for (String state : List.of("before", "old")) {
            captures.add(wave(state, 25, 13.9794));
            captures.add(wave(state, 50, 20));
            captures.add(wave(state, 75, 23.5218));
        }
        Item item = items("old", captures.toArray(CaptureResult[]::new)).get(0);
        assertThat(share(item.change(), Source.KNOB)).isCloseTo(0.1737 * Math.sqrt(2), within(2e-3));
    }

    private static CaptureResult wave(String state, double gainPercent, double smallSignalGain) {
        return MadeUpCapture.capture(state)
                .gain(gainPercent)
                .with(WaveformQuantity.RMS, 0.7, 0.001)
                .with(WaveformQuantity.SMALL_SIGNAL_GAIN, smallSignalGain, 0.01)
                .done();
    }

    private List<ReadyItem> ready(CaptureResult... captures) throws IOException, InputException {
        Job job = new TestExamination(folder).job(BENCH);
        Catalogue waves = Catalogue.of(List.of(captures), job.sheet()::label);
        return new ResponseReadiness(
                        job.sheet(),
                        ResponseCatalogue.of(List.of(captures), job.sheet()::label),
                        waves,
                        new Repeatability(waves, job.sheet().bench()))
                .of("before");
    }

    /** U = 2 sqrt 2 u: 0.0849 dB of 0.03 dB and 0.849 dB of 0.3 dB; the limit is 0.5 dB. */
    @Test
    void whatShowsIsSaidOfTheFrequencyThatTellsLeast() throws IOException, InputException {
        CaptureResult uncertain = MadeUpQuiet.of("before")
                .gain(50)
                .frequency(9000)
                .export("uncertain")
                .response(MadeUpQuiet.steady(MadeUpQuiet.point(9000, 10, 0.3)));
        List<ReadyItem> items = ready(sine("before", 100, 10), uncertain, sine("old", 1000, 10));
        assertThat(items).hasSize(1);
        ReadyItem worst = items.get(0);
        assertThat(worst.quantity()).isEqualTo(ItemQuantity.RESPONSE);
        assertThat(worst.condition().frequency()).hasValue(9000);
        assertThat(worst.condition().gainPercent()).hasValue(50);
        assertThat(worst.smallestChange().value().orElseThrow()).isCloseTo(0.84853, within(1e-4));
        assertThat(worst.smallestChange().unit()).isEqualTo(Unit.DECIBEL);
        assertThat(worst.sufficient()).isFalse();
        assertThat(worst.remedy()).isPresent();
        ReadyItem good = ready(sine("before", 100, 10)).get(0);
        assertThat(good.sufficient()).isTrue();
        assertThat(good.remedy()).isEmpty();
        assertThat(good.limit()).isEqualTo(0.5);
    }

    @Test
    void aSineThatNoiseHidesTellsNothing() throws IOException, InputException {
        CaptureResult hidden =
                MadeUpQuiet.of("before").gain(50).frequency(50).response(MadeUpQuiet.steady(MadeUpQuiet.hidden(50)));
        ReadyItem item = ready(sine("before", 100, 10), hidden).get(0);
        assertThat(item.condition().frequency()).hasValue(50);
        assertThat(item.sufficient()).isFalse();
        assertThat(item.smallestChange().reason()).isPresent();
        assertThat(item.remedy()).isPresent();
        CaptureResult sweep = MadeUpQuiet.of("before")
                .response(MadeUpQuiet.sweep(List.of(MadeUpQuiet.hidden(500), MadeUpQuiet.point(1000, 10, 0.03))));
        assertThat(ready(sweep).get(0).condition().frequency()).hasValue(1000);
    }
}
