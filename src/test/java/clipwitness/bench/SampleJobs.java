package clipwitness.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The invented jobs in sample-captures: their exports, captures tables and picture. The job sheets are written by hand. */
public final class SampleJobs {
    private SampleJobs() {}

    /** The jobs by the name of their folder; always the same bytes. */
    static Map<String, JobFiles> all() {
        Map<String, JobFiles> jobs = new LinkedHashMap<>();
        jobs.put("bass-drive-switch", BassDriveSwitch.folder());
        jobs.put("jack-repair", JackRepair.folder());
        jobs.put("lifted-joint", LiftedJoint.folder());
        jobs.put("diode-renewal", DiodeRenewal.folder());
        return jobs;
    }

    /**
     * Writes them all.
     *
     * @param args the folder that holds the job folders
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        for (Map.Entry<String, JobFiles> job : all().entrySet()) {
            job.getValue().writeTo(folder.resolve(job.getKey()));
        }
    }
}
