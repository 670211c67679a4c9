package clipwitness.batch.load;

import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Meanwhile;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the exports that a row of the captures table names. */
public final class RowFiles {
    /** Two records are of one interval where it agrees to this ratio: files round it differently. */
    private static final double SAME_INTERVAL = 1e-6;

    private final CaptureRow row;
    private final Path folder;
    private final Progress progress;
    private final Map<String, String> digests = new HashMap<>();

    /**
     * The files of a row.
     *
     * @param folder of the job, to which the row's paths are relative
     */
    public RowFiles(CaptureRow row, Path folder, Progress progress) {
        this.row = row;
        this.folder = folder;
        this.progress = progress;
    }

    /** The export of the row. */
    public Export export() throws InputException {
        return read(row.file());
    }

    /**
     * The export of its input channel, where that is another file.
     *
     * @param output the record of the output
     * @throws InputException where the two are not of one record
     */
    public Optional<TimeRecord> input(TimeRecord output) throws InputException {
        if (row.inputFile().isEmpty()) {
            return Optional.empty();
        }
        TimeRecord input = overTime(read(row.inputFile().get()));
        requireSameRecord(output, input);
        return Optional.of(input);
    }

    /** SHA-256 of the row's export, which was read. */
    public String sha256() {
        return digests.get(row.file());
    }

    /** SHA-256 of the input's export, which was read, where that is another file. */
    public Optional<String> inputSha256() {
        return row.inputFile().map(digests::get);
    }

    private Export read(String file) throws InputException {
        ReadingOptions options = new ReadingOptions(row.interval(), row.unit(), row.scale());
        Path path = folder.resolve(file);
        if (!Files.exists(path)) { // it was there when the table was read
            throw new InputException(List.of(Meanwhile.lost(file)));
        }
        MessageDigest digest = Sha256.start();
        Export export = ExportReader.read(path, file, options, progress, digest);
        digests.put(file, Sha256.end(digest));
        return export;
    }

    /** The export as a record over time. @throws InputException where it is a curve */
    public TimeRecord overTime(Export export) throws InputException {
        if (export instanceof TimeRecord record) {
            return record;
        }
        throw new InputException(
                ErrorCode.WRONG_KIND,
                new Origin(Job.TABLE_FILE, row.row(), "kind"),
                export.file() + " holds a curve of current against voltage, not a record over time, but kind is "
                        + row.kind().code(),
                "Write junction if it is a traced device; export the record with its time column or give its interval in"
                        + " column interval if it is a wave");
    }

    private void requireSameRecord(TimeRecord output, TimeRecord input) throws InputException {
        boolean sameLength = output.size() == input.size();
        double ratio = output.sampleInterval() / input.sampleInterval();
        if (!sameLength || Math.abs(ratio - 1) > SAME_INTERVAL) {
            throw new InputException(
                    ErrorCode.NOT_ONE_RECORD,
                    new Origin(Job.TABLE_FILE, row.row(), "input-file"),
                    input.file() + " (" + input.size() + " samples every " + input.sampleInterval() + " s) and "
                            + output.file() + " (" + output.size() + " samples every " + output.sampleInterval()
                            + " s) are not one record",
                    "Export both channels from the same acquisition");
        }
    }
}
