/**
 * When the samples were taken. In: time stamps, preamble, what the user said. Out: start and interval, with doubts. Independent of channels. Used
 * by {@code reading} only.
 */
package clipwitness.reading.time;
