package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import clipwitness.job.ReadJob;
import clipwitness.job.read.JobReader;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A job that was read, with the templates that its report is made with.
 *
 * @param read      the job
 * @param templates the first makes {@code N.pdf}, each further one {@code N-TEMPLATE.pdf}
 * @param out       folder for the results
 */
record Task(ReadJob read, List<TemplateSource> templates, Path out) {
    Task {
        templates = List.copyOf(templates);
    }

    /**
     * Reads a job and finds its templates.
     *
     * @throws InputException if either cannot be done, or the results would go where they must not
     */
    static Task of(Path folder, ReportOptions options) throws InputException {
        ReadJob read = JobReader.readWhole(folder);
        Job job = read.job();
        List<String> names =
                options.templates().isEmpty() ? List.of(job.sheet().report().template()) : options.templates();
        List<TemplateSource> templates = new ArrayList<>();
        for (String name : names) {
            templates.add(TemplateSource.find(name, folder));
        }
        Task task = new Task(read, templates, options.outputOf(folder));
        task.refuseAlikeTemplates(names);
        requireOwnFolder(folder, options);
        return task;
    }

    Job job() {
        return read.job();
    }

    /** Number of the report. */
    String number() {
        return job().sheet().report().number();
    }

    /** File name of the PDF that a template makes. */
    String pdf(int template) {
        return template == 0
                ? number() + ".pdf"
                : number() + "-" + templates.get(template).name() + ".pdf";
    }

    /** File name of the results as JSON. */
    String json() {
        return number() + "-results.json";
    }

    /** File name of the results as a table. */
    String csv() {
        return number() + "-results.csv";
    }

    /** File names of all that this may write. */
    List<String> files() {
        List<String> files = new ArrayList<>(results());
        files.add(OwnFault.file(number()));
        return files;
    }

    /** File names of a whole report, in the order in which they appear: the first template's PDF last. */
    List<String> results() {
        List<String> files = new ArrayList<>(List.of(json(), csv()));
        for (int i = templates.size() - 1; i >= 0; i--) {
            files.add(pdf(i));
        }
        return files;
    }

    private void refuseAlikeTemplates(List<String> names) throws InputException {
        Set<String> files = new HashSet<>();
        for (int i = 0; i < templates.size(); i++) {
            if (!files.add(pdf(i).toLowerCase(Locale.ROOT))) {
                throw new InputException(
                        ErrorCode.PLACE_TAKEN,
                        Origin.of(names.get(i)),
                        "two templates would write the same file " + pdf(i),
                        "Give each template folder a name of its own; upper and lower case are alike");
            }
        }
    }

    /** The usual folder of results lies in the job folder: a link must not lead the results elsewhere. */
    static void requireOwnFolder(Path folder, ReportOptions options) throws InputException {
        Path out = options.outputOf(folder);
        if (options.out().isPresent() || !Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            if (out.toRealPath().startsWith(folder.toRealPath())) {
                return;
            }
        } catch (IOException e) {
            // it leads nowhere
        }
        throw new InputException(
                ErrorCode.OUTSIDE_FOLDER,
                Origin.of(out.toString()),
                "the folder for the results is a link that leads outside the job folder",
                "Name the folder with --out, or remove the link");
    }
}
