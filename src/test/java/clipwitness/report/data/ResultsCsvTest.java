package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ResultsCsvTest {
    private static List<String> rows(Measured nullDepth, Decision decision, Optional<Remark> remedy) {
        JobResults good = ExampleJob.good().results();
        Item item = new Item(
                ItemQuantity.NULL_DEPTH,
                ExampleJob.condition(50),
                nullDepth,
                OptionalDouble.of(-32),
                decision,
                OptionalDouble.empty(),
                remedy);
        Comparison comparison = new Comparison(
                "received",
                "original",
                Intent.UNCHANGED,
                decision,
                Optional.empty(),
                List.of(ItemQuantity.NULL_DEPTH),
                List.of(),
                List.of(item),
                List.of(),
                List.of());
        byte[] table = ResultsCsv.bytes(
                new JobResults(good.job(), good.inputsDigest(), List.of(), List.of(), List.of(comparison), List.of()));
        return new String(table, StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void aComparedFigureThatNoiseBoundsIsMarked() {
        Measured bound = Measured.withNoise(-58.5, Unit.DECIBEL, 5).asUpperBound();
        assertThat(rows(bound, Decision.PASS, Optional.empty()))
                .last()
                .isEqualTo(
                        "comparison,original,received,,null-depth,,50.0,200.0,0.1,noon,-58.5,dB,10.0,-32.0,pass,upper bound");
        assertThat(rows(bound, Decision.UNDECIDED, Optional.of(Remark.of(RemedyRemark.ON_THE_LIMIT))))
                .last()
                .asString()
                .endsWith(",undecided,upper bound; The change lies on the limit; more captures would not decide.");
    }

    @Test
    void aRefusedFigureHasItsReason() {
        assertThat(rows(
                        Measured.refused(Unit.DECIBEL, FigureReason.CAPTURE_NOT_MEASURED),
                        Decision.UNDECIDED,
                        Optional.of(Remark.of(RemedyRemark.NO_NUMBER_OF_CAPTURES))))
                .last()
                .asString()
                .endsWith(",,dB,,-32.0,undecided,the capture could not be measured");
    }

    private static List<String> example(String section) {
        return new String(ResultsCsv.bytes(ExampleJob.good().results()), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith(section + ","))
                .toList();
    }

    /** Three states at five gains: each figure and each harmonic of each capture is a row with what was measured. */
    @Test
    void everyFigureAndHarmonicOfACaptureIsARow() {
        List<String> rows = example("capture");
        List<String> expected = new ArrayList<>();
        for (CaptureResult c : ExampleJob.good().results().captures()) {
            String gain = c.row().condition().gainPercent().getAsDouble() + ",200.0,0.1,noon,";
            String head =
                    "capture," + c.row().state().orElseThrow() + ",," + c.row().file() + ",";
            WaveformResult wave = c.waveform().orElseThrow();
            wave.values().forEach((q, v) -> expected.add(head + q.key() + ",," + gain + figure(v)));
            wave.harmonics()
                    .forEach(h -> expected.add(head + "harmonic," + h.order() + "," + gain + figure(h.level())));
        }
        assertThat(rows).hasSameSizeAs(expected);
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i)).startsWith(expected.get(i));
        }
        assertThat(rows.size()).isGreaterThan(15 * 20);
    }

    private static String figure(Measured m) {
        return m.value().isPresent()
                ? m.value().getAsDouble() + 0.0 + "," + m.unit().symbol() + ","
                : ",";
    }

    private static void begin(List<String> rows, String... beginnings) {
        for (String beginning : beginnings) {
            assertThat(rows)
                    .filteredOn(r -> r.startsWith(beginning))
                    .as(beginning)
                    .hasSize(1);
        }
    }

    @Test
    void theSettingsOfOneThreeAndTenPercentAreRowsOfTheirSeries() {
        assertThat(example("series")).hasSize(9);
        begin(
                example("series"),
                "series,received,,,onsetGain thd 1.0 %,,,200.0,0.1,noon,18.2,%,1.1",
                "series,new,,,onsetGain thd 1.0 %,,,200.0,0.1,noon,,%,,,,below the lowest setting",
                "series,new,,,onsetGain thd 10.0 %,,,200.0,0.1,noon,55.1,%,1.");
    }

    /** The fundamental 0.04 dB up, the second harmonic 12 dB; the settings of equal distortion at 0.62 of the way. */
    @Test
    void comparisonsHaveTheirVerdictWhatTheyLackTheirHarmonicsAndEqualSettings() {
        assertThat(example("level-matched")).hasSize(5 * 12);
        begin(
                example("level-matched"),
                "level-matched,new,received,,harmonic,1,50.0,200.0,0.1,noon,0.04,dB,0.0",
                "level-matched,new,received,,harmonic,2,50.0,200.0,0.1,noon,12.0,dB,0.");
        begin(
                example("comparison"),
                "comparison,original,received,,verdict,,,,,,,,,,pass,",
                "comparison,new,original,,verdict,,,,,,,,,,described,",
                "comparison,new,received,,equivalentGain,,50.0,200.0,0.1,noon,31.0,%,1.",
                "comparison,new,received,,hum,,,,,,,,,,not examined,");
        assertThat(example("comparison"))
                .filteredOn(r -> r.contains(",equivalentGain,"))
                .hasSize(5);
    }
}
