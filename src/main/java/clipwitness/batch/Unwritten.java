package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.NotWrittenException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Why a report or a page could not be written, in words for whoever chose the place. */
public final class Unwritten {
    private Unwritten() {}

    /**
     * The message.
     *
     * @param out   place that was chosen with {@code --out}
     * @param fault what the system said
     */
    public static Problem problem(Path out, IOException fault) {
        if (fault instanceof NotWrittenException e && e.getCause() instanceof IOException cause) {
            String standing = e.restored()
                    ? "what stood there before is as it was"
                    : "not all that stood there before could be put back, which the next run into this folder does";
            return problem(out, reason(Optional.of(e.target()), cause), standing);
        }
        return problem(out, reason(Optional.empty(), fault), "what stood there before is as it was");
    }

    /**
     * The message for a place that no option names.
     *
     * @param place  what was to be written
     * @param fault  what the system said
     * @param remedy what can be done
     */
    public static Problem problem(Path place, IOException fault, String remedy) {
        IOException cause = fault instanceof NotWrittenException e && e.getCause() instanceof IOException c ? c : fault;
        Optional<String> target = fault instanceof NotWrittenException e ? Optional.of(e.target()) : Optional.empty();
        return new Problem(
                ErrorCode.NOT_WRITTEN,
                Origin.of(place.toString()),
                "could not be written: " + reason(target, cause),
                remedy);
    }

    private static Problem problem(Path out, String reason, String standing) {
        return new Problem(
                ErrorCode.NOT_WRITTEN,
                Origin.of(out.toString()),
                "could not be written: " + reason,
                "Choose another place with --out; " + standing);
    }

    /**
     * What the system said.
     *
     * @param target the document that was to be written; the system may name the temporary file that was its beginning
     */
    private static String reason(Optional<String> target, IOException fault) {
        Optional<String> file =
                target.or(() -> fault instanceof FileSystemException e ? Optional.of(e.getFile()) : Optional.empty());
        if (fault instanceof FileAlreadyExistsException e) {
            return e.getFile() + " is a file, not a folder";
        }
        if (fault instanceof AccessDeniedException) {
            return "this user may not write " + file.orElseThrow();
        }
        if (fault instanceof NoSuchFileException) {
            return file.orElseThrow() + ": the folder was lost meanwhile";
        }
        String said = fault instanceof FileSystemException e ? e.getReason() : fault.getMessage();
        return file.map(f -> f + ": ").orElse("")
                + (said == null || said.isEmpty() ? "the system does not say why" : said);
    }
}
