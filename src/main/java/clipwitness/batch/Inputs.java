package clipwitness.batch;

import clipwitness.compare.result.CaptureResult;
import clipwitness.job.Job;
import clipwitness.job.Photo;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One digest over everything that a report is made from. */
final class Inputs {
    private Inputs() {}

    /** Digest over job sheet, captures table, exports, photos and logo, each by its name within the job folder. */
    static String digest(Job job, List<CaptureResult> captures) throws IOException {
        Map<String, String> digests = new TreeMap<>();
        for (CaptureResult c : captures) {
            digests.put(c.row().file(), c.export().sha256());
            c.export()
                    .inputSha256()
                    .ifPresent(sha -> digests.put(c.row().inputFile().orElseThrow(), sha));
        }
        add(digests, job, Job.SHEET_FILE);
        add(digests, job, Job.TABLE_FILE);
        for (Photo p : job.sheet().photos()) {
            add(digests, job, p.file());
        }
        if (job.sheet().shop().logo().isPresent()) {
            add(digests, job, job.sheet().shop().logo().get());
        }
        return Sha256.over(digests);
    }

    private static void add(Map<String, String> digests, Job job, String file) throws IOException {
        digests.put(file, Sha256.of(job.folder().resolve(file)));
    }
}
