package clipwitness.reading.rows;

import java.util.function.LongConsumer;

/**
 * How a file is worked through.
 *
 * @param split    how it is split
 * @param progress told how many more bytes have been read
 * @param room     memory for its rows
 */
public record Work(Split split, LongConsumer progress, Room room) {
    /** On all cores and in all the memory of the machine. */
    public static Work ofMachine(LongConsumer progress) {
        return new Work(Split.ofMachine(), progress, Room.ofMachine());
    }
}
