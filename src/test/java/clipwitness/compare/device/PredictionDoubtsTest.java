package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.FigureReason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measurement book, section 7: what is not on the sheet, so that nothing can be predicted. */
class PredictionDoubtsTest {
    private static final String SHEET = """
            report: {number: T-1, date: 2026-05-04}
            unit: {supply: %s}
            states:
              new: {label: New pair, role: before}
              open: {label: Without clippers, role: shown}
            clipper: {topology: shunt, source-resistance: 10 kΩ, unclipped: open, pairs: {new: [D1, D2]}}
            """;

    @TempDir
    private Path folder;

    private PredictionDoubts doubts(String supply, MadeUpCapture... captures) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), SHEET.formatted(supply));
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        Job job = JobReader.read(folder);
        List<CaptureResult> results =
                Stream.of(captures).map(MadeUpCapture::done).toList();
        return new PredictionDoubts(job, job.sheet().clipper().orElseThrow(), Catalogue.of(results, s -> s));
    }

    private static MadeUpCapture curve() {
        Samples line = Samples.of(new double[] {-0.1, 0, 0.1});
        return MadeUpCapture.ordinary("new", 50)
                .with(WaveformQuantity.CLIP_UP, 0.6, 0.001)
                .transfer(new TransferCurve(line, line, 0, false));
    }

    private Optional<String> said(MadeUpCapture setting, MadeUpCapture... others) throws IOException, InputException {
        return Said.reason(doubts("9 V", others).of(setting.setting()));
    }

    @Test
    void aTransferCurveWithoutClipLevelsTellsNothing() throws IOException, InputException {
        assertThat(said(curve())).isEmpty();
        assertThat(said(curve().refused(WaveformQuantity.CLIP_UP, FigureReason.NOT_REACHED)))
                .hasValueSatisfying(t -> assertThat(t).contains("not reached"));
        assertThat(said(MadeUpCapture.ordinary("new", 50))).isEmpty();
    }

    /** 1.2 % ± 0.1 % (standard) may be 1 %, 1.3 % may not. */
    @Test
    void aSourceThatDistortsByMoreThanOnePercentIsNoSine() throws IOException, InputException {
        assertThat(said(curve(), open(1.19))).isEmpty();
        assertThat(said(curve(), open(1.3)))
                .hasValueSatisfying(t -> assertThat(t).contains("1.3 %"));
    }

    private static MadeUpCapture open(double thd) {
        return MadeUpCapture.ordinary("open", 50).with(WaveformQuantity.THD, thd, 0.1);
    }

    @Test
    void aSourceBeyondTheSupplyIsNone() throws IOException, InputException {
        assertThat(doubts("9 V").beyondSupply(8.9)).isEmpty();
        assertThat(Said.reason(doubts("9 V").beyondSupply(9.1)))
                .hasValueSatisfying(t -> assertThat(t).contains("9.1\u00A0V").contains("9.0\u00A0V"));
        assertThat(doubts("a battery").beyondSupply(100)).isEmpty();
    }
}
