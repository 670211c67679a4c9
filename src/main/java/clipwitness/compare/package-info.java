/**
 * Two states side by side: changes, limits, decisions, series, hints. In: a job and what was measured. Out:
 * {@link clipwitness.compare.result.JobResults}. Knows no file and no page.
 */
package clipwitness.compare;
