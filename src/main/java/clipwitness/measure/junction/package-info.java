/**
 * Traced junctions: forward voltages, fit, leakage, mismatch, best pairs. In: curves of current against voltage.
 * Out: {@link clipwitness.measure.Measured}. Independent of files, the clock and reports.
 */
package clipwitness.measure.junction;
