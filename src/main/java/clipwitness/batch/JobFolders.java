package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which job folders a user means: a folder with a job sheet is one; any other folder means all job folders in it, at whatever depth, in the order of
 * their paths. What lies within a job folder belongs to the job.
 */
final class JobFolders {
    /** Folders of folders deeper than this are nobody's filing. */
    private static final int DEEPEST = 20;

    private JobFolders() {}

    /**
     * A job folder, or a folder that looks like one.
     *
     * @param folder  the folder
     * @param problem why it is not taken; empty for a job folder
     */
    record Found(Path folder, Optional<Problem> problem) {}

    /**
     * The job folders that a path means, and beside them what looks like one and is not taken.
     *
     * @throws InputException if there is none
     */
    static List<Found> of(Path path) throws InputException {
        JobReader.requireFolder(path);
        if (isJob(path)) {
            return List.of(new Found(path, Optional.empty()));
        }
        Optional<Problem> misnamed = Lookalike.misnamed(path);
        if (misnamed.isPresent()) {
            return List.of(new Found(path, misnamed));
        }
        List<Found> found = within(path);
        if (found.isEmpty()) {
            throw new InputException(
                    ErrorCode.NO_JOB,
                    Origin.of(path.toString()),
                    "has no " + Job.SHEET_FILE + ", and no folder in it has one, at whatever depth",
                    "A job folder holds " + Job.SHEET_FILE + ", " + Job.TABLE_FILE + " and the exports");
        }
        return found;
    }

    /**
     * Makes sure that a path is one job folder.
     *
     * @throws InputException if it is none
     */
    static void requireJob(Path path) throws InputException {
        JobReader.requireFolder(path);
        if (!isJob(path)) {
            throw new InputException(
                    ErrorCode.NO_JOB,
                    Origin.of(path.toString()),
                    "has no " + Job.SHEET_FILE,
                    "Name the folder that holds " + Job.SHEET_FILE + " and " + Job.TABLE_FILE);
        }
    }

    /** Whether a folder has a job sheet. */
    static boolean isJob(Path folder) {
        return Files.exists(folder.resolve(Job.SHEET_FILE));
    }

    /** The job folders in a folder, and what looks like one. */
    static List<Found> within(Path path) throws InputException {
        List<Found> found = new ArrayList<>();
        collect(path, 1, found);
        return found;
    }

    private static void collect(Path folder, int depth, List<Found> found) throws InputException {
        for (Path child : children(folder)) {
            if (isJob(child)) {
                found.add(new Found(child, Optional.empty()));
                continue;
            }
            Optional<Problem> problem = Lookalike.of(child);
            problem.ifPresent(p -> found.add(new Found(child, problem)));
            if (problem.isEmpty() && Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS) && depth < DEEPEST) {
                collect(child, depth + 1, found);
            }
        }
    }

    private static List<Path> children(Path path) throws InputException {
        try (Stream<Path> children = Files.list(path)) {
            return children.sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            throw new InputException(
                    ErrorCode.UNREADABLE,
                    Origin.of(path.toString()),
                    "the folder cannot be read",
                    "Check its permissions");
        }
    }
}
