/**
 * When the samples were taken. In: time stamps, preamble, what the user said. Out: start and interval, with doubts. Knows no channel. Used
 * by {@code reading} alone.
 */
package clipwitness.reading.time;
