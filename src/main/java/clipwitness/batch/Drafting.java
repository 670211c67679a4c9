package clipwitness.batch;

import clipwitness.batch.load.Exhausted;
import clipwitness.batch.load.ExportSize;
import clipwitness.batch.load.Workers;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.draft.Content;
import clipwitness.draft.ContentReading;
import clipwitness.draft.Draft;
import clipwitness.draft.DraftSheet;
import clipwitness.draft.DraftTable;
import clipwitness.draft.DraftedExport;
import clipwitness.draft.Drafter;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.FolderSink;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/** Drafts job sheet and captures table of a folder that holds exports and neither of the two. */
public final class Drafting {
    /** With some interval a record can be read that states none; fewer rows may be a note with figures in it. */
    private static final int LEAST_SAMPLES = 30;

    private static final double SOME_INTERVAL = 1e-5;

    private final Path folder;
    private final Progress progress;

    private Drafting(Path folder, Progress progress) {
        this.folder = folder;
        this.progress = progress;
    }

    /**
     * What was drafted.
     *
     * @param draft the draft
     * @param left  files that were not taken, and why
     */
    public record Drafted(Draft draft, Map<String, String> left) {
        /** Copies what it is given. */
        public Drafted {
            left = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(left));
        }
    }

    /** What one file gave. */
    private record Looked(Optional<DraftedExport> source, String why) {}

    /**
     * Reads all exports below a folder and writes the two files into it.
     *
     * @param folder   the folder
     * @param progress told how far the reading has come
     * @throws InputException if one of the two is there, if nothing is an export, or if they cannot be written; then nothing was
     *     written
     */
    public static Drafted of(Path folder, Progress progress) throws InputException {
        Map<String, String> left = new LinkedHashMap<>();
        Optional<Drafted> drafted = of(folder, progress, left);
        if (drafted.isEmpty()) {
            throw none(folder, left);
        }
        return drafted.get();
    }

    /** The same for a folder that may still be without exports: then nothing is written. */
    public static Optional<Drafted> ofAny(Path folder, Progress progress) throws InputException {
        return of(folder, progress, new LinkedHashMap<>());
    }

    private static Optional<Drafted> of(Path folder, Progress progress, Map<String, String> left)
            throws InputException {
        requireFree(folder);
        Drafting drafting = new Drafting(folder, progress);
        FolderFiles files = FolderFiles.of(folder);
        Map<String, String> unread = files.left();
        List<DraftedExport> sources = drafting.sources(files.candidates(), unread);
        left.putAll(unread);
        if (sources.isEmpty()) {
            return Optional.empty();
        }
        Draft draft = Drafter.of(name(folder), sources, files.pictures(), drafting.newest(sources));
        drafting.write(draft);
        return Optional.of(new Drafted(draft, left));
    }

    private static void requireFree(Path folder) throws InputException {
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    ErrorCode.NO_SUCH_FILE,
                    Origin.of(folder.toString()),
                    Files.exists(folder) ? "is a file, not a folder" : "there is no such folder",
                    "Name the folder that holds the exports");
        }
        settle(folder);
        List<Problem> taken = new ArrayList<>();
        for (String name : List.of(Job.SHEET_FILE, Job.TABLE_FILE)) {
            if (Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                taken.add(new Problem(
                        ErrorCode.PLACE_TAKEN,
                        Origin.of(folder.resolve(name).toString()),
                        "this file is there already, and nothing was written",
                        "Move it away for a new draft, or go on with it as it is"));
            }
        }
        if (!taken.isEmpty()) {
            throw new InputException(taken);
        }
    }

    /** Puts in order what a draft that was ended has left. */
    private static void settle(Path folder) throws InputException {
        try {
            new FolderSink(folder).requireFree(List.of(), List.of());
        } catch (IOException e) {
            throw unwritten(folder, e);
        }
    }

    private static InputException unwritten(Path folder, IOException fault) {
        return new InputException(List.of(Unwritten.problem(folder, fault, "Check whether this user may write there")));
    }

    private static InputException none(Path folder, Map<String, String> left) {
        List<Problem> problems = new ArrayList<>();
        problems.add(new Problem(
                ErrorCode.NO_EXPORTS,
                Origin.of(folder.toString()),
                left.isEmpty() ? "the folder is empty" : "no file in it is an export",
                "Put the exports of the oscilloscope, the tracer or the recorder into it, as CSV, text or WAV"));
        left.forEach((file, why) ->
                problems.add(new Problem(ErrorCode.NO_EXPORTS, Origin.of(file), "not taken: " + why, "")));
        return new InputException(problems);
    }

    private static String name(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "" : name.toString();
    }

    private List<DraftedExport> sources(List<String> paths, Map<String, String> left) {
        ExecutorService workers = Workers.start();
        try {
            paths.forEach(p -> progress.expect(ExportSize.of(folder.resolve(p))));
            List<Future<Looked>> looked =
                    paths.stream().map(p -> workers.submit(() -> look(p))).toList();
            List<DraftedExport> sources = new ArrayList<>();
            for (int i = 0; i < paths.size(); i++) {
                Looked file = looked.get(i).get();
                file.source().ifPresent(sources::add);
                if (file.source().isEmpty()) {
                    left.put(paths.get(i), file.why());
                }
            }
            return sources;
        } catch (ExecutionException e) {
            throw new IllegalArgumentException("a fault of the program", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        } finally {
            workers.shutdownNow();
        }
    }

    private Looked look(String path) {
        try {
            Export export = read(path, ReadingOptions.none());
            return new Looked(Optional.of(new DraftedExport(path, ContentReading.of(export))), "");
        } catch (InputException e) {
            Problem problem = e.problems().get(0);
            return unstated(path, said(problem))
                    .map(s -> new Looked(Optional.of(s), ""))
                    .orElseGet(() -> new Looked(Optional.empty(), said(problem)));
        } catch (OutOfMemoryError e) {
            return new Looked(Optional.empty(), Exhausted.memory(path).what());
        }
    }

    private static String said(Problem problem) {
        return problem.what() + (problem.remedy().isEmpty() ? "" : ". " + problem.remedy());
    }

    private Export read(String path, ReadingOptions options) throws InputException {
        return ExportReader.read(folder.resolve(path), path, options, progress);
    }

    /** An export that can be read only with what its row of the table states. */
    private Optional<DraftedExport> unstated(String path, String why) {
        try {
            ReadingOptions some =
                    new ReadingOptions(OptionalDouble.of(SOME_INTERVAL), Optional.empty(), OptionalDouble.empty());
            Export export = ExportReader.read(folder.resolve(path), path, some, Progress.NONE);
            return export instanceof TimeRecord && export.size() >= LEAST_SAMPLES
                    ? Optional.of(new DraftedExport(
                            path, new Content(Content.Type.UNSTATED, List.of(), export.size(), 0, why)))
                    : Optional.empty();
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private LocalDate newest(List<DraftedExport> sources) throws InputException {
        try {
            Instant newest = Instant.EPOCH;
            for (DraftedExport source : sources) {
                Instant saved =
                        Files.getLastModifiedTime(folder.resolve(source.path())).toInstant();
                newest = saved.isAfter(newest) ? saved : newest;
            }
            return LocalDate.ofInstant(newest, ZoneOffset.UTC);
        } catch (IOException e) {
            throw new InputException(
                    ErrorCode.CHANGED_MEANWHILE,
                    Origin.of(folder.toString()),
                    "a file was lost meanwhile",
                    "Run the program again");
        }
    }

    private void write(Draft draft) throws InputException {
        Map<String, byte[]> documents = new LinkedHashMap<>();
        documents.put(Job.TABLE_FILE, DraftTable.of(draft).getBytes(StandardCharsets.UTF_8));
        documents.put(Job.SHEET_FILE, DraftSheet.of(draft).getBytes(StandardCharsets.UTF_8));
        try {
            new FolderSink(folder).put(documents);
        } catch (IOException e) {
            throw unwritten(folder, e);
        }
    }
}
