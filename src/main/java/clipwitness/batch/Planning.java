package clipwitness.batch;

import clipwitness.batch.load.Sha256;
import clipwitness.compare.plan.BenchPlan;
import clipwitness.compare.plan.PlanSearch;
import clipwitness.compare.plan.UsualSheet;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.read.JobReader;
import clipwitness.report.PlanSheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Plans the captures of a job before there are any. */
public final class Planning {
    private static final String USUAL = "the usual limits";

    private Planning() {}

    /** Whether a folder has a job sheet to plan for. */
    public static boolean hasSheet(Path folder) {
        return JobFolders.isJob(folder);
    }

    /**
     * The plan of a job's sheet as a page.
     *
     * @param folder   job folder
     * @param software program and version
     * @throws InputException if the sheet cannot be read
     */
    public static byte[] page(Path folder, String software) throws InputException {
        JobSheet sheet = JobReader.readSheet(folder);
        return page(PlanSearch.of(sheet, true), Optional.of(folder), software);
    }

    /** The plan for the usual limits as a page. */
    public static byte[] usualPage(String software) {
        return page(PlanSearch.of(UsualSheet.of(), false), Optional.empty(), software);
    }

    private static byte[] page(BenchPlan plan, Optional<Path> folder, String software) {
        return PlanSheet.bytes(plan, software, digest(folder));
    }

    private static String digest(Optional<Path> folder) {
        try {
            return folder.isPresent()
                    ? Sha256.of(Files.readAllBytes(folder.get().resolve(Job.SHEET_FILE)))
                    : Sha256.of(USUAL.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Sha256.of(USUAL.getBytes(StandardCharsets.UTF_8)); // lost since it was read
        }
    }
}
