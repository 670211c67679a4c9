package clipwitness.batch;

import clipwitness.fault.InputException;
import clipwitness.report.OwnMark;
import clipwitness.report.data.StandingResults;
import clipwitness.report.evidence.PaperFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds a report that an earlier run has made, and that would come out the same. */
final class Standing {
    private Standing() {}

    /**
     * The outcome of a job that need not be made again: its results carry the digest of the inputs as they are now, this version of the program
     * and the templates that are asked for, all files are there, and their PDFs carry the signature of the key that is to sign. Empty otherwise; also where that cannot be told, as making the report says why.
     * Nothing is measured for it.
     */
    static Optional<JobOutcome> of(Task task, ReportOptions options) {
        try {
            return found(task, options);
        } catch (IOException | InputException e) {
            return Optional.empty();
        }
    }

    private static Optional<JobOutcome> found(Task task, ReportOptions options) throws IOException, InputException {
        Path json = task.out().resolve(task.json());
        if (!Files.isRegularFile(json) || !allThere(task)) {
            return Optional.empty();
        }
        Optional<StandingResults> results = StandingResults.read(Files.readAllBytes(json))
                .filter(r -> r.software().equals(options.software()))
                .filter(r -> r.summary().number().equals(task.number()));
        if (results.isEmpty()
                || !results.get().templates().equals(TemplateKey.of(task))
                || !results.get().digest().equals(Inputs.ofFiles(task.read()).digest())
                || !isSigned(task, options)) {
            return Optional.empty();
        }
        return Optional.of(
                new JobOutcome.Unchanged(task.job().folder(), results.get().summary(), files(task)));
    }

    private static List<Path> files(Task task) {
        List<Path> files = new ArrayList<>();
        for (String name : task.results()) {
            files.add(task.out().resolve(name));
        }
        return files;
    }

    private static boolean isSigned(Task task, ReportOptions options) throws InputException {
        if (options.key().isPresent()) {
            for (Path file : files(task)) {
                if (file.toString().endsWith(".pdf") && !options.key().get().hasSigned(PaperFile.of(file))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean allThere(Task task) throws IOException {
        for (Path file : files(task)) {
            if (!Files.exists(file) || !OwnMark.isOn(file)) {
                return false;
            }
        }
        return true;
    }
}
