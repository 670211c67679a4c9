package clipwitness.reading;

/**
 * How a file is worked through, which changes nothing in what is read.
 *
 * @param split    how it is split
 * @param progress who is told how far the reading has come
 */
record Work(Split split, Progress progress) {}
