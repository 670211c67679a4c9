/**
 * An export's bytes become a capture: encoding, dialect, preamble, time axis, channels with units, doubts, each
 * decision with its evidence. In: a file. Out: {@link clipwitness.capture.Export}. Knows no signal and no job.
 */
package clipwitness.reading;
