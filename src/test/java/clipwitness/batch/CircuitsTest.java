package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.bench.circuit.CircuitJob;
import clipwitness.bench.circuit.CircuitJobs;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No false hint on healthy circuits and no missed fault on the faulty ones, over all invented circuits. */
@Tag("coverage")
class CircuitsTest {
    @TempDir
    private Path folder;

    /** Narrows the table to circuits whose name holds this expression. */
    private static final Pattern ONLY = Pattern.compile(System.getProperty("circuits.only", ""));

    @Test
    void healthyCircuitsGetNoHintAndEveryFaultIsFound() throws IOException {
        List<String> misses = new ArrayList<>();
        for (CircuitJob job : CircuitJobs.all()) {
            if (!ONLY.matcher(job.name()).find()) {
                continue;
            }
            String place = CircuitJobs.isHeldOut(job) ? "held out " : "         ";
            try {
                CircuitOutcome outcome = CircuitOutcome.of(job, there().resolve(job.name()));
                System.out.println(place + outcome.row());
                outcome.misses().forEach(miss -> misses.add(job.name() + ": " + miss));
            } catch (InputException e) {
                System.out.println(place + job.name() + " | " + e.getMessage());
                misses.add(job.name() + ": " + e.getMessage());
            }
        }
        assertThat(misses).isEmpty();
    }

    /** A folder of circuits that were captured before saves the time for capturing them again. */
    private Path there() {
        String captured = System.getProperty("circuits.folder", "");
        return captured.isEmpty() ? folder : Path.of(captured);
    }
}
