package clipwitness.batch.load;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.reading.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Predicate;

/** Reads and measures all rows of a captures table side by side; every row that cannot be read is named. */
public final class Loading {
    private final Job job;
    private final CaptureLoader loader;
    private final HeapShare heap;

    private Loading(Job job, Progress progress, HeapShare heap) {
        this.job = job;
        this.loader = new CaptureLoader(job, progress);
        this.heap = heap;
    }

    /** What became of one row. */
    private record Loaded(List<CaptureResult> result, List<Problem> problems) {}

    /**
     * Loads some rows with workers of its own.
     *
     * @throws InputException with the problems of all these rows
     */
    public static List<CaptureResult> some(Job job, Predicate<CaptureRow> rows, Progress progress)
            throws InputException {
        List<CaptureRow> some = job.captures().stream().filter(rows).toList();
        ExecutorService workers = Workers.start();
        try {
            return all(new Job(job.folder(), job.sheet(), some), workers, progress);
        } finally {
            workers.shutdownNow();
        }
    }

    /** Loads all rows of a job that is alone, in the table's order. */
    public static List<CaptureResult> all(Job job, ExecutorService workers, Progress progress) throws InputException {
        return all(job, workers, progress, HeapShare.ofThisMachine());
    }

    /**
     * Loads all rows, in the table's order.
     *
     * @param heap what all jobs that run side by side may take
     * @throws InputException with the problems of all rows
     */
    public static List<CaptureResult> all(Job job, ExecutorService workers, Progress progress, HeapShare heap)
            throws InputException {
        Loading loading = new Loading(job, progress, heap);
        progress.expect(job.captures().stream().mapToLong(loading::bytes).sum());
        List<Future<Loaded>> futures = new ArrayList<>();
        for (CaptureRow row : job.captures()) {
            futures.add(workers.submit(() -> loading.load(row)));
        }
        List<CaptureResult> results = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        try {
            for (Future<Loaded> f : futures) {
                Loaded loaded = Workers.result(f);
                results.addAll(loaded.result);
                problems.addAll(loaded.problems);
            }
        } finally {
            futures.forEach(f -> f.cancel(false)); // after a fault nobody waits for the rest
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

    /** Loads one row as soon as the memory has room for it; where that was estimated too low, once more when it is alone. */
    private Loaded load(CaptureRow row) {
        int part = heap.take(bytes(row));
        try {
            return loaded(row);
        } catch (OutOfMemoryError e) {
            if (heap.isAll(part)) {
                return new Loaded(List.of(), List.of(Exhausted.memory(row.file())));
            }
        } finally {
            heap.giveBack(part);
        }
        return alone(row);
    }

    private Loaded alone(CaptureRow row) {
        int part = heap.takeAll();
        try {
            return loaded(row);
        } catch (OutOfMemoryError e) {
            return new Loaded(List.of(), List.of(Exhausted.memory(row.file())));
        } finally {
            heap.giveBack(part);
        }
    }

    private Loaded loaded(CaptureRow row) {
        try {
            return new Loaded(List.of(loader.load(row)), List.of());
        } catch (InputException e) {
            return new Loaded(List.of(), e.problems());
        }
    }
}
