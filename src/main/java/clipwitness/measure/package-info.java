/**
 * What a clipping stage does to a signal. In: captures. Out: {@link clipwitness.measure.Measured}. Knows no
 * file, no clock, no report.
 */
package clipwitness.measure;
