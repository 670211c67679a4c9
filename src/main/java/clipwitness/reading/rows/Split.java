package clipwitness.reading.rows;

/**
 * How a long file is split to be read on several cores.
 *
 * @param piece   bytes of a piece, above 0
 * @param workers pieces read at a time; 1 reads from line to line
 */
public record Split(int piece, int workers) {
    private static final int PIECE = 1 << 20;

    /** As many workers as the machine has cores. */
    static Split ofMachine() {
        return new Split(PIECE, Runtime.getRuntime().availableProcessors());
    }

    /** Whether splitting this many bytes gains anything. */
    boolean pays(long bytes) {
        return workers > 1 && bytes > 2L * piece;
    }
}
