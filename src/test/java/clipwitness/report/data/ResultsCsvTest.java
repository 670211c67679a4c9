package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import java.nio.charset.StandardCharsets;
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
}
