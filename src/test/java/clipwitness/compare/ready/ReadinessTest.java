package clipwitness.compare.ready;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.VerticalRange;
import clipwitness.compare.result.Missing;
import clipwitness.compare.result.ReadyItem;
import clipwitness.compare.result.ReadyResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestExamination;
import clipwitness.job.CaptureKind;
import clipwitness.job.read.JobReader;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What captures before the work can tell: JCGM 106 asks how large an uncertainty a limit allows. */
class ReadinessTest {
    private static final String NO_NOISE = "no-noise-capture";
    private static final String NO_RESPONSE = "no-response-capture";

    @TempDir
    private Path folder;

    /** Two captures known to 0.1 % each differ by sqrt 2 times 0.1 %: k = 2 gives 8.686 dB times 0.002828 = 0.02457 dB. */
    @Test
    void twoLevelsKnownToATenthOfAPercentTellAChangeOf0Point0246Decibels() throws IOException, InputException {
        ReadyItem level = item(ready("", end().with(WaveformQuantity.RMS, 1, 0.001)), ItemQuantity.LEVEL);
        assertThat(level.smallestChange().value().orElseThrow()).isCloseTo(0.02457, within(1e-5));
        assertThat(level.sufficient()).isTrue();
        assertThat(Said.remark(level.remedy())).isEmpty();
    }

    /** 3 % each: 0.737 dB, more than the limit of 0.5 dB. A unit that stays what it is moves by half of that, so 1.5 of it is to lie within the limit: 1.5² 0.737² / 0.5² = 4.89. */
    @Test
    void aLimitThatNoiseHidesIsNotSufficientAndSaysWhatWouldBe() throws IOException, InputException {
        ReadyResult result = ready("", end().with(WaveformQuantity.RMS, 1, 0.03));
        ReadyItem level = item(result, ItemQuantity.LEVEL);
        assertThat(level.smallestChange().value().orElseThrow()).isCloseTo(0.737, within(1e-3));
        assertThat(level.sufficient()).isFalse();
        assertThat(Said.remark(level.remedy()))
                .hasValue("Capture each state with a record 5 times as long, or average 5 captures: noise hides the"
                        + " change.");
        assertThat(result.sufficient()).isFalse();
    }

    @Test
    void aFigureThatWasRefusedIsNotSufficient() throws IOException, InputException {
        ReadyItem level =
                item(ready("", end().refused(WaveformQuantity.RMS, DoubtReason.NO_FUNDAMENTAL)), ItemQuantity.LEVEL);
        assertThat(Said.reason(level.smallestChange().reason()))
                .hasValue("for as it came, no periodic line stands above the noise");
        assertThat(level.sufficient()).isFalse();
        assertThat(Said.remark(level.remedy()))
                .hasValue("Capture it again: for as it came, no periodic line stands above the noise.");
    }

    /**
     * Noise of 0.1 mV in each of the six coefficients of two 1 V waves is sqrt 12 times 0.1 mV, -69.2 dB, and with k = 2 less than twice
     * that: far below the limit of -32 dB.
     */
    @Test
    void aQuietWaveShowsADifferenceFarBelowTheLimitOfTheNull() throws IOException, InputException {
        ReadyItem depth = item(ready("", end()), ItemQuantity.NULL_DEPTH);
        assertThat(depth.smallestChange().value().orElseThrow()).isBetween(-69.2, -63.2);
        assertThat(depth.sufficient()).isTrue();
    }

    /**
     * A third harmonic of 0, 0.1 and 0.2 of the fundamental at 0, 50 and 100 %: 0.002 for one percent, to which the knob is set, as eight degrees of
     * freedom tell. Of two captures that is 0.002 sqrt 2, with Student's factor of 2.37 (JCGM 100, table G.2) 0.0067 or -43.5 dB at half gain; at the end stops the noise
     * alone counts.
     */
    @Test
    void betweenTheStopsTheKnobLimitsWhatANullCanShow() throws IOException, InputException {
        ReadyResult result = ready(
                "",
                MadeUpCapture.ordinary("before", 0).harmonics(1, 0, 0),
                MadeUpCapture.ordinary("before", 50).harmonics(1, 0, 0.1),
                MadeUpCapture.ordinary("before", 100).harmonics(1, 0, 0.2));
        assertThat(smallestNull(result, 50)).isBetween(-43.9, -43.2);
        assertThat(smallestNull(result, 0)).isLessThan(-60);
        assertThat(smallestNull(result, 100)).isLessThan(-60);
    }

    private static double smallestNull(ReadyResult result, double gain) {
        return result.items().stream()
                .filter(i -> i.quantity() == ItemQuantity.NULL_DEPTH
                        && i.condition().gainPercent().orElseThrow() == gain)
                .findFirst()
                .orElseThrow()
                .smallestChange()
                .value()
                .orElseThrow();
    }

