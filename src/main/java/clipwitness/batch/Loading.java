package clipwitness.batch;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.reading.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Predicate;

/** Reads and measures all rows of a captures table side by side; every row that cannot be read is named. */
final class Loading {
    /** A number takes two bytes of a file at least, and eight of memory, twice for a moment. */
    private static final int MEMORY_PER_BYTE = 8;

    private final Job job;
    private final CaptureLoader loader;
    private final ReadWriteLock turns = new ReentrantReadWriteLock();

    private Loading(Job job, Progress progress) {
        this.job = job;
        this.loader = new CaptureLoader(job, progress);
    }

    /** What became of one row. */
    private record Loaded(List<CaptureResult> result, List<Problem> problems) {}

    /**
     * Loads some rows with workers of its own.
     *
     * @throws InputException with the problems of all these rows
     */
    static List<CaptureResult> some(Job job, Predicate<CaptureRow> rows, Progress progress) throws InputException {
        List<CaptureRow> some = job.captures().stream().filter(rows).toList();
        ExecutorService workers = Workers.start();
        try {
            return all(new Job(job.folder(), job.sheet(), some), workers, progress);
        } finally {
            workers.shutdownNow();
        }
    }

    /**
     * Loads all rows, in the table's order.
     *
     * @throws InputException with the problems of all rows
     */
    static List<CaptureResult> all(Job job, ExecutorService workers, Progress progress) throws InputException {
        Loading loading = new Loading(job, progress);
        progress.expect(job.captures().stream().mapToLong(loading::bytes).sum());
        List<Future<Loaded>> futures = new ArrayList<>();
        for (CaptureRow row : job.captures()) {
            futures.add(workers.submit(() -> loading.load(row)));
        }
        List<CaptureResult> results = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Future<Loaded> f : futures) {
            Loaded loaded = get(f);
            results.addAll(loaded.result);
            problems.addAll(loaded.problems);
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems.stream().distinct().toList());
        }
        return HalvesOfOneRecord.doubted(results);
    }

    private long bytes(CaptureRow row) {
        long input =
                row.inputFile().map(f -> ExportSize.of(job.folder().resolve(f))).orElse(0L);
        return ExportSize.of(job.folder().resolve(row.file())) + input;
    }

    /** Loads one row. Two exports that might not fit the memory together are loaded one after the other, each on all cores. */
    private Loaded load(CaptureRow row) {
        boolean alone = bytes(row) * MEMORY_PER_BYTE > Runtime.getRuntime().maxMemory() / 2;
        Lock turn = alone ? turns.writeLock() : turns.readLock();
        turn.lock();
        try {
            return new Loaded(List.of(loader.load(row)), List.of());
        } catch (InputException e) {
            return new Loaded(List.of(), e.problems());
        } finally {
            turn.unlock();
        }
    }

    private static Loaded get(Future<Loaded> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while reading captures", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
