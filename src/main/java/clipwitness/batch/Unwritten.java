package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.Destination;
import clipwitness.report.NotWrittenException;
import clipwitness.report.WriteFault;
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

    /** The message for a place that was chosen with {@code --out}. */
    public static Problem problem(Path out, IOException fault) {
        return problem(out, fault, Destination.OUT);
    }

    /**
     * The message.
     *
     * @param place  place that was chosen
     * @param fault  what the system said
     * @param chosen how it was chosen
     */
    public static Problem problem(Path place, IOException fault, Destination chosen) {
        if (fault instanceof NotWrittenException e && e.getCause() instanceof IOException cause) {
            String standing = e.restored()
                    ? "what stood there before is as it was"
                    : "not all that stood there before could be put back, which the next run into this folder does";
            return problem(place, reason(Optional.of(e.target()), cause), advice(e.fault(), chosen) + "; " + standing);
        }
        return problem(
                place,
                reason(Optional.empty(), fault),
                advice(WriteFault.OTHER, chosen) + "; what stood there before is as it was");
    }

    private static String advice(WriteFault fault, Destination chosen) {
        return switch (fault) {
            case FULL -> "Make room on that disk, or choose " + chosen.other();
            case HELD -> "Close it where it is open, in a viewer for example, or choose " + chosen.other();
            case FORBIDDEN -> "Let this user write there, or choose " + chosen.other();
            case OTHER -> "Choose " + chosen.other();
        };
    }

    private static Problem problem(Path place, String reason, String remedy) {
        return new Problem(
                ErrorCode.NOT_WRITTEN, Origin.of(place.toString()), "could not be written: " + reason, remedy);
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
