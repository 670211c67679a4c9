package clipwitness.batch;

import clipwitness.batch.load.Loading;
import clipwitness.batch.load.Sha256;
import clipwitness.batch.load.Workers;
import clipwitness.compare.Examination;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.job.Job;
import clipwitness.reading.Progress;
import clipwitness.report.data.ResultsCsv;
import clipwitness.report.data.ResultsDifference;
import clipwitness.report.data.ResultsDocument;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.evidence.PaperFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;

/** What the files of a job say of a report: whether they are the ones that it was made from, and whether they still give its figures and pages. */
final class PaperAgainstJob {
    private final PaperFile paper;
    private final ResultsDocument said;
    private final String software;
    private final Verification verification;

    PaperAgainstJob(PaperFile paper, ResultsDocument said, String software, Verification verification) {
        this.paper = paper;
        this.said = said;
        this.software = software;
        this.verification = verification;
    }

    /**
     * Looks at a job folder.
     *
     * @throws InputException if its files are those of the report and can all the same not be measured
     */
    void check(Path folder, Progress progress) throws InputException {
        if (!areSameFiles(folder)) {
            verification.note("The results were not computed again, because the files are not those of the report.");
            return;
        }
        Task task = Task.of(folder, new ReportOptions(Optional.empty(), List.of(), software));
        ExecutorService workers = Workers.start();
        try {
            List<CaptureResult> captures = Loading.all(task.job(), workers, progress);
            Inputs inputs = Inputs.of(task.read(), captures);
            JobResults results = Examination.of(task.job(), inputs.digest(), captures);
            if (!said.listsAllInputs()) {
                unlisted(inputs.digest());
            }
            figures(results, inputs);
        } finally {
            workers.shutdownNow();
        }
    }

    private boolean areSameFiles(Path folder) {
        Map<String, String> inputs = said.inputs();
        boolean same = true;
        for (Map.Entry<String, String> input : inputs.entrySet()) {
            same &= isSame(folder, input.getKey(), input.getValue());
        }
        if (same) {
            verification.holds(inputs.size() + " files of " + folder + " are those that the report was made from"
                    + (said.listsAllInputs()
                            ? "."
                            : ": its exports. An earlier version of the program did not list the other files."));
        }
        return same;
    }

    /** A name from a report is looked for in the job folder alone. */
    private boolean isSame(Path folder, String name, String digest) {
        Path file = folder.resolve(name).normalize();
        if (!file.startsWith(folder.normalize()) || !Files.isRegularFile(file)) {
            verification.differs(name + ": the report was made from this file, and it is not in " + folder + ".");
            return false;
        }
        try {
            if (Sha256.of(file).equals(digest)) {
                return true;
            }
            verification.differs(name + ": the file was changed after the report was made" + where(name, file)
                    + ". Find the file as it was, or make the report anew.");
        } catch (IOException e) {
            verification.open(name + ": the file cannot be read. Check its permissions.");
        }
        return false;
    }

    /** The first line in which a text differs from the one that is attached; nothing where none is attached. */
    private String where(String name, Path file) throws IOException {
        byte[] attached = paper.attachments().get(name);
        if (attached == null || !(name.equals(Job.SHEET_FILE) || name.equals(Job.TABLE_FILE))) {
            return "";
        }
        List<String> then = new String(attached, StandardCharsets.UTF_8).lines().toList();
        List<String> now = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int line = 0;
        while (line < then.size() && line < now.size() && then.get(line).equals(now.get(line))) {
            line++;
        }
        return ", first in line " + (line + 1);
    }

    /** Results that do not list sheet, table and pictures still hold the digest over all of them. */
    private void unlisted(String digest) {
        if (digest.equals(said.inputsDigest())) {
            verification.holds("The digest over sheet, table, exports and pictures is that of the report.");
        } else {
            verification.differs(
                    "The digest over sheet, table, exports and pictures is not that of the report. The exports are the same: "
                            + Job.SHEET_FILE + ", " + Job.TABLE_FILE + " or a picture was changed.");
        }
    }

    private void figures(JobResults results, Inputs inputs) throws InputException {
        byte[] json = ResultsJson.bytes(results, inputs.digests(), said.templates(), software);
        ResultsDocument now = ResultsDocument.of(json).orElseThrow();
        boolean sameProgram =
                said.software().equals(software) && paper.software().equals(software);
        String name = said.number() + "-results.json";
        List<String> differences =
                sameProgram ? ResultsDifference.exact(said, now) : ResultsDifference.beyondUncertainty(said, now);
        if (!sameProgram) {
            verification.note(
                    "The report was made by " + (said.software().isEmpty() ? "another version" : said.software())
                            + ", this is " + software + ": figures are compared within their uncertainty.");
        }
        if (differences.isEmpty()) {
            verification.holds("The attached " + name + ": computed again from the files, "
                    + (sameProgram
                            ? "all results are the same."
                            : "all figures agree within their uncertainty, and all decisions are the same."));
        }
        PaperAlone.few(verification, name + ", ", differences);
        if (sameProgram && Arrays.equals(json, paper.attachments().get(name))) {
            table(results);
        }
        if (differences.isEmpty()) {
            new PagesAgain(paper, sameProgram, said.templates(), verification).check(results);
        }
    }

    private void table(JobResults results) {
        String name = said.number() + "-results.csv";
        byte[] attached = paper.attachments().get(name);
        if (attached == null) {
            return;
        }
        List<String> then = new String(attached, StandardCharsets.UTF_8).lines().toList();
        List<String> now = new String(ResultsCsv.bytes(results), StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (then.equals(now)) {
            verification.holds(
                    "The attached " + name + ": computed again from the files, the whole table is the same.");
            return;
        }
        int line = 0;
        while (line < then.size() && line < now.size() && then.get(line).equals(now.get(line))) {
            line++;
        }
        verification.differs(name + ", line " + (line + 1) + ": it says '" + (line < then.size() ? then.get(line) : "")
                + "', the data give '" + (line < now.size() ? now.get(line) : "") + "'.");
    }
}
