/**
 * Figures of one channel alone. In: a fitted wave. Out: {@link clipwitness.measure.Measured}. Knows no input channel and no second
 * capture.
 */
package clipwitness.measure.wave;
