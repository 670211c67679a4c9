/**
 * Job sheet and captures table as values. In: nothing. Out: {@link clipwitness.job.Job}. Knows no text format, no export and no measurement.
 */
package clipwitness.job;
