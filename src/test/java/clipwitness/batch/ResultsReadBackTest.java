package clipwitness.batch;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.DemoJobs;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ResultsReadBack;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import clipwitness.report.data.ResultsJson;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every key of the results holds what the model has, and the model explains every key. */
class ResultsReadBackTest {
    private static final String SOFTWARE = "clipwitness 0.0.0";

    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "jack-repair", "lifted-joint", "diode-renewal"})
    void theResultsOfASampleJobReadBackAsTheyWere(String name) throws InputException {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(Path.of("sample-captures", name));
            readBack(Examination.of(job, "5ba".repeat(21) + "0", Loading.all(job, worker, Progress.NONE)));
        } finally {
            worker.shutdownNow();
        }
    }

    @ParameterizedTest
    @EnumSource(ExampleJob.Ending.class)
    void theResultsOfAMadeUpJobReadBackAsTheyWereHoweverItEnds(ExampleJob.Ending ending) {
        readBack(ExampleJob.good().ending(ending).results());
    }

    static Set<String> drawnJobs() {
        return DemoJobs.all().keySet();
    }

    /** Jobs with level steps, without an input, with many states, with captures that were refused. */
    @ParameterizedTest
    @MethodSource("drawnJobs")
    void theResultsOfTheJobsThatPicturesAreTestedOnReadBackAsTheyWere(String name) {
        readBack(DemoJobs.all().get(name));
    }

    private static void readBack(JobResults results) {
        ResultsReadBack.compare(ResultsJson.bytes(results, SOFTWARE), results, SOFTWARE);
    }
}
