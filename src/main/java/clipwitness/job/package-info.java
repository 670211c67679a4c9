/**
 * Job sheet and captures table as values. In: nothing. Out: {@link clipwitness.job.Job}. Independent of text formats, exports and measurements.
 */
package clipwitness.job;
