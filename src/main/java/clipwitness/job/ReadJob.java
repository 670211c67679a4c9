package clipwitness.job;

import java.util.Objects;

/** A job with the very bytes of sheet and table that it was read from. */
public final class ReadJob {
    private final Job job;
    private final byte[] sheet;
    private final byte[] table;

    /** A job and what it was read from; the bytes are copied. */
    public ReadJob(Job job, byte[] sheet, byte[] table) {
        this.job = Objects.requireNonNull(job, "job");
        this.sheet = sheet.clone();
        this.table = table.clone();
    }

    /** The job. */
    public Job job() {
        return job;
    }

    /** The file {@code job.yaml} as it was read. */
    public byte[] sheet() {
        return sheet.clone();
    }

    /** The file {@code captures.csv} as it was read. */
    public byte[] table() {
        return table.clone();
    }
}
