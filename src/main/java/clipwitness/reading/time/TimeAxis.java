package clipwitness.reading.time;

/**
 * When the samples were taken.
 *
 * @param start    time of the first sample in s
 * @param interval time from sample to sample in s, above 0
 * @param envelope whether two rows stand for each of these times
 */
public record TimeAxis(double start, double interval, boolean envelope) {}
