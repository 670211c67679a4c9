package clipwitness.bench.circuit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** All invented circuits. One in three is held out: hints are made without looking at it. */
public final class CircuitJobs {
    private static final int HELD_OUT_OF = 3;

    private CircuitJobs() {}

    /** The jobs, healthy ones first. */
    public static List<CircuitJob> all() {
        return Stream.of(HealthyCircuits.all(), FaultyCircuits.all())
                .flatMap(List::stream)
                .toList();
    }

    /** Whether a job is one of those that were held out. */
    public static boolean isHeldOut(CircuitJob job) {
        List<CircuitJob> alike = job.truth().healthy() ? HealthyCircuits.all() : FaultyCircuits.all();
        return alike.stream().map(CircuitJob::name).toList().indexOf(job.name()) % HELD_OUT_OF == HELD_OUT_OF - 1;
    }

    /**
     * Writes them all as job folders.
     *
     * @param args the folder that holds them
     */
    public static void main(String[] args) throws IOException {
        for (CircuitJob job : all()) {
            job.folder().writeTo(Path.of(args[0], job.name()));
        }
    }
}