    @Test
    void distortionUnderOnePercentIsNotJudgedAndNotAsked() throws IOException, InputException {
        assertThat(ready("", end().with(WaveformQuantity.THD, 0.5, 0.01)).items())
                .extracting(ReadyItem::quantity)
                .containsExactly(
                        ItemQuantity.LEVEL, ItemQuantity.ASYMMETRY, ItemQuantity.CREST_FACTOR, ItemQuantity.NULL_DEPTH);
    }

    @Test
    void withoutCapturesThereIsNothingToCompareWith() throws IOException, InputException {
        ReadyResult result = ready("");
        assertThat(result.sufficient()).isFalse();
        assertThat(result.missing().get(0))
                .extracting(Missing::code, Said::missing, Missing::grave)
                .containsExactly(
                        "no-waveform",
                        "As it came: it has no waveform capture. Capture the test tone at several positions of the gain "
                                + "control, input and output together.",
                        true);
    }

    @Test
    void whatIsMissingComesMostImportantFirst() throws IOException, InputException {
        MadeUpCapture clipped = MadeUpCapture.ordinary("before", 100)
                .doubting(Doubt.of(
                        Severity.REFUSAL, DoubtReason.OVER_RANGE, Argument.count(7), Argument.word(Word.UPPER_HALF)));
        ReadyResult result = ready("", clipped);
        assertThat(result.missing())
                .extracting(Missing::code)
                .containsExactly(
                        "over-range", "one-gain-setting", "no-replicate", "no-input-channel", NO_NOISE, NO_RESPONSE);
        assertThat(Said.missing(result.missing().get(0)))
                .isEqualTo(
                        "captures/before.csv: runs of up to 7 samples lie on the upper end of the converter's range.");
        assertThat(result.sufficient()).isFalse();
    }

    /** Measurement book, section 1: the sheet states 100 mV, and more than 5 % beside it is a doubt. */
    @Test
    void aGeneratorThatIsNotSetAsTheSheetSaysIsToBeSet() throws IOException, InputException {
        assertThat(ready("", full(100, 1).with(WaveformQuantity.INPUT_FUNDAMENTAL, 0.12, 1e-5))
                        .missing())
                .extracting(Said::missing)
                .contains("captures/before.csv: the input measures 120.0 mV peak where the sheet states 100.0 mV.");
    }

    @Test
    void settingsRunsAndInputSilenceTheirLines() throws IOException, InputException {
        ReadyResult result = ready("", full(0, 1), full(0, 2), full(100, 1));
        assertThat(result.missing()).extracting(Missing::code).containsExactly(NO_NOISE, NO_RESPONSE);
        assertThat(result.sufficient()).isTrue();
    }

    @Test
    void aLimitOnTheSheetMakesItsCaptureANeed() throws IOException, InputException {
        ReadyResult result = ready("limits: {noise: 2 dB}\n", full(0, 1), full(0, 2), full(100, 1));
        assertThat(result.missing())
                .filteredOn(Missing::grave)
                .extracting(Said::missing)
                .containsExactly(
                        "As it came: it has no noise capture. Terminate the input and capture the output for at least 5 "
                                + "periods of the mains, or noise and hum cannot be compared.");
        assertThat(result.sufficient()).isFalse();
    }

    /** 120 codes of 256 at 0.5 V a division: the next range, 0.2 V, is 2.5 times finer and ends at 102 of them. */
    @Test
    void aFinerRangeThatWouldNotHoldTheWaveIsNotAdvised() throws IOException, InputException {
        for (double perDivision : new double[] {0.5, 0.2}) {
            MadeUpCapture half = full(100, 1)
                    .with(WaveformQuantity.PEAK_UP, 0.6, 0.001)
                    .with(WaveformQuantity.PEAK_DOWN, 0.6, 0.001)
                    .range(new VerticalRange(OptionalDouble.of(perDivision), OptionalDouble.of(0.01)));
            assertThat(ready("", half).missing().stream().anyMatch(m -> m.code().equals("screen-half-empty")))
                    .isEqualTo(perDivision == 0.2);
        }
    }

    @Test
    void aUnitWithoutAGainControlIsNotToBeCapturedAtMorePositions() throws IOException, InputException {
        assertThat(ready(
                                "",
                                MadeUpCapture.capture("before")
                                        .with(WaveformQuantity.GAIN, 20, 0.01)
                                        .harmonics(1, 0.1))
                        .missing())
                .extracting(Missing::code)
                .doesNotContain("one-gain-setting", "no-replicate");
    }

    /** 60 codes of 256. */
    @Test
    void aWaveOnAQuarterOfTheScreenIsSaid() throws IOException, InputException {
        MadeUpCapture small = full(100, 1)
                .with(WaveformQuantity.PEAK_UP, 0.3, 0.001)
                .with(WaveformQuantity.PEAK_DOWN, 0.3, 0.001)
                .range(new VerticalRange(OptionalDouble.empty(), OptionalDouble.of(0.01)));
        assertThat(ready("", small).missing())
                .extracting(Said::missing)
                .contains(
                        "captures/before.csv: the wave fills 23 % of the converter's range: a finer vertical range would"
                                + " halve its steps.");
    }

