/**
 * Traced junctions: forward voltages, fit, leakage, mismatch, best pairs. In: curves of current against voltage.
 * Out: {@link clipwitness.measure.Measured}. Knows no file, no clock, no report.
 */
package clipwitness.measure.junction;
