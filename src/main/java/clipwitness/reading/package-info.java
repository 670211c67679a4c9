/**
 * Turns the bytes of an export into a capture: encoding, dialect, preamble, time axis, channels with units, doubts, each
 * decision with its evidence. In: a file. Out: {@link clipwitness.capture.Export}. Independent of signal processing and of jobs.
 */
package clipwitness.reading;
