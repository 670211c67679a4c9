package clipwitness.report.page;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Photo;
import clipwitness.report.paper.PageFiles;
import clipwitness.report.paper.Pictures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a report's page may name: the template's files, and the job's logo and photos under names of their own. */
public final class ReportFiles implements PageFiles {
    private static final String LOGO = "job:logo";
    private static final String PHOTO = "job:photo-";

    private final TemplateSource template;
    private final Map<String, byte[]> pictures = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    public ReportFiles(TemplateSource template, Job job) {
        this.template = template;
        JobSheet sheet = job.sheet();
        sheet.shop().logo().ifPresent(file -> take(job, file, LOGO));
        int number = 1;
        for (Photo photo : sheet.photos()) {
            take(job, photo.file(), PHOTO + number);
            number++;
        }
    }

    private void take(Job job, String file, String name) {
        Optional<byte[]> picture = TemplateSource.inFolder(job.folder(), file).flatMap(Pictures::forPrint);
        picture.ifPresent(bytes -> pictures.put(name, bytes));
        if (picture.isEmpty()) {
            problems.add(new Problem(
                    Origin.of(file),
                    "this picture is not there, damaged, or neither JPEG nor PNG",
                    "Save it again as a whole JPEG or PNG file inside the job folder"));
        }
    }

    /** Name of the logo for the page; empty where there is none. */
    public String logo() {
        return pictures.containsKey(LOGO) ? LOGO : "";
    }

    /** Names of the photos for the page. */
    public List<String> photos() {
        return pictures.keySet().stream().filter(n -> n.startsWith(PHOTO)).toList();
    }

    @Override
    public Optional<byte[]> find(String name) {
        byte[] picture = pictures.get(name);
        Optional<byte[]> found = picture != null ? Optional.of(picture) : template.any(name);
        if (found.isEmpty()) {
            problems.add(new Problem(
                    Origin.of(template.nameOf(TemplateSource.PAGE)),
                    "the page names '" + name + "', which is no file of the template folder",
                    "A template uses its own files only; nothing is fetched from elsewhere"));
        }
        return found;
    }

    /** Throws what was missing. */
    public void check() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems.stream().distinct().toList());
        }
    }
}
