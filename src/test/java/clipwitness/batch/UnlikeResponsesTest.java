package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.NotExamined;
import clipwitness.fault.InputException;
import clipwitness.job.read.JobReader;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reading.Progress;
import clipwitness.reason.ComparisonReason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Steady tones at other frequencies before and after: nothing to compare, and the reason speaks of responses. */
class UnlikeResponsesTest {
    private static final int SAMPLE_RATE = 48_000;
    private static final int SAMPLES = 4800;

    @TempDir
    private Path job;

    @Test
    void theReasonIsThatNoFrequencyIsShared() throws IOException, InputException {
        tone("before.csv", 1000);
        tone("after.csv", 3000);
        Files.writeString(job.resolve("job.yaml"), """
                report: {number: A1, title: Test, date: 2026-05-04}
                unit: {name: Made up}
                stimulus: {shape: sine, frequency: 1 kHz, level: 100 mV}
                states:
                  received: {label: "As received", role: before}
                  original: {label: "After", role: unchanged}
                """);
        Files.writeString(job.resolve("captures.csv"), """
                file,state,kind,gain,frequency
                before.csv,received,response,50,1 kHz
                after.csv,original,response,50,3 kHz
                """);
        assertThat(examined().comparisons().get(0).notExamined())
                .filteredOn(n -> n.quantity() == ItemQuantity.RESPONSE)
                .extracting(NotExamined::reason)
                .singleElement()
                .satisfies(r -> assertThat(r.code()).isEqualTo(ComparisonReason.NO_COMMON_RESPONSE));
    }

    private void tone(String file, double frequency) throws IOException {
        StringBuilder text = new StringBuilder("Time [s],CH1 [V],CH2 [V]\n");
        for (int i = 0; i < SAMPLES; i++) {
            double input = Math.sin(2 * Math.PI * frequency * i / SAMPLE_RATE);
            text.append((double) i / SAMPLE_RATE)
                    .append(',')
                    .append(0.1 * input)
                    .append(',')
                    .append(0.3 * input)
                    .append('\n');
        }
        Files.writeString(job.resolve(file), text);
    }

    private JobResults examined() throws IOException, InputException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            return Examination.of(
                    JobReader.read(job),
                    "5ba".repeat(21) + "0",
                    Loading.all(JobReader.read(job), worker, Progress.NONE));
        } finally {
            worker.shutdownNow();
        }
    }
}
