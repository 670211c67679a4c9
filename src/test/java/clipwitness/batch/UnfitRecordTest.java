package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.CaptureLoader;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.JobFolder;
import clipwitness.fixture.Said;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reading.Progress;
import clipwitness.reason.DoubtCode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records that the file itself shows to be no even record of a wave are listed, and nothing is measured on them. */
class UnfitRecordTest {
    @TempDir
    private Path folder;

    private JobFolder job;

    @BeforeEach
    void write() throws IOException {
        job = JobFolder.unchanged(folder, "T-1");
        job.write("captures.csv", "file,state,kind,gain,coupling\nbefore-0.csv,before,waveform,0,ac\n");
    }

    @Test
    void aGapInTimeIsTheReasonAndItsPlaceIsNamed() throws IOException, InputException {
        CaptureResult capture = load(wave(700, 730, 1));
        assertThat(reason(capture))
                .isEqualTo("the samples are not evenly spaced: a stamp lies up to 16 intervals off an even grid. The"
                        + " widest step comes after sample 700, from 0.00699 to 0.0073");
    }

    @Test
    void anEnvelopeIsNotMeasured() throws IOException, InputException {
        CaptureResult capture = load(wave(0, 0, 2));
        assertThat(reason(capture))
                .startsWith(
                        "every time stamp appears on two rows, the smallest and the largest value of an interval. This is an envelope");
    }

    @Test
    void theColumnCouplingIsADoubtOfItsOwn() throws IOException, InputException {
        assertThat(load(wave(0, 0, 1)).doubts().stream()
                        .filter(d -> d.code() == DoubtCode.AC_COUPLED)
                        .map(Said::doubt))
                .containsExactly("AC coupled, as column coupling says: the mean is lost, and slow waves sag.");
    }

    private CaptureResult load(String export) throws IOException, InputException {
        job.write("before-0.csv", export);
        Job read = JobReader.read(job.path());
        return new CaptureLoader(read, Progress.NONE).load(read.captures().get(0));
    }

    private static String reason(CaptureResult capture) {
        return Said.reason(capture.waveform()
                        .orElseThrow()
                        .get(WaveformQuantity.THD)
                        .reason())
                .orElseThrow();
    }

    /** A sine of 1 kHz, 2000 samples every 10 µs, those from one to another left out, each so many times. */
    private static String wave(int from, int to, int times) {
        StringBuilder text = new StringBuilder("Time (s),OUT (V)\n");
        for (int i = 0; i < 2_000; i++) {
            if (i < from || i >= to) {
                String row = i + "0.0e-6," + Math.sin(2 * Math.PI * i / 100) + "\n";
                text.append(row.repeat(times));
            }
        }
        return text.toString();
    }
}
