package clipwitness.bench.circuit;

import clipwitness.bench.JobFiles;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One job: a short description from which a whole folder is made.
 *
 * @param name    name of the folder
 * @param truth   what is true about it
 * @param occasion how it is captured
 * @param extra   further keys of the sheet's clipper, as YAML within braces
 * @param states  states, the one before first
 */
public record CircuitJob(String name, Truth truth, Occasion occasion, String extra, List<Shown> states) {
    static final double AMPLITUDE = 0.1;

    /** Copies what it is given. */
    public CircuitJob {
        states = List.copyOf(states);
    }

    static CircuitJob of(String name, Truth truth, Occasion occasion, Shown... states) {
        return new CircuitJob(name, truth, occasion, "", List.of(states));
    }

    /** The same job whose sheet says more about the clipper. */
    CircuitJob saying(String keys) {
        return new CircuitJob(name, truth, occasion, keys, states);
    }

    /** The same job, of which some hints are true beside what is said. */
    CircuitJob allowing(String... codes) {
        return new CircuitJob(name, truth.allowing(codes), occasion, extra, states);
    }

    /** Its folder: sheet, captures table, exports. */
    public JobFiles folder() {
        JobFiles folder = new JobFiles();
        new Captures(this, folder).take();
        folder.add("job.yaml", CircuitSheet.of(this).getBytes(StandardCharsets.UTF_8));
        return folder;
    }
}
