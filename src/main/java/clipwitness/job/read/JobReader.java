package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.ReadJob;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a job folder: the sheet {@code job.yaml} and the table {@code captures.csv}. The exports themselves are not opened. */
public final class JobReader {
    private JobReader() {}

    /**
     * Reads and checks a job.
     *
     * @param folder the job folder
     * @return the job, everything on its sheet and in its table checked
     * @throws InputException with every fault of sheet and table at once; for a sheet that is not valid YAML, that fault only
     */
    public static Job read(Path folder) throws InputException {
        return readWhole(folder).job();
    }

    /**
     * Reads and checks a job's sheet alone: the captures need not exist yet.
     *
     * @throws InputException with every fault of the sheet
     */
    public static JobSheet readSheet(Path folder) throws InputException {
        Faults faults = new Faults();
        TextFile sheet = TextFile.read(folder, Job.SHEET_FILE, "Write one; the README shows a first one");
        SheetReader.Outcome outcome = new SheetReader(new JobFiles(folder)).read(sheet.text(Optional.empty()), faults);
        Faults.throwIfAny(faults);
        return outcome.sheet().orElseThrow();
    }

    /** Reads and checks a job, as {@link #read} does, and keeps what was read. */
    public static ReadJob readWhole(Path folder) throws InputException {
        requireFolder(folder);
        JobFiles files = new JobFiles(folder);
        Faults inSheet = new Faults();
        TextFile sheet = TextFile.read(folder, Job.SHEET_FILE, "Write one; the README shows a first one");
        SheetReader.Outcome outcome = new SheetReader(files).read(sheet.text(Optional.empty()), inSheet);
        Faults inTable = new Faults();
        Optional<TextFile> table = table(folder, inTable);
        List<CaptureRow> captures =
                table.isPresent() ? captures(table.get(), files, outcome.terms(), inTable) : List.of();
        Faults.throwIfAny(inSheet, inTable);
        Job job = new Job(folder, outcome.sheet().orElseThrow(), captures);
        return new ReadJob(job, sheet.bytes(), table.orElseThrow().bytes());
    }

    /**
     * Makes sure that a path is a folder; whether it is a job's is not looked at.
     *
     * @throws InputException if it is none
     */
    public static void requireFolder(Path path) throws InputException {
        if (!Files.isDirectory(path)) {
            throw new InputException(
                    ErrorCode.NO_JOB,
                    Origin.of(path.toString()),
                    absence(path),
                    "Name the folder that holds " + Job.SHEET_FILE + " and " + Job.TABLE_FILE);
        }
    }

    private static String absence(Path path) {
        if (Files.isRegularFile(path)) {
            return "is a file, not a job folder";
        }
        if (Files.exists(path)) {
            return "is no folder";
        }
        return Files.isSymbolicLink(path) ? "is a link that leads nowhere" : "there is no such folder";
    }

    private static Optional<TextFile> table(Path folder, Faults faults) {
        try {
            return Optional.of(TextFile.read(
                    folder,
                    Job.TABLE_FILE,
                    "Write one with the columns file, state and kind; the README shows a first one"));
        } catch (InputException e) {
            faults.addAll(e);
            return Optional.empty();
        }
    }

    private static List<CaptureRow> captures(TextFile table, JobFiles files, SheetReader.Terms terms, Faults faults) {
        try {
            String text = table.text(Optional.of(StandardCharsets.ISO_8859_1));
            return new TableReader(terms, files, faults).read(text);
        } catch (InputException e) {
            faults.addAll(e);
            return List.of();
        }
    }
}
