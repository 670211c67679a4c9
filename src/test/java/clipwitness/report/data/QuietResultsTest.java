package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.ResultsReadBack;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Noise, response and meter readings of a made-up job in the files of the results. */
class QuietResultsTest {
    private static final String SECTIONS = """
        bench: {mains: 50 Hz, meter-accuracy: 0.5 %}
        rails:
          - {name: supply, expected: 9 V, tolerance: 10 %, before: 9.0 V, old: 4.0 V, new: 8.9 V}
          - {name: bias, before: 4.50 V, old: 4.52 V}
        """;

    @TempDir
    private Path folder;

    /** Noise of 1 mV with U = 0.02 mV by the rms and 0.5 mV with U = 0.01 mV weighted; lines of 3 mV peak and none. */
    private static NoiseResult noise() {
        NoiseResult hiss = MadeUpQuiet.hiss(1);
        return new NoiseResult(
                hiss.band(),
                hiss.spectrum(),
                Map.of(
                        NoiseFigure.RMS, Measured.withNoise(1e-3, Unit.VOLT, 1e-5),
                        NoiseFigure.A_WEIGHTED, Measured.withNoise(5e-4, Unit.VOLT, 5e-6)),
                List.of(MadeUpQuiet.hum(50, 3e-3 * Math.sqrt(2), 0)),
                OptionalDouble.of(2e-5),
                hiss.range(),
                hiss.lasts(),
                List.of());
    }

    private static CaptureResult sine(double frequency, double gain) {
        return MadeUpQuiet.of("before")
                .gain(50)
                .frequency(frequency)
                .export("sine " + frequency)
                .response(MadeUpQuiet.steady(MadeUpQuiet.point(frequency, gain, 0.05)));
    }

    private static CaptureResult sweep() {
        ResponsePoint point = MadeUpQuiet.point(500, 12, 0.05);
        return MadeUpQuiet.of("old")
                .response(MadeUpQuiet.sweep(List.of(
                        new ResponsePoint(500, point.gain(), point.phase(), OptionalDouble.of(0.97)),
                        MadeUpQuiet.hidden(1000))));
    }

    private JobResults results() throws IOException, InputException {
        return new TestExamination(folder)
                .examined(
                        SECTIONS,
                        List.of(
                                MadeUpQuiet.of("before").gain(50).noise(noise()),
                                MadeUpQuiet.of("old").gain(50).noise(MadeUpQuiet.tooShort()),
                                sine(100, 10),
                                sine(200, 4),
                                sweep(),
                                MadeUpCapture.ordinary("before", 50)
                                        .with(WaveformQuantity.SMALL_SIGNAL_GAIN, 20, 0)
                                        .done()));
    }

    private List<String> rows(String section) throws IOException, InputException {
        return new String(ResultsCsv.bytes(results()), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith(section + ","))
                .toList();
    }

    @Test
    void everyKeyReadsBack() throws IOException, InputException {
        JobResults results = results();
        assertThat(results.noise()).hasSize(2);
        assertThat(results.responses()).hasSize(2);
        ResultsReadBack.compare(ResultsJson.bytes(results, "test"), results, "test");
    }

    @Test
    void theNoiseOfAStateIsATableRowForEachFigureAndLine() throws IOException, InputException {
        List<String> rows = rows("noise");
        assertThat(rows.get(0)).isEqualTo("noise,before,,,rms,,50.0,,,,0.001,V,2.0E-5,,,");
        assertThat(rows.get(1)).isEqualTo("noise,before,,,aWeighted,,50.0,,,,5.0E-4,V,1.0E-5,,,");
        assertThat(rows.get(2)).startsWith("noise,before,,,rmsAtInput,,50.0,,,,1.0E-4,V,2.0");
        assertThat(rows.get(3)).startsWith("noise,before,,,aWeightedAtInput,,50.0,,,,");
        assertThat(rows.get(4)).startsWith("noise,before,,,hum,1,50.0,50.0,,,0.003,V,");
        assertThat(rows.get(5)).startsWith("noise,before,,,hum,2,50.0,100.0,,,,V,,,,");
        assertThat(rows.get(6)).startsWith("noise,old,,,rms,,50.0,,,,,V,,,,").doesNotEndWith(",");
    }

    /** From 100 to 200 Hz the gain falls from 10 to 4 dB: 3.01 dB below the highest is 0.5017 of that octave. */
    @Test
    void aPointOfTheResponseIsARowOfGainAndOneOfPhase() throws IOException, InputException {
        List<String> rows = rows("response");
        assertThat(rows.get(0)).isEqualTo("response,before,,,gain,,50.0,100.0,,,10.0,dB,0.1,,,");
        assertThat(rows.get(1)).isEqualTo("response,before,,,phase,,50.0,100.0,,,-1.0,deg,0.1,,,");
        assertThat(rows.get(2)).startsWith("response,before,,,gain,,50.0,200.0,,,4.0,dB,0.1,");
        assertThat(rows.get(4))
                .startsWith("response,before,,,lowerCorner,,50.0,,,,,Hz,,,,")
                .doesNotEndWith(",");
        assertThat(rows.get(5)).startsWith("response,before,,,upperCorner,,50.0,,,,141.5");
        assertThat(rows.get(6)).startsWith("response,old,,,gain,,,500.0,,,12.0,dB,");
        assertThat(rows.get(8))
                .startsWith("response,old,,,gain,,,1000.0,,,,dB,,,,")
                .doesNotEndWith(",");
        assertThat(rows).hasSize(12);
    }

    /** Bound 0.5 % of 9.0 V and a digit of 0.1 V: 0.145 V, U = 2 * 0.145 / sqrt 3 = 0.167 V. */
    @Test
    void aMeterReadingIsARowWithItsLimitAndDecision() throws IOException, InputException {
        List<String> rows = rows("rail");
        assertThat(rows).hasSize(5);
        assertThat(rows.get(0))
                .startsWith("rail,before,,,supply,,,,,,9.0,V,0.1674")
                .endsWith(",10.0 %,pass,");
        assertThat(rows.get(1)).startsWith("rail,old,,,supply,,,,,,4.0,V,").endsWith(",10.0 %,fail,");
        assertThat(rows.get(3)).startsWith("rail,before,,,bias,,,,,,4.5,V,").contains(",2.0 %,described,");
        assertThat(rows.get(4)).startsWith("rail,old,,,bias,,,,,,4.52,V,").endsWith(",2.0 %,pass,");
    }

    @Test
    void theDigestOfTheInputsIsTheFirstRowAndTheHeaderTellsTheTable() throws IOException, InputException {
        String table = new String(ResultsCsv.bytes(results()), StandardCharsets.UTF_8);
        assertThat(ResultsCsv.isHead(table)).isTrue();
        assertThat(ResultsCsv.isHead("a,b\n1,2\n")).isFalse();
        assertThat(table.lines().skip(1).findFirst()).hasValue("report,,,,inputsDigest,,,,,,,,,,,00");
        String json = new String(ResultsJson.bytes(results(), "test"), StandardCharsets.UTF_8);
        assertThat(ResultsJson.isHead(json)).isTrue();
        assertThat(ResultsJson.isHead(" " + json)).isFalse();
        assertThat(ResultsJson.isHead("{\"schema\": \"other/1\"}")).isFalse();
    }
}
