package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the two text files of a job folder: UTF-8, with or without mark, or UTF-16 with mark. */
final class TextFile {
    private static final int LARGEST = 1 << 20;
    private static final char MARK = '\ufeff';

    private final Path path;
    private final String name;
    private final byte[] bytes;

    private TextFile(Path path, String name) throws IOException {
        this.path = path;
        this.name = name;
        try (InputStream in = Files.newInputStream(path)) {
            this.bytes = in.readNBytes(LARGEST + 1);
        }
    }

    /**
     * Reads a file.
     *
     * @param folder job folder
     * @param name   name of the file in it
     * @param absent what to do when the file is not there, a sentence
     * @throws InputException if there is no such file in the folder, it cannot be read, or is too large to be meant
     */
    static TextFile read(Path folder, String name, String absent) throws InputException {
        Path path = folder.resolve(name);
        try {
            refuseAbsent(folder, path, name, absent);
            if (!path.toRealPath().startsWith(folder.toRealPath())) {
                throw new InputException(
                        ErrorCode.OUTSIDE_FOLDER,
                        Origin.of(name),
                        "the file leads outside the job folder " + folder + " through a link",
                        "Copy it into the job folder");
            }
            TextFile file = new TextFile(path, name);
            file.refuseLarge();
            return file;
        } catch (IOException e) {
            throw new InputException(
                    ErrorCode.UNREADABLE,
                    Origin.of(name),
                    "the file could not be read",
                    "Check whether this user may read " + path);
        }
    }

    private static void refuseAbsent(Path folder, Path path, String name, String absent)
            throws InputException, IOException {
        if (Files.isRegularFile(path)) {
            return;
        }
        if (Files.isSymbolicLink(path) && !Files.exists(path)) {
            throw new InputException(
                    ErrorCode.NO_SUCH_FILE,
                    Origin.of(name),
                    "is a link that leads nowhere",
                    "Copy the file into " + folder);
        }
        if (Files.exists(path)) {
            throw new InputException(
                    ErrorCode.NOT_A_FILE,
                    Origin.of(name),
                    "is no ordinary file in the job folder " + folder,
                    "Write it as a text file");
        }
        String remedy = JobFiles.siblingMeant(path)
                .map(meant -> "Is " + NameWords.quoted(meant) + " meant? Then rename it")
                .orElse(absent);
        throw new InputException(
                ErrorCode.NO_SUCH_FILE, Origin.of(name), "there is no such file in the job folder " + folder, remedy);
    }

    private void refuseLarge() throws InputException, IOException {
        if (bytes.length > LARGEST) {
            throw new InputException(
                    ErrorCode.TOO_LARGE,
                    Origin.of(name),
                    "the file has " + Files.size(path) + " bytes, and at most " + LARGEST + " are read",
                    "Check whether this is the right file");
        }
    }

    /** The bytes that were read; not to be changed. */
    byte[] bytes() {
        return bytes;
    }

    /**
     * The text.
     *
     * @param instead charset to try where the bytes are not UTF-8, or nothing to refuse them
     * @throws InputException if a character cannot be read
     */
    String text(Optional<Charset> instead) throws InputException {
        try {
            String text = decoded(unicode());
            return text.startsWith(String.valueOf(MARK)) ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            if (instead.isPresent()) {
                return new String(bytes, instead.get());
            }
            throw new InputException(
                    ErrorCode.BAD_CHARACTER,
                    Origin.of(name, firstBadLine()),
                    "a character is not UTF-8",
                    "Save the file as UTF-8");
        }
    }

    private Charset unicode() {
        if (bytes.length > 1 && bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe) {
            return StandardCharsets.UTF_16LE;
        }
        boolean big = bytes.length > 1 && bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff;
        return big ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    private String decoded(Charset charset) throws CharacterCodingException {
        return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    private int firstBadLine() {
        String lossy = new String(bytes, unicode());
        return 1
                + (int) lossy.substring(0, lossy.indexOf('\ufffd'))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }
}
