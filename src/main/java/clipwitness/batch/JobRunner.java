package clipwitness.batch;

import clipwitness.batch.load.HeapShare;
import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Attachment;
import clipwitness.job.Job;
import clipwitness.job.ReadJob;
import clipwitness.reading.Progress;
import clipwitness.report.AttachedFile;
import clipwitness.report.FolderSink;
import clipwitness.report.Leftovers;
import clipwitness.report.Printing;
import clipwitness.report.ReportDocument;
import clipwitness.report.Unprintable;
import clipwitness.report.data.JobSummary;
import clipwitness.report.data.ResultsCsv;
import clipwitness.report.data.ResultsJson;
import clipwitness.report.evidence.Seal;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;

/** One job from folder to report. */
final class JobRunner {
    private final ReportOptions options;
    private final ExecutorService workers;
    private final Progress progress;
    private final HeapShare heap = HeapShare.ofThisMachine();
    private final Batch.Listener listener;

    JobRunner(ReportOptions options, ExecutorService workers, Progress progress, Batch.Listener listener) {
        this.options = options;
        this.workers = workers;
        this.progress = progress;
        this.listener = listener;
    }

    /** Makes the report of a job that was read; whatever fails, nothing half-written stays behind. */
    JobOutcome run(Task task) {
        if (options.changedOnly()) {
            listener.doing(task.job().folder(), Stage.CHECKING);
            Optional<JobOutcome> standing = Standing.of(task, options);
            if (standing.isPresent()) {
                return standing.get();
            }
        }
        return made(task);
    }

    private JobOutcome made(Task task) {
        Job job = task.job();
        FolderSink sink = new FolderSink(task.out());
        try {
            sink.requireFree(task.files(), Inputs.files(job));
            if (options.key().isPresent()) {
                options.key().get().requireValidOn(job.sheet().report().date());
            }
            listener.doing(job.folder(), Stage.MEASURING);
            List<CaptureResult> captures = Loading.all(job, workers, progress, heap);
            Inputs inputs = Inputs.of(task.read(), captures);
            listener.doing(job.folder(), Stage.COMPARING);
            JobResults results = Examination.of(job, inputs.digest(), captures);
            List<Problem> warnings = new ArrayList<>(Unprintable.in(job));
            listener.doing(job.folder(), Stage.PRINTING);
            Map<String, byte[]> documents = documents(task, results, inputs, warnings);
            inputs.requireSamePictures();
            listener.doing(job.folder(), Stage.WRITING);
            sink.put(documents);
            leftovers(task).ifPresent(warnings::add);
            return new JobOutcome.Reported(
                    job.folder(),
                    JobSummary.of(results),
                    documents.keySet().stream().map(task.out()::resolve).toList(),
                    warnings);
        } catch (InputException e) {
            return new JobOutcome.Failed(job.folder(), e.problems());
        } catch (IOException e) {
            return new JobOutcome.Failed(job.folder(), List.of(Unwritten.problem(task.out(), e)));
        } catch (RuntimeException | Error e) { // a fault of the program; a job that fails never stops the next
            return new OwnFault(job.folder(), job.sheet().report().number(), e).outcome(options);
        }
    }

    /** In a folder for several jobs only what has the number of this one. */
    private Optional<Problem> leftovers(Task task) {
        Optional<Problem> own = Leftovers.ofNumber(task.out(), task.number(), task.results());
        return options.out().isPresent() ? own : own.or(() -> Leftovers.ofOthers(task.out(), List.of(task.number())));
    }

    private Map<String, byte[]> documents(Task task, JobResults results, Inputs inputs, List<Problem> warnings)
            throws InputException {
        Map<String, byte[]> data = new LinkedHashMap<>();
        data.put(task.json(), ResultsJson.bytes(results, inputs.digests(), templates(task), options.software()));
        data.put(task.csv(), ResultsCsv.bytes(results));
        List<AttachedFile> attached = attachments(task.read(), data);
        Map<String, byte[]> documents = new LinkedHashMap<>(data);
        for (int i = task.templates().size() - 1; i >= 0; i--) { // the first template's PDF appears last
            TemplateSource template = task.templates().get(i);
            Map<String, Figure> figures = ReportDocument.figures(results, template);
            Printing printing = new Printing(attached, options.software(), options.budget(), warnings::add);
            byte[] pdf = ReportDocument.render(results, figures, template, printing);
            documents.put(task.pdf(i), options.key().map(k -> Seal.on(pdf, k)).orElse(pdf));
        }
        return documents;
    }

    private static List<String> templates(Task task) throws InputException {
        try {
            return TemplateKey.of(task);
        } catch (IOException e) {
            throw new InputException(
                    ErrorCode.UNREADABLE,
                    Origin.of(task.job().folder().toString()),
                    "a template folder cannot be read: " + e.getMessage(),
                    "Check its permissions");
        }
    }

    private static List<AttachedFile> attachments(ReadJob read, Map<String, byte[]> data) {
        List<AttachedFile> attached = new ArrayList<>();
        for (Attachment a : read.job().sheet().report().attach()) {
            switch (a) {
                case RESULTS -> data.forEach((name, bytes) -> attached.add(new AttachedFile(name, bytes)));
                case SHEET -> attached.add(new AttachedFile(Job.SHEET_FILE, read.sheet()));
                case CAPTURES -> attached.add(new AttachedFile(Job.TABLE_FILE, read.table()));
            }
        }
        return attached;
    }
}
