package clipwitness.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * A job folder, read and checked.
 *
 * @param folder   the folder
 * @param sheet    job sheet
 * @param captures captures table
 */
public record Job(Path folder, JobSheet sheet, List<CaptureRow> captures) {
    /** File name of the job sheet. */
    public static final String SHEET_FILE = "job.yaml";

    /** File name of the captures table. */
    public static final String TABLE_FILE = "captures.csv";

    /** Name of the folder for results within the job folder; never read as input. */
    public static final String REPORT_FOLDER = "report";

    /** Copies what it is given. */
    public Job {
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(sheet, "sheet");
        captures = List.copyOf(captures);
    }
}
