/**
 * Changes and decisions. In: measured captures and the job's limits. Out: items with uncertainty, limit, decision and remedy; series.
 * Writes no sentence of a page.
 */
package clipwitness.compare.judge;
