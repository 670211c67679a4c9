package clipwitness.batch;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Which job folders a user means: a folder with a job sheet is one, a folder of such folders means all of them, by name. */
final class JobFolders {
    private JobFolders() {}

    /**
     * The job folders that a path means.
     *
     * @throws InputException if there is none
     */
    static List<Path> of(Path path) throws InputException {
        if (!Files.isDirectory(path)) {
            boolean exists = Files.exists(path);
            throw new InputException(
                    Origin.of(path.toString()),
                    exists ? "is a file, not a job folder" : "there is no such folder",
                    "Name the folder that holds " + Job.SHEET_FILE + " and " + Job.TABLE_FILE);
        }
        if (Files.exists(path.resolve(Job.SHEET_FILE))) {
            return List.of(path);
        }
        List<Path> jobs = within(path);
        if (jobs.isEmpty()) {
            throw new InputException(
                    Origin.of(path.toString()),
                    "has no " + Job.SHEET_FILE + ", and no folder in it has one",
                    "A job folder holds " + Job.SHEET_FILE + ", " + Job.TABLE_FILE + " and the exports");
        }
        return jobs;
    }

    static List<Path> within(Path path) throws InputException {
        try (Stream<Path> children = Files.list(path)) {
            return new ArrayList<>(children.filter(c -> Files.exists(c.resolve(Job.SHEET_FILE)))
                    .sorted()
                    .toList());
        } catch (IOException e) {
            throw new InputException(Origin.of(path.toString()), "the folder cannot be read", "Check its permissions");
        }
    }
}
