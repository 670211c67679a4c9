package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.NativeNames;
import clipwitness.fault.Nearest;
import clipwitness.job.Job;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Files that a job names: they lie inside its folder, also behind symbolic links, and exist. */
final class JobFiles {
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final String INSIDE =
            "Copy it into the job folder and name it from there, for example captures/after.csv";
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private final Path folder;

    /** Files of a folder that exists. */
    JobFiles(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** A check of a file that may find it unreadable. */
    private interface Check {
        boolean passes(Field field, String written, Path path) throws IOException;
    }

    /** The path as written, with forward slashes; a fault and nothing where no such file is inside the folder. */
    Optional<String> file(Field field) {
        return checked(field, this::isFileInside);
    }

    /** The same for a picture, JPEG or PNG by its first bytes. */
    Optional<String> picture(Field field) {
        return checked(field, (f, written, path) -> isFileInside(f, written, path) && isPicture(f, written, path));
    }

    /** Whether a file of this name is there, inside the folder or not. */
    boolean isThere(String written) {
        try {
            return Files.isRegularFile(folder.resolve(written.replace('\\', '/')));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private Optional<String> checked(Field field, Check check) {
        String written = field.text().replace('\\', '/');
        try {
            Path path = folder.resolve(written).normalize();
            return check.passes(field, written, path) ? Optional.of(written) : Optional.empty();
        } catch (InvalidPathException e) {
            field.fault(
                    NameWords.quoted(written) + " cannot be the name of a file",
                    NativeNames.here().remedy(written).orElse("Write the path of a file in the job folder"));
        } catch (IOException e) {
            field.fault(
                    ErrorCode.UNREADABLE,
                    NameWords.quoted(written) + " could not be read",
                    "Check whether this user may read it");
        }
        return Optional.empty();
    }

    private boolean isFileInside(Field field, String written, Path path) throws IOException {
        boolean relative = !written.startsWith("/") && !written.matches("[A-Za-z]:.*");
        if (!relative || !path.startsWith(folder)) {
            field.fault(ErrorCode.OUTSIDE_FOLDER, NameWords.quoted(written) + " lies outside the job folder", INSIDE);
        } else if (!Files.exists(path)) {
            field.fault(
                    ErrorCode.NO_SUCH_FILE,
                    Files.isSymbolicLink(path)
                            ? NameWords.quoted(written) + " is a link that leads nowhere"
                            : "there is no file " + NameWords.quoted(written),
                    insteadOf(path));
        } else if (!path.toRealPath().startsWith(folder.toRealPath())) {
            field.fault(
                    ErrorCode.OUTSIDE_FOLDER,
                    NameWords.quoted(written) + " leads outside the job folder through a link",
                    INSIDE);
        } else if (isResult(path)) {
            field.fault(
                    ErrorCode.NO_SUCH_FILE,
                    NameWords.quoted(written) + " lies in the folder of the results, which is never read as input",
                    "Move it to another folder of the job");
        } else if (Files.isDirectory(path)) {
            field.fault(
                    ErrorCode.NOT_A_FILE, NameWords.quoted(written) + " is a folder, not a file", "Name a file in it");
        } else if (!Files.isRegularFile(path)) {
            field.fault(
                    ErrorCode.NOT_A_FILE,
                    NameWords.quoted(written) + " is no ordinary file",
                    "Save what it gives as a file");
        } else {
            return true;
        }
        return false;
    }

    private boolean isResult(Path path) throws IOException {
        Path results = folder.resolve(Job.REPORT_FOLDER);
        return Files.exists(results) && path.toRealPath().startsWith(results.toRealPath());
    }

    private static String insteadOf(Path missing) throws IOException {
        return siblingMeant(missing)
                .map(name -> "Is " + NameWords.quoted(name) + " meant?")
                .orElse("Paths count from the job folder; upper and lower case differ");
    }

    /** Name of the file in the same folder that a file that is not there was probably meant to be. */
    static Optional<String> siblingMeant(Path missing) throws IOException {
        Path parent = missing.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            return Optional.empty();
        }
        try (Stream<Path> siblings = Files.list(parent)) {
            List<String> names = siblings.filter(Files::isRegularFile)
                    .map(s -> s.getFileName().toString())
                    .sorted()
                    .toList();
            String name = missing.getFileName().toString();
            return Nearest.slipOf(
                    name, names.stream().filter(n -> !isAnotherNumber(n, name)).toList());
        }
    }

    /** Whether only the digits of two names differ: then one is no slip of the other but another capture, {@code g050} and {@code g000}. */
    private static boolean isAnotherNumber(String one, String other) {
        return DIGITS.matcher(one).replaceAll("").equals(DIGITS.matcher(other).replaceAll(""));
    }

    private static boolean isPicture(Field field, String written, Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            byte[] head = in.readNBytes(PNG.length);
            boolean jpeg = Arrays.equals(Arrays.copyOf(head, JPEG.length), JPEG);
            if (!jpeg && !Arrays.equals(head, PNG)) {
                field.fault(
                        ErrorCode.BAD_PICTURE,
                        NameWords.quoted(written) + " is neither a JPEG nor a PNG picture",
                        "Save it again as one of them; the ending of a name makes no picture");
                return false;
            }
            return true;
        }
    }
}
