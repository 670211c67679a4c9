/**
 * Everything that is decided about a job, put together. In: a job and what was measured. Out:
 * {@link clipwitness.compare.result.JobResults}. Knows no file and no page.
 */
package clipwitness.compare;
