package clipwitness.report;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;

/** What stands where a document is to be written, and may not be replaced. */
final class TakenPlace {
    private static final String REMEDY = "Name another place with --out, or move it away";

    private TakenPlace() {}

    /**
     * What is wrong with a place; empty where nothing stands there, or a document of this program.
     *
     * @param target file to be written
     * @param inputs files that the document is made from, which are never replaced
     */
    static Optional<Problem> at(Path target, Collection<Path> inputs) {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        Origin where = Origin.of(target.toString());
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(new Problem(ErrorCode.PLACE_TAKEN, where, "a folder has the name of a result", REMEDY));
        }
        if (inputs.stream().anyMatch(i -> isSame(i, target))) {
            return Optional.of(new Problem(
                    ErrorCode.PLACE_TAKEN,
                    where,
                    "this input of the job has the name of a result, and is left as it is",
                    "Name another place with --out"));
        }
        return isOwn(target)
                ? Optional.empty()
                : Optional.of(new Problem(
                        ErrorCode.PLACE_TAKEN,
                        where,
                        "a file that this program has not written has the name of a result, and is left as it is",
                        REMEDY));
    }

    private static boolean isOwn(Path target) {
        try {
            return OwnMark.isOn(target);
        } catch (IOException e) {
            return false; // what cannot be read is not known to be this program's
        }
    }

    private static boolean isSame(Path input, Path target) {
        try {
            return Files.isSameFile(input, target);
        } catch (IOException e) {
            return false;
        }
    }
}
