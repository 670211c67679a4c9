package clipwitness.job.read;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
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
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    Origin.of(folder.toString()),
                    "there is no such folder",
                    "Name the folder that holds " + Job.SHEET_FILE + " and " + Job.TABLE_FILE);
        }
        JobFiles files = new JobFiles(folder);
        Faults inSheet = new Faults();
        String sheetText =
                TextFile.read(folder, Job.SHEET_FILE, "Write one; the README shows a first one", Optional.empty());
        SheetReader.Outcome outcome = new SheetReader(files).read(sheetText, inSheet);
        Faults inTable = new Faults();
        List<CaptureRow> captures = captures(folder, files, outcome.terms(), inTable);
        Faults.throwIfAny(inSheet, inTable);
        return new Job(folder, outcome.sheet().orElseThrow(), captures);
    }

    private static List<CaptureRow> captures(Path folder, JobFiles files, SheetTerms terms, Faults faults) {
        try {
            String text = TextFile.read(
                    folder,
                    Job.TABLE_FILE,
                    "Write one with the columns file, state and kind; the README shows a first one",
                    Optional.of(StandardCharsets.ISO_8859_1));
            return new TableReader(terms, files, faults).read(text);
        } catch (InputException e) {
            e.problems().forEach(p -> faults.add(p.where(), p.what(), p.remedy()));
            return List.of();
        }
    }
}
