package clipwitness.report.page;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Photo;
import clipwitness.report.paper.PageFiles;
import clipwitness.report.picture.Pictures;
import clipwitness.report.picture.UnreadablePictureException;
import java.util.ArrayList;
import java.util.HashMap;
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
    private final Map<String, byte[]> fromTemplate = new HashMap<>();
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
        Optional<byte[]> picture = TemplateSource.inFolder(job.folder(), file);
        if (picture.isEmpty()) {
            problems.add(unreadable(Origin.of(file), "is not there", "the job folder"));
        }
        picture.flatMap(bytes -> printable(bytes, Origin.of(file), "the job folder"))
                .ifPresent(bytes -> pictures.put(name, bytes));
    }

    private Optional<byte[]> printable(byte[] picture, Origin place, String folder) {
        try {
            return Optional.of(Pictures.forPrint(picture));
        } catch (UnreadablePictureException e) {
            problems.add(unreadable(place, e.getMessage(), folder));
            return Optional.empty();
        }
    }

    private static Problem unreadable(Origin place, String what, String folder) {
        return new Problem(
                ErrorCode.BAD_PICTURE,
                place,
                "this picture " + what,
                "Save it again as a whole JPEG or PNG file inside " + folder
                        + ", in the colours of a screen, at most some thousand pixels wide");
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
        byte[] ofJob = pictures.get(name);
        Optional<byte[]> found = ofJob != null ? Optional.of(ofJob) : ofTemplate(name);
        if (found.isEmpty()) {
            problems.add(new Problem(
                    ErrorCode.BAD_TEMPLATE,
                    template.placeOf(name),
                    "the page names '" + name + "', which is no file of the template folder",
                    template.fileLike(name)
                                    .map(n -> "Did you mean '" + n + "'? ")
                                    .orElse("")
                            + "A template uses its own files only; nothing is fetched from elsewhere"));
        }
        return found;
    }

    /** A file of the template; its pictures are written anew, as those of the job are. */
    private Optional<byte[]> ofTemplate(String name) {
        Optional<byte[]> file = template.any(name);
        if (file.filter(Pictures::isPicture).isEmpty()) {
            return file;
        }
        byte[] printed = fromTemplate.computeIfAbsent(
                name,
                n -> printable(file.get(), Origin.of(template.nameOf(n)), "the template's folder")
                        .orElse(new byte[0]));
        return Optional.of(printed);
    }

    /** Throws what was missing. */
    public void check() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems.stream().distinct().toList());
        }
    }
}
