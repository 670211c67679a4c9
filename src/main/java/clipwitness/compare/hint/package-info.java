/**
 * Figures that look like a known fault. In: captures and comparisons of a job. Out: hints with their evidence; never a verdict.
 */
package clipwitness.compare.hint;
