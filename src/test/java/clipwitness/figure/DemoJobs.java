package clipwitness.figure;

import clipwitness.compare.result.JobResults;
import clipwitness.job.Role;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The jobs that every figure is tried on: an ordinary one, and every odd one that we could think of. */
final class DemoJobs {
    private static final String LONG =
            "After the third attempt, germanium pair with a series resistor selected on the curve"
                    + " tracer and the tone stack put back to what the schematic of the first issue shows";

    private static final Map<String, JobResults> ALL = make();

    private DemoJobs() {}

    /** All jobs by name. */
    static Map<String, JobResults> all() {
        return ALL;
    }

    private static Map<String, JobResults> make() {
        Map<String, JobResults> jobs = new LinkedHashMap<>();
        jobs.put("usual", DemoJob.usual().results());
        jobs.put("edgy", DemoJob.usual().edgy().results());
        jobs.put("apart", DemoJob.usual().apart().results());
        jobs.put("one-gain", DemoJob.usual().gains(50).results());
        jobs.put(
                "one-state",
                DemoJob.empty().state("received", "As received", Role.BEFORE).results());
        jobs.put("level-steps", DemoJob.usual().levelSteps(25, 100).results());
        jobs.put("level-steps-once", DemoJob.usual().levelSteps(50).results());
        jobs.put("no-input", DemoJob.usual().withoutInput().results());
        jobs.put(
                "twelve-gains",
                DemoJob.usual()
                        .gains(0, 9, 18, 27, 36, 45.5, 55, 64, 73, 82, 91, 100)
                        .withSecondCondition()
                        .results());
        jobs.put("six-states", sixStates().results());
        jobs.put(
                "long-labels",
                DemoJob.empty()
                        .state("received", LONG, Role.BEFORE)
                        .state("original", LONG + " (again)", Role.UNCHANGED)
                        .state("new", "Ω µ − é", Role.CHANGED)
                        .results());
        jobs.put("fine", DemoJob.usual().bins(200_000).gains(20, 80).results());
        return Collections.unmodifiableMap(jobs);
    }

    private static DemoJob sixStates() {
        return DemoJob.empty()
                .state("a", "As received", Role.BEFORE)
                .state("b", "After, original clippers", Role.UNCHANGED)
                .state("c", "After, new clippers", Role.CHANGED)
                .state("d", "Fault as it came in", Role.SHOWN)
                .state("e", "New clippers, second pair", Role.CHANGED)
                .state("f", "Original, after a week", Role.UNCHANGED);
    }
}
