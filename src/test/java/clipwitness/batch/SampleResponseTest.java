package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.finding.Mark;
import clipwitness.compare.finding.Treble;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.Findings;
import clipwitness.compare.rule.Marks;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The sample job whose tone filter moved from 7 kHz to 4.5 kHz: filters of the first order, |H|^2 = 1 / (1 + (f / fc)^2). */
class SampleResponseTest {
    private static JobResults results;

    @BeforeAll
    static void examine() throws InputException, IOException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(Path.of("sample-captures", "diode-renewal"));
            results = Examination.of(job, "5ba".repeat(21) + "0", Loading.all(job, worker, Progress.NONE));
        } finally {
            worker.shutdownNow();
        }
    }

    private static double change(double frequency) {
        return 10 * Math.log10((1 + Math.pow(frequency / 7000, 2)) / (1 + Math.pow(frequency / 4500, 2)));
    }

    @Test
    void theCornersAreThoseOfTheFilters() {
        assertThat(results.responses()).hasSize(2);
        assertThat(results.responses().get(0).curve().upperCorner().value().orElseThrow())
                .isCloseTo(7000, within(120.0));
        assertThat(results.responses().get(1).curve().upperCorner().value().orElseThrow())
                .isCloseTo(4500, within(80.0));
    }

    @Test
    void theTrebleIsLostByAsMuchAsTheFiltersTakeAway() {
        Treble treble = Findings.of(results).all().stream()
                .filter(Treble.class::isInstance)
                .map(Treble.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(treble.word()).isEqualTo("darker");
        for (Treble.Part part : treble.parts()) {
            double truth = change(1000 * part.kilohertz()) - change(1000);
            assertThat(part.change().number())
                    .isCloseTo(truth, within(part.change().expanded()));
        }
    }

    @Test
    void onlyTheTrebleFails() {
        List<Mark> marks = Marks.of(Marks.marked(results).orElseThrow());
        assertThat(marks)
                .extracting(Mark::part)
                .containsExactly(Mark.Part.SOUND, Mark.Part.NOISE, Mark.Part.TREBLE, Mark.Part.RAILS);
        assertThat(marks)
                .extracting(Mark::decision)
                .containsExactly(
                        Optional.of(Decision.PASS),
                        Optional.of(Decision.PASS),
                        Optional.of(Decision.FAIL),
                        Optional.of(Decision.PASS));
    }
}
