package clipwitness.reading.rows;

import clipwitness.reading.Progress;

/**
 * How a file is worked through.
 *
 * @param split    how it is split
 * @param progress told how far the reading has come
 * @param room     memory for its rows
 */
record Work(Split split, Progress progress, Room room) {
    /** On all cores and in all the memory of the machine. */
    static Work ofMachine(Progress progress) {
        return new Work(Split.ofMachine(), progress, Room.ofMachine());
    }
}
