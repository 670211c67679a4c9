/**
 * Figures of one channel alone. In: a fitted wave. Out: {@link clipwitness.measure.Measured}. Does not use the input channel or a second
 * capture.
 */
package clipwitness.measure.wave;
