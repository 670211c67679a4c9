package clipwitness.batch;

import clipwitness.report.data.ResultsDocument;
import clipwitness.report.evidence.PaperFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** Whether the results that lie in the folder of a report are the ones that it carries: a reader takes the three for one set. */
final class FilesBesidePaper {
    private FilesBesidePaper() {}

    /** Looks at the files that a run writes beside its PDF, where they are there. */
    static void check(Path report, PaperFile paper, ResultsDocument results, Verification verification) {
        for (String ending : List.of("-results.json", "-results.csv")) {
            String name = results.number() + ending;
            byte[] attached = paper.attachments().get(name);
            Path file = report.toAbsolutePath().resolveSibling(name).normalize();
            boolean isThere =
                    file.getParent().equals(report.toAbsolutePath().normalize().getParent())
                            && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
            if (attached != null && isThere) {
                compare(file, name, attached, verification);
            }
        }
    }

    private static void compare(Path file, String name, byte[] attached, Verification verification) {
        try {
            boolean same = Files.size(file) == attached.length && Arrays.equals(Files.readAllBytes(file), attached);
            if (same) {
                verification.holds(name + ": the file beside the report is the attached one.");
            } else {
                verification.differs(
                        name
                                + ": the file beside the report is not the attached one. It was changed, or another run made it.");
            }
        } catch (IOException e) {
            verification.open(name + ": the file beside the report cannot be read. Check its permissions.");
        }
    }
}
