package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import clipwitness.reading.file.DiskBytes;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.LineEnd;
import clipwitness.reading.file.SourceFile;
import java.io.IOException;
import java.util.Arrays;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.function.LongConsumer;

/**
 * Reads a long file in pieces, several at a time. A line belongs to the piece in which it starts. Each piece goes into a table of its
 * own, and the tables are joined in order as long as their rows can be judged by themselves; from the first piece on for which that
 * is not so, for instance because a row in it is short or damaged, the rest is for a reader that goes from line to line.
 */
final class Pieces {
    private static final int PIECES_AHEAD = 2;
    private static final int LAST_LINE = 1 << 10; // most are shorter: what is read at once beyond the end of a piece

    private final SourceFile file;
    private final LineEnd end;
    private final RowPlan plan;
    private final Split split;
    private final LongConsumer progress;
    private final Room room;
    private final Queue<NumberTable> spare = new ConcurrentLinkedQueue<>();
    private final long origin;
    private final ThreadLocal<byte[]> block;
    private volatile boolean stopped;

    /**
     * One piece, read.
     *
     * @param lines its contents
     * @param next  place in the file of the first line after it
     */
    private record Piece(LineScanner lines, long next) {}

    /**
     * Pieces of a file.
     *
     * @param origin place in the file of the first row
     */
    Pieces(SourceFile file, LineEnd end, RowPlan plan, Work work, long origin) {
        this.file = file;
        this.end = end;
        this.plan = plan;
        this.split = work.split();
        this.progress = work.progress();
        this.room = work.room();
        this.origin = origin;
        this.block = ThreadLocal.withInitial(() -> new byte[split.piece() + Head.LONGEST_LINE + 2 + PlainRow.SLACK]);
    }

    /**
     * Reads as many pieces as can be joined.
     *
     * @param into takes their rows
     * @return place in the file from which on the rest has to be read
     */
    long read(LineScanner into) throws IOException, InputException {
        ExecutorService workers = Executors.newFixedThreadPool(split.workers(), Pieces::daemon);
        try (DiskBytes disk = file.bytes()) {
            Semaphore ahead = new Semaphore(PIECES_AHEAD * split.workers());
            CompletableFuture<Long> done = CompletableFuture.completedFuture(origin);
            for (long from = origin; from < disk.size() && !stopped; from += split.piece()) {
                long start = from;
                ahead.acquireUninterruptibly();
                CompletableFuture<Piece> piece = CompletableFuture.supplyAsync(() -> piece(disk, start), workers);
                done = done.thenCombine(piece, (place, read) -> joined(into, read, place))
                        .whenComplete((place, failure) -> {
                            stopped |= failure != null;
                            ahead.release();
                        });
            }
            return done.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof InputException refused) {
                throw refused;
            }
            throw e;
        } finally {
            stopped = true;
            workers.shutdown();
        }
    }

    /** Joins a piece to those before it, in the thread that has read the last of them; the place up to which all is joined. */
    private long joined(LineScanner into, Piece piece, long place) {
        try {
            if (stopped || piece == null || !into.absorb(piece.lines(), 1)) {
                stopped = true;
                return place;
            }
        } catch (InputException e) {
            throw new CompletionException(e);
        }
        NumberTable table = piece.lines().rows().table();
        table.clear();
        spare.add(table);
        progress.accept(Math.max(0, piece.next() - place));
        return Math.max(place, piece.next());
    }

    /** Reads one piece; null where it cannot be read by itself. */
    private Piece piece(DiskBytes disk, long from) {
        if (stopped) {
            return null;
        }
        try {
            long first = Math.max(origin, from - 1);
            int limit = (int) Math.min(disk.size() - first, from - first + split.piece());
            byte[] bytes = block.get();
            int filled = filled(disk, first, bytes, 0, limit + LAST_LINE);
            NumberTable used = spare.poll();
            NumberTable table = used == null
                    ? new NumberTable(file.name(), room, plan.places().size(), 0)
                    : used;
            LineScanner lines = new LineScanner(file, end, plan, table, 1);
            int start = from == origin ? 0 : startOfLine(bytes, limit);
            int next = lines.lines(bytes, start, limit, filled);
            if (next < limit) {
                filled += filled(disk, first, bytes, filled, bytes.length - PlainRow.SLACK - filled);
                next = lines.lines(bytes, next, limit, filled);
            }
            return next < limit ? null : new Piece(lines, start < limit || from == origin ? first + next : origin);
        } catch (IOException | InputException e) {
            return null; // met again, and reported, by the reader that goes from line to line
        }
    }

    /** Reads bytes into a block behind those that it holds, and zeros behind them; how many there were. */
    private static int filled(DiskBytes disk, long first, byte[] bytes, int held, int more) throws IOException {
        int read = disk.read(first + held, bytes, held, more);
        Arrays.fill(bytes, held + read, held + read + PlainRow.SLACK, (byte) 0);
        return read;
    }

    /** Place after the first line end, at most the limit. */
    private int startOfLine(byte[] bytes, int limit) {
        int p = 0;
        while (p < limit && bytes[p] != end.last()) {
            p++;
        }
        return Math.min(p + 1, limit);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "reading");
        thread.setDaemon(true);
        return thread;
    }
}