    /** 60 codes are a quarter of 256 and a sixty-eighth of 4096. */
    @Test
    void theBitsAreThoseOfTheInstrumentThatTheCaptureNames() throws IOException, InputException {
        String sheet = "bench: {instruments: [{name: old scope, bits: 8}, {name: scope, bits: 12}]}\n";
        MadeUpCapture small = full(100, 1)
                .with(WaveformQuantity.PEAK_UP, 0.3, 0.001)
                .with(WaveformQuantity.PEAK_DOWN, 0.3, 0.001)
                .range(new VerticalRange(OptionalDouble.empty(), OptionalDouble.of(0.01)));
        assertThat(ready(sheet, small.instrument("scope")).missing())
                .extracting(Said::missing)
                .anyMatch(m -> m.contains("the wave fills 1 % of the converter's range"));
        assertThat(ready(sheet, small.instrument("old scope")).missing())
                .extracting(Said::missing)
                .anyMatch(m -> m.contains("the wave fills 23 % of the converter's range"));
    }

    /** Five periods of 50 Hz are 100 ms, of 60 Hz 83.3 ms; a record of 99,000 samples at 1 MSa/s lasts 99 ms. */
    @Test
    void aNoiseCaptureUnderFivePeriodsOfTheMainsIsTooShort() throws IOException, InputException {
        MadeUpCapture noise = full(100, 1).kind(CaptureKind.NOISE).samples(99_000);
        assertThat(tooShort("", noise))
                .containsExactly(
                        "captures/before.csv: the record lasts 99 ms, and 5 periods of 50 Hz last 100 ms: capture a"
                                + " longer one.");
        assertThat(tooShort("bench: {mains: 60 Hz}\n", noise)).isEmpty();
        assertThat(tooShort(
                        "bench: {mains: 60 Hz}\n",
                        full(100, 1).kind(CaptureKind.NOISE).samples(83_000)))
                .singleElement()
                .asString()
                .contains("5 periods of 60 Hz last 83 ms");
        assertThat(tooShort("", full(100, 1).kind(CaptureKind.NOISE).samples(101_000)))
                .isEmpty();
    }

    private List<String> tooShort(String sheet, MadeUpCapture noise) throws IOException, InputException {
        return ready(sheet, full(100, 1), noise).missing().stream()
                .filter(m -> m.code().equals("too-short-for-hum"))
                .map(Said::missing)
                .toList();
    }

    @Test
    void aNoiseAndAResponseCaptureSilenceTheirLines() throws IOException, InputException {
        assertThat(ready(
                                "",
                                full(100, 1),
                                full(100, 1).kind(CaptureKind.NOISE).samples(200_000),
                                full(100, 1).kind(CaptureKind.RESPONSE))
                        .missing())
                .extracting(Missing::code)
                .doesNotContain(NO_NOISE, NO_RESPONSE);
    }

    @Test
    void aRailThatWasReadBeforeIsNotAsked() throws IOException, InputException {
        assertThat(ready("rails: [{name: supply, expected: 9 V, before: 9 V}]\n", full(100, 1))
                        .missing())
                .extracting(Missing::code)
                .doesNotContain("no-reading");
    }

    /** Harmonics beyond the twentieth are not counted; that a slow sampling rate cuts them off is nothing to mend. */
    @Test
    void aRateThatHoldsTwentyHarmonicsIsNotToBeRaised() throws IOException, InputException {
        Doubt cut = Doubt.of(Severity.WARNING, DoubtReason.UNDERSAMPLED, Argument.count(20));
        assertThat(ready("", full(100, 1).harmonics(sine(20)).doubting(cut)).missing())
                .extracting(Missing::code)
                .doesNotContain("undersampled");
        assertThat(ready("", full(100, 1).harmonics(sine(19)).doubting(cut)).missing())
                .extracting(Missing::code)
                .contains("undersampled");
    }

    private static double[] sine(int counted) {
        double[] harmonics = new double[counted];
        harmonics[0] = 1;
        return harmonics;
    }

    @Test
    void aRailWithoutAReadingFromBeforeIsToBeMeasured() throws IOException, InputException {
        assertThat(ready("rails: [{name: supply, expected: 9 V, old: 9 V}]\n", full(100, 1))
                        .missing())
                .extracting(Said::missing)
                .contains("“supply” has no meter reading from before the work: measure it now.");
    }

    private static MadeUpCapture end() {
        return MadeUpCapture.ordinary("before", 100);
    }

    private static MadeUpCapture full(double gain, int run) {
        return MadeUpCapture.ordinary("before", gain).run(run).with(WaveformQuantity.GAIN, 20, 0.01);
    }

    private static ReadyItem item(ReadyResult result, ItemQuantity quantity) {
        return result.items().stream()
                .filter(i -> i.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private ReadyResult ready(String sheet, MadeUpCapture... captures) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), TestExamination.SHEET + sheet);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        return Readiness.of(
                JobReader.read(folder),
                Stream.of(captures).map(MadeUpCapture::done).toList());
    }
}
