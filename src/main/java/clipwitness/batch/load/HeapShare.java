package clipwitness.batch.load;

import java.util.concurrent.Semaphore;

/**
 * The share of the heap that captures may take while they are read and measured. Each takes its part, estimated from the size of its files, and waits where
 * that is not left; one that is larger than the share takes all of it, so it is alone.
 */
public final class HeapShare {
    /** A number takes two bytes of a file at least, and eight of memory, twice for a moment. */
    private static final int MEMORY_PER_BYTE = 8;

    /** The other half holds what was measured, and what the reader looks at for a moment. */
    private static final int PART_OF_HEAP = 2;

    /** Permits are counted in KiB, so that they are an int up to 2 TiB. */
    private static final int PERMIT = 1 << 10;

    private final int all;
    private final Semaphore left;

    /**
     * A share.
     *
     * @param heap bytes of the whole heap
     */
    public HeapShare(long heap) {
        all = (int) Math.min(Math.max(1, heap / PART_OF_HEAP / PERMIT), Integer.MAX_VALUE);
        left = new Semaphore(all, true);
    }

    /** The share of this machine's heap. */
    public static HeapShare ofThisMachine() {
        return new HeapShare(Runtime.getRuntime().maxMemory());
    }

    /**
     * Takes a part, and waits until it is left.
     *
     * @param fileBytes bytes of the files that are read
     * @return the part, to be given back
     */
    public int take(long fileBytes) {
        int part = part(fileBytes);
        left.acquireUninterruptibly(part);
        return part;
    }

    /** Takes everything: whoever has it is alone. */
    public int takeAll() {
        left.acquireUninterruptibly(all);
        return all;
    }

    /** Whether a capture is alone anyway. */
    public boolean isAll(int part) {
        return part == all;
    }

    /** Gives a part back. */
    public void giveBack(int part) {
        left.release(part);
    }

    private int part(long fileBytes) {
        return (int) Math.min(all, 1 + fileBytes / PERMIT * MEMORY_PER_BYTE);
    }
}
