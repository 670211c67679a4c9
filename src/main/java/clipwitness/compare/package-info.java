/**
 * Everything that is decided about a job, put together. In: a job and what was measured. Out:
 * {@link clipwitness.compare.result.JobResults}. Independent of files and pages.
 */
package clipwitness.compare;
