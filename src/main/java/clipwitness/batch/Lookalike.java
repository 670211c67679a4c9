package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds folders that somebody may take for job folders, though the program does not; each is named, so that no job is left out in silence. */
final class Lookalike {
    /** Other spellings of {@code job.yaml}, and the ending that some editors add. */
    private static final Pattern SHEET = Pattern.compile("(?i)job\\.ya?ml(\\.txt)?");

    private Lookalike() {}

    /** Why what lies in a folder of jobs is no job; empty where nobody would take it for one. */
    static Optional<Problem> of(Path child) {
        if (Files.isSymbolicLink(child) && !Files.exists(child)) {
            return problem(
                    ErrorCode.NO_JOB,
                    child,
                    "is a link that leads nowhere",
                    "Remove it, or let it lead to the job folder");
        }
        if (!Files.isDirectory(child)) {
            return Optional.empty();
        }
        return misnamed(child).or(() -> Files.isSymbolicLink(child) ? linked(child) : Optional.empty());
    }

    /** Why a folder without a job sheet is no job, though it holds something like one. */
    static Optional<Problem> misnamed(Path folder) {
        Path sheet = folder.resolve(Job.SHEET_FILE);
        if (Files.isSymbolicLink(sheet)) {
            return problem(
                    ErrorCode.NO_JOB, sheet, "is a link that leads nowhere", "Copy the job sheet into the job folder");
        }
        try {
            List<Path> entries = entries(folder);
            for (Path entry : entries) {
                String name = entry.getFileName().toString();
                if (SHEET.matcher(name).matches()) {
                    return problem(
                            ErrorCode.NO_JOB,
                            folder,
                            "is not taken as a job, because its sheet is called " + name,
                            "Rename it to " + Job.SHEET_FILE);
                }
            }
            return entries.contains(folder.resolve(Job.TABLE_FILE))
                    ? problem(
                            ErrorCode.NO_JOB,
                            folder,
                            "is not taken as a job, because it has a " + Job.TABLE_FILE + " but no " + Job.SHEET_FILE,
                            "Write the job sheet; the README shows a first one")
                    : Optional.empty();
        } catch (IOException e) {
            return problem(ErrorCode.UNREADABLE, folder, "the folder cannot be read", "Check its permissions");
        }
    }

    /** Links to folders of jobs are not followed; one that leads back to a folder around it hides no job. */
    private static Optional<Problem> linked(Path folder) {
        try {
            if (folder.toAbsolutePath().getParent().toRealPath().startsWith(folder.toRealPath())) {
                return Optional.empty();
            }
            List<String> jobs = entries(folder).stream()
                    .filter(JobFolders::isJob)
                    .map(j -> j.getFileName().toString())
                    .toList();
            return jobs.isEmpty()
                    ? Optional.empty()
                    : problem(
                            ErrorCode.NO_JOB,
                            folder,
                            "the job folders in it are not taken, because it is a link: " + String.join(", ", jobs),
                            "Name the folder to which it leads");
        } catch (IOException e) {
            return problem(ErrorCode.UNREADABLE, folder, "the folder cannot be read", "Check its permissions");
        }
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        }
    }

    private static Optional<Problem> problem(ErrorCode code, Path where, String what, String remedy) {
        return Optional.of(new Problem(code, Origin.of(where.toString()), what, remedy));
    }
}
