/**
 * From the text of a job sheet and a captures table to values. In: a job folder. Out: {@link clipwitness.job.Job}, or every fault with its
 * line. Reads no export, runs nothing.
 */
package clipwitness.job.read;
