/**
 * From the text of a job sheet and a captures table to values. In: a job folder. Out: {@link clipwitness.job.Job}, or every fault with its
 * line. Does not read exports and does not run jobs.
 */
package clipwitness.job.read;
