/**
 * What was found about a job, as values only: captures with their figures, comparisons, series, devices, hints, what is missing. Computes
 * nothing.
 */
package clipwitness.compare.result;
