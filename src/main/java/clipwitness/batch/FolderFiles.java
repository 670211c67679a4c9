package clipwitness.batch;

import clipwitness.capture.LabelText;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.NativeNames;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import clipwitness.report.OwnMark;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The files below a folder: what may be an export, what is a picture, and what is left alone and why. */
final class FolderFiles extends SimpleFileVisitor<Path> {
    private static final int MAGIC = 8;
    private static final List<byte[]> PICTURES = List.of(
            new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff},
            new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});

    private static final String HIDDEN = "a hidden file";

    private final Path root;
    private final Path real;
    private final Comparator<String> order = new NaturalOrder();
    private final List<String> candidates = new ArrayList<>();
    private final List<String> pictures = new ArrayList<>();
    private final Map<String, String> left = new TreeMap<>(order);

    private FolderFiles(Path root) throws IOException {
        this.root = root;
        this.real = root.toRealPath();
    }

    /**
     * The files below a folder that exists.
     *
     * @throws InputException if it cannot be read
     */
    static FolderFiles of(Path folder) throws InputException {
        try {
            FolderFiles files = new FolderFiles(folder);
            Files.walkFileTree(folder, files);
            files.candidates.sort(files.order);
            files.pictures.sort(files.order);
            return files;
        } catch (IOException e) {
            throw new InputException(
                    ErrorCode.UNREADABLE,
                    Origin.of(folder.toString()),
                    "the folder cannot be read",
                    "Check its permissions");
        }
    }

    /** Files that may be exports, paths from the folder with forward slashes. */
    List<String> candidates() {
        return candidates;
    }

    /** Pictures, JPEG or PNG by their first bytes. */
    List<String> pictures() {
        return pictures;
    }

    /** What is left alone, and why. */
    Map<String, String> left() {
        return left;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
        if (folder.equals(root)) {
            return FileVisitResult.CONTINUE;
        }
        String name = folder.getFileName().toString();
        Optional<String> why = name.startsWith(".")
                ? Optional.of("a hidden folder")
                : name.equalsIgnoreCase(Job.REPORT_FOLDER)
                        ? Optional.of("a folder of results, which is never read as input")
                        : JobFolders.isJob(folder) ? Optional.of("a job of its own") : Optional.empty();
        why.ifPresent(w -> left.put(path(folder) + "/", w));
        return why.isPresent() ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        try {
            Optional<String> why = unfit(file, attributes);
            if (why.isPresent()) {
                left.put(LabelText.line(path(file)), why.get());
            } else if (isPicture(file)) {
                pictures.add(path(file));
            } else {
                candidates.add(path(file));
            }
        } catch (IOException e) {
            left.put(path(file), "could not be read; check whether this user may read it");
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException fault) throws IOException {
        if (file.equals(root)) {
            throw fault;
        }
        left.put(path(file), "could not be read; check whether this user may read it");
        return FileVisitResult.CONTINUE;
    }

    private String path(Path file) {
        return root.relativize(file).toString().replace(java.io.File.separatorChar, '/');
    }

    private Optional<String> unfit(Path file, BasicFileAttributes attributes) throws IOException {
        String path = path(file);
        if (file.getFileName().toString().startsWith(".")) {
            return Optional.of(HIDDEN);
        }
        if (attributes.isSymbolicLink()
                && !(Files.isRegularFile(file) && file.toRealPath().startsWith(real))) {
            return Optional.of("a link that leads out of the folder, to another folder or nowhere");
        }
        if (!Files.isRegularFile(file)) {
            return Optional.of("no ordinary file");
        }
        if (!path.equals(LabelText.line(path)) || path.contains("\\") || path.matches("[A-Za-z]:.*")) {
            return Optional.of("its name cannot be written in a table: rename it");
        }
        Optional<String> letters = NativeNames.here().remedy(path);
        if (letters.isPresent()) {
            return letters;
        }
        return OwnMark.isOn(file) ? Optional.of("a result of this program") : Optional.empty();
    }

    private static boolean isPicture(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(MAGIC);
            return PICTURES.stream()
                    .anyMatch(
                            p -> head.length >= p.length && java.util.Arrays.equals(p, 0, p.length, head, 0, p.length));
        }
    }
}
