/**
 * Job sheet and captures table, read and checked. In: a job folder. Out: {@link clipwitness.job.Job}. Knows no
 * export and no measurement.
 */
package clipwitness.job;
