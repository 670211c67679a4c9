/**
 * The captures of a job from its files: which file belongs to which row, as many at once as the memory holds. In: a job. Out: measured
 * captures. Knows no report.
 */
package clipwitness.batch.load;
