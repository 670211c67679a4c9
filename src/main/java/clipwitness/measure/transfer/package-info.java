/**
 * Output against input. In: two fitted channels. Out: gain, onset, knee, clip levels as {@link clipwitness.measure.Measured}. Does not
 * use a second capture.
 */
package clipwitness.measure.transfer;
