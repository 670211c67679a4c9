/**
 * Changes and decisions. In: measured captures and the job's limits. Out: items with uncertainty, limit, decision and remedy; series.
 * Does not write sentences.
 */
package clipwitness.compare.judge;
