package clipwitness.batch;

import clipwitness.compare.Examination;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Attachment;
import clipwitness.job.Job;
import clipwitness.reading.Progress;
import clipwitness.report.AttachedFile;
import clipwitness.report.FolderSink;
import clipwitness.report.Printing;
import clipwitness.report.ReportDocument;
import clipwitness.report.Unprintable;
import clipwitness.report.data.ResultsCsv;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;

/** One job from folder to report. */
final class JobRunner {
    private final ReportOptions options;
    private final ExecutorService workers;
    private final Progress progress;

    JobRunner(ReportOptions options, ExecutorService workers, Progress progress) {
        this.options = options;
        this.workers = workers;
        this.progress = progress;
    }

    /** Makes the report of a job that was read; whatever fails, nothing half-written stays behind. */
    JobOutcome run(Job job) {
        Path out = options.outputOf(job.folder());
        try {
            List<CaptureResult> captures = Loading.all(job, workers, progress);
            JobResults results = Examination.of(job, Inputs.digest(job, captures), captures);
            List<Problem> warnings = new ArrayList<>(Unprintable.in(job));
            Map<String, byte[]> documents = documents(results, warnings);
            new FolderSink(out).put(documents);
            return new JobOutcome.Reported(
                    job.folder(),
                    results,
                    documents.keySet().stream().map(out::resolve).toList(),
                    warnings);
        } catch (InputException e) {
            return new JobOutcome.Failed(job.folder(), e.problems());
        } catch (IOException e) {
            return new JobOutcome.Failed(job.folder(), List.of(Unwritten.problem(out, e)));
        } catch (RuntimeException | Error e) { // our mistake, but one job that fails never stops the next
            return new OwnFault(job.folder(), job.sheet().report().number(), e).outcome(options);
        }
    }

    private Map<String, byte[]> documents(JobResults results, List<Problem> warnings)
            throws InputException, IOException {
        String number = results.job().sheet().report().number();
        Map<String, byte[]> data = new LinkedHashMap<>();
        data.put(number + "-results.json", ResultsJson.bytes(results, options.software()));
        data.put(number + "-results.csv", ResultsCsv.bytes(results));
        List<AttachedFile> attached = attachments(results.job(), data);
        List<TemplateSource> templates = templates(results.job());
        Map<String, byte[]> documents = new LinkedHashMap<>(data);
        for (int i = templates.size() - 1; i >= 0; i--) { // the first template's PDF appears last
            Map<String, Figure> figures = ReportDocument.figures(results, templates.get(i));
            String name =
                    i == 0 ? number + ".pdf" : number + "-" + templates.get(i).name() + ".pdf";
            Printing printing = new Printing(attached, options.software(), options.budget(), warnings::add);
            documents.put(name, ReportDocument.render(results, figures, templates.get(i), printing));
        }
        return documents;
    }

    private List<TemplateSource> templates(Job job) throws InputException {
        List<String> names =
                options.templates().isEmpty() ? List.of(job.sheet().report().template()) : options.templates();
        List<TemplateSource> templates = new ArrayList<>();
        for (String name : names) {
            templates.add(TemplateSource.find(name, job.folder()));
        }
        return templates;
    }

    private static List<AttachedFile> attachments(Job job, Map<String, byte[]> data) throws IOException {
        List<AttachedFile> attached = new ArrayList<>();
        for (Attachment a : job.sheet().report().attach()) {
            switch (a) {
                case RESULTS -> data.forEach((name, bytes) -> attached.add(new AttachedFile(name, bytes)));
                case SHEET -> attached.add(file(job, Job.SHEET_FILE));
                case CAPTURES -> attached.add(file(job, Job.TABLE_FILE));
            }
        }
        return attached;
    }

    private static AttachedFile file(Job job, String name) throws IOException {
        return new AttachedFile(name, Files.readAllBytes(job.folder().resolve(name)));
    }
}
