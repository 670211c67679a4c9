package clipwitness.reading.file;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Meanwhile;
import clipwitness.fault.Origin;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** An export on disk, with its encoding known and its first part at hand. */
public final class SourceFile {
    /** Size of the first part, from which the layout is determined. */
    static final int HEAD_BYTES = 1 << 18;

    private static final int END_BYTES = 1 << 16;

    private final Path path;
    private final String name;
    private final Encoding encoding;
    private final byte[] head;
    private final boolean whole;
    private final byte[] end;
    private final FileState state;
    private final Seen seen;

    private SourceFile(
            Path path,
            String name,
            FileState state,
            Seen seen,
            Encoding encoding,
            byte[] head,
            boolean whole,
            byte[] end) {
        this.path = path;
        this.name = name;
        this.state = state;
        this.seen = seen;
        this.encoding = encoding;
        this.head = head;
        this.whole = whole;
        this.end = end;
    }

    /** Opens an export and looks at its first part. */
    public static SourceFile open(Path path, String name) throws InputException {
        return open(path, name, Seen.NOTHING);
    }

    /** Opens an export for which {@link #digest} will be called. */
    public static SourceFile openForDigest(Path path, String name) throws InputException {
        return open(path, name, new Seen());
    }

    private static SourceFile open(Path path, String name, Seen seen) throws InputException {
        NoFile.refuse(path, name);
        try {
            FileState state = FileState.of(path);
            byte[] first = firstBytes(path, state.size(), seen);
            Encoding encoding = Encoding.of(first);
            if (state.size() <= HEAD_BYTES && !encoding.wide()) {
                byte[] head = Arrays.copyOfRange(first, encoding.mark(), first.length);
                return new SourceFile(path, name, state, seen, encoding, head, true, new byte[0]);
            }
            try (InputStream in = decoded(path, encoding, state.size(), seen)) {
                byte[] head = in.readNBytes(HEAD_BYTES);
                boolean whole = in.read() < 0;
                byte[] end = whole || encoding.wide() ? new byte[0] : lastBytes(path, seen);
                return new SourceFile(path, name, state, seen, encoding, head, whole, end);
            }
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    private static byte[] firstBytes(Path path, long size, Seen seen) throws IOException {
        byte[] bytes = new byte[(int) Math.min(HEAD_BYTES, size)];
        try (InputStream in = new SeenStream(Files.newInputStream(path), size, seen)) {
            return Arrays.copyOf(bytes, in.readNBytes(bytes, 0, bytes.length));
        }
    }

    /** What to say where the file is no longer as it was when it was opened; empty where it is. */
    public Optional<InputException> changed() {
        try {
            return state.isStill(FileState.of(path)) ? Optional.empty() : Optional.of(changedMeanwhile(name));
        } catch (IOException e) {
            return Optional.of(new InputException(List.of(Meanwhile.lost(name))));
        }
    }

    /** What to say of a file that was changed while it was read. */
    public static InputException changedMeanwhile(String name) {
        return new InputException(List.of(Meanwhile.changed(name)));
    }

    /**
     * Digests the bytes that were read.
     *
     * @param digest takes all bytes of the file
     * @throws InputException if they are no longer those that were read
     */
    public void digest(MessageDigest digest) throws InputException {
        try {
            if (!SameBytes.digest(path, state.size(), seen, digest)) {
                throw changedMeanwhile(name);
            }
        } catch (IOException e) {
            throw new InputException(List.of(Meanwhile.lost(name)));
        }
    }

    /** The file's name as the user wrote it. */
    public String name() {
        return name;
    }

    /** Its character encoding. */
    public Encoding encoding() {
        return encoding;
    }

    /** The first part after the byte-order mark, UTF-16 recoded as UTF-8; not to be changed. */
    public byte[] head() {
        return head;
    }

    /** Whether the head is the whole file. */
    boolean whole() {
        return whole;
    }

    /** The last part of a file of which the head is not the whole; empty for UTF-16. Not to be changed. */
    byte[] end() {
        return end;
    }

    /** The file from its first character on, with UTF-16 recoded as UTF-8. */
    public InputStream stream() throws IOException {
        return whole ? new ByteArrayInputStream(head) : decoded(path, encoding, state.size(), seen);
    }

    /** The file as it lies on the disk, byte-order mark included. */
    public DiskBytes bytes() throws IOException {
        return DiskBytes.of(path, seen);
    }

    /** Character set of the head and the stream. */
    public Charset headCharset() {
        return encoding.wide() ? StandardCharsets.UTF_8 : encoding.charset();
    }

    /** Size of the file in bytes. */
    public long size() throws IOException {
        return Files.size(path);
    }

    /** About how many bytes {@link #stream} gives: UTF-16 of the letters that exports are made of halves when it is recoded. */
    public long recodedSize() throws IOException {
        return (size() - encoding.mark()) / bytesForOne();
    }

    /** Bytes of the file for one byte of {@link #stream}. */
    public int bytesForOne() {
        return encoding.wide() ? 2 : 1;
    }

    /** What the user is told when the file system fails. */
    public static InputException unreadable(String name, IOException cause) {
        Origin where = Origin.of(name);
        if (cause instanceof NoSuchFileException) {
            return new InputException(
                    ErrorCode.NO_SUCH_FILE, where, "there is no such file", "Check the path and the name's ending");
        }
        if (cause instanceof AccessDeniedException) {
            return new InputException(ErrorCode.UNREADABLE, where, "the file may not be read", "Check its permissions");
        }
        String said = cause.getMessage() == null ? "" : ": " + cause.getMessage();
        return new InputException(
                ErrorCode.UNREADABLE, where, "the file could not be read" + said, "Copy it again and retry");
    }

    private static byte[] lastBytes(Path path, Seen seen) throws IOException {
        try (DiskBytes disk = DiskBytes.of(path, seen)) {
            byte[] bytes = new byte[(int) Math.min(END_BYTES, disk.size())];
            return Arrays.copyOf(bytes, disk.read(disk.size() - bytes.length, bytes, 0, bytes.length));
        }
    }

    private static InputStream decoded(Path path, Encoding encoding, long size, Seen seen) throws IOException {
        InputStream in = new BufferedInputStream(new SeenStream(Files.newInputStream(path), size, seen), 1 << 16);
        in.skipNBytes(encoding.mark());
        return encoding.wide() ? new Utf16AsUtf8(in, encoding.charset()) : in;
    }
}
