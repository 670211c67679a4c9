package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.bench.circuit.CircuitJob;
import clipwitness.bench.circuit.CircuitJobs;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A few of the invented circuits; {@link CircuitsTest} goes through all. */
class SomeCircuitsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "healthy-hot-tone",
                "healthy-coupled",
                "faulty-hot-open-leg-coupled",
                "faulty-open-leg-tone",
                "faulty-disconnected-saturating",
                "faulty-duller"
            })
    void healthyCircuitsGetNoHintAndFaultsAreFound(String name) throws IOException, InputException {
        CircuitJob job = CircuitJobs.all().stream()
                .filter(j -> j.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertThat(CircuitOutcome.of(job, folder.resolve("job")).misses()).isEmpty();
    }
}
